using System.Collections.Immutable;
using CsCheck;
using Ringwright.Core.Geometry;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Tests.Turning;

/// <summary>Random walls and segments: steps, floors, solid stretches, gaps, leaning sides, unequal wedges.</summary>
internal static class RandomRings
{
    private static readonly Gen<WallLevel> Level = Gen.Select(Gen.Double[20, 60], Gen.OneOf(Gen.Const(0.0), Gen.Double[0.2, 19]), (outer, inner) => new WallLevel(0, outer, inner));

    private static readonly Gen<double> Rise = Gen.OneOf(Gen.Const(0.0), Gen.Double[0.1, 8]);

    public static Gen<WallSection> Section { get; } = Gen.Select(Level, Rise).Array[2, 8].Select(Stacked);

    private static readonly Gen<JointPlane> Side = Gen.Select(
        Gen.OneOf(Gen.Const(0.0), Gen.Double[-4, 4]), Gen.OneOf(Gen.Const(0.0), Gen.Double[-0.3, 0.3]), (offset, tilt) => new JointPlane(0, offset, tilt));

    /// <summary>Upright joints through the axis, unequal angles.</summary>
    public static Gen<TurnedRing> Radial { get; } = Gen.Select(Section, Gen.Double[0.05, 2].Array[2, 9], (section, angles) => Closed(section, angles, []));

    /// <summary>The same with each side moved and leaned by itself.</summary>
    public static Gen<TurnedRing> AnySides { get; } = Gen.Select(
        Section, Gen.Double[0.2, 2].Array[2, 9], Gen.Select(Side, Side).Array[9], Closed);

    // A level at the height of the one before is the far side of a step; steps neither start, end nor follow one another.
    private static WallSection Stacked((WallLevel Level, double Rise)[] levels)
    {
        var section = ImmutableArray.CreateBuilder<WallLevel>();
        double z = 0;
        bool step = true;
        for (int i = 0; i < levels.Length; i++)
        {
            step = i > 0 && i < levels.Length - 1 && !step && levels[i].Rise == 0;
            if (i > 0 && !step) z += levels[i].Rise + 0.5;
            section.Add(levels[i].Level with { Z = z });
        }

        return new(section.ToImmutable());
    }

    private static TurnedRing Closed(WallSection section, double[] angles, (JointPlane From, JointPlane To)[] sides)
    {
        double scale = 2 * Math.PI / angles.Sum();
        var segments = ImmutableArray.CreateBuilder<TurnedSegment>();
        double at = 0.4;
        for (int i = 0; i < angles.Length; i++)
        {
            double end = at + (scale * angles[i]);
            (JointPlane first, JointPlane second) = sides.Length == 0 ? default : sides[i];
            segments.Add(new(first with { Direction = at }, second with { Direction = end }, i % 3, Frame3D.Identity));
            at = end;
        }

        return new(section, segments.ToImmutable());
    }
}
