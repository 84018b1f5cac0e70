using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Tests.Turning;

/// <summary>Rings to test with.</summary>
internal static class Rings
{
    public static WallSection Section(params (double Z, double Outer, double Inner)[] levels) =>
        new([.. levels.Select(l => new WallLevel(l.Z, l.Outer, l.Inner))]);

    public static WallSection Cylinder(double outer, double inner = 0, double height = 10) => Section((0, outer, inner), (height, outer, inner));

    /// <summary>A closed ring of equal segments, their joints through the axis.</summary>
    public static TurnedRing Closed(WallSection section, int count, int woods = 1, double turn = 0) => new(
        section,
        [.. Enumerable.Range(0, count).Select(i => new TurnedSegment(
            new(turn + (2 * Math.PI * i / count)), new(turn + (2 * Math.PI * (i + 1) / count)), i % woods, Frame3D.Identity))]);

    /// <summary>A ring of equal segments, each side moved in by half the gap, so that the gaps have parallel faces.</summary>
    public static TurnedRing Open(WallSection section, int count, double gap) => new(
        section,
        [.. Enumerable.Range(0, count).Select(i => Segment(
            new(2 * Math.PI * i / count, gap / 2), new(2 * Math.PI * (i + 1) / count, -gap / 2)))]);

    public static TurnedRing One(WallSection section, JointPlane from, JointPlane to) => new(section, [Segment(from, to)]);

    public static TurnedRing Disc(WallSection section) => One(section, new(0.3), new(0.3 + (2 * Math.PI)));

    public static TurnedSegment Segment(JointPlane from, JointPlane to) => new(from, to, 0, Frame3D.Identity);

    /// <summary>
    /// The vase of the benchmark: radius 60 + 25 sin(pi z/240) mm, 40 rings of 6 mm, wall 6 mm, 36 segments, 4 slices.
    /// </summary>
    public static ImmutableArray<TurnedRing> Vase { get; } = [.. Enumerable.Range(0, 40).Select(ring => Closed(VaseSection(ring), 36, 3))];

    public static double VaseRadius(double z) => 60 + (25 * Math.Sin(Math.PI * z / 240));

    private static WallSection VaseSection(int ring) => Section([.. Enumerable.Range(0, 5).Select(slice =>
    {
        double z = (6 * ring) + (1.5 * slice);
        return (z, VaseRadius(z), VaseRadius(z) - 6);
    })]);
}
