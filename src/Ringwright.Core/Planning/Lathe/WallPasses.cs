using System.Collections.Immutable;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Planning;

/// <summary>The state of the wall between two works at the lathe.</summary>
public enum LathePass
{
    /// <summary>As glued.</summary>
    Glued,

    /// <summary>Outside roughed to shape.</summary>
    OutsideRoughed,

    /// <summary>Inside roughed too.</summary>
    InsideRoughed,

    /// <summary>Last cuts and sanding done.</summary>
    Finished,
}

/// <summary>Wood along one radius. Lengths in mm.</summary>
/// <param name="Height">Height above the bottom of the lowest ring.</param>
/// <param name="Outer">Outer radius: in the middle of a flat while it is not round.</param>
/// <param name="Inner">Inner radius: at a corner of the hole while that is not round; 0 where it is solid.</param>
public readonly record struct WallReading(double Height, double Outer, double Inner)
{
    /// <summary>How much wood there is.</summary>
    public double Thickness => Outer - Inner;
}

/// <summary>What the lathe does to one ring: its wall after each work, how much is cut and how exactly it must be centred. Lengths in mm.</summary>
/// <param name="Ring">The ring.</param>
/// <param name="Walls">Its wall after each of <see cref="LathePass"/>, in their order: readings from the bottom up, the wall straight between them.</param>
/// <param name="OutsideStock">Most wood roughing takes off outside, on the radius, corners included.</param>
/// <param name="InsideStock">Most wood roughing takes out inside, on the radius.</param>
/// <param name="CentreWithin">How far the glued ring may lie off the axis before wood is missing outside or inside; negative when it is missing anyhow.</param>
public sealed record RingPasses(StackedRing Ring, ImmutableArray<ImmutableArray<WallReading>> Walls, double OutsideStock, double InsideStock, double CentreWithin)
{
    /// <summary>The thinnest wall after a work. Wood between straight walls is thinnest at an end, so the readings are all that must be looked at.</summary>
    public WallReading this[LathePass pass] => Walls[(int)pass].MinBy(r => r.Thickness);
}

/// <summary>Finds the wall at each pass.</summary>
/// <param name="left">Wood that roughing leaves on each side, mm.</param>
/// <param name="floor">Height of the hollow's floor; null without one.</param>
internal sealed class WallPasses(double left, double? floor)
{
    /// <summary>The passes of one ring that is not turned away.</summary>
    public RingPasses Of(StackedRing ring)
    {
        ImmutableArray<WallLevel> levels = WithRoughFloor(ring.Section!.Levels);
        return new(
            ring,
            [.. Enum.GetValues<LathePass>().Select(pass => levels.Select((l, i) => Read(ring, l, pass, i)).ToImmutableArray())],
            Math.Max(0, levels.Max(l => ring.BlankAt(l.Z).OuterCorner - l.Outer - left)),
            Math.Max(0, levels.Max(l => l.Inner - left - ring.BlankAt(l.Z).InnerFlat)),
            levels.Min(l => Room(ring, l)));

        WallReading Read(StackedRing stacked, WallLevel level, LathePass pass, int index)
        {
            BlankRadii blank = stacked.BlankAt(level.Z);
            double outer = blank.OuterFlat, inner = blank.InnerCorner, kept = pass == LathePass.Finished ? 0 : left;
            if (pass >= LathePass.OutsideRoughed) outer = Math.Min(outer, level.Outer + kept);
            if (pass == LathePass.Finished || (pass == LathePass.InsideRoughed && !BelowRoughFloor(levels, index))) inner = Math.Max(inner, level.Inner - kept);
            return new(level.Z, outer, Math.Max(0, inner));
        }
    }

    // Roughing stops above the floor: a step is read there, below it first and above it second.
    private ImmutableArray<WallLevel> WithRoughFloor(ImmutableArray<WallLevel> levels)
    {
        if (floor is not double low || low + left <= levels[0].Z || low + left >= levels[^1].Z) return levels;
        double z = low + left;
        int above = 1;
        while (levels[above].Z < z) above++;
        (WallLevel a, WallLevel b) = (levels[above - 1], levels[above]);
        double share = (z - a.Z) / (b.Z - a.Z);
        WallLevel step = new(z, a.Outer + (share * (b.Outer - a.Outer)), a.Inner + (share * (b.Inner - a.Inner)));
        return levels.Insert(above, step).Insert(above, step);
    }

    private bool BelowRoughFloor(ImmutableArray<WallLevel> levels, int index)
    {
        if (floor is not double low) return false;
        double z = levels[index].Z, rough = low + left;
        return z < rough || (z == rough && index + 1 < levels.Length && levels[index + 1].Z == z);
    }

    // Moved off the axis by e, a ring lacks e on one side outside and e on the other inside. Where nothing is hollow only the outside counts.
    private static double Room(StackedRing ring, WallLevel level)
    {
        BlankRadii blank = ring.BlankAt(level.Z);
        double outside = blank.OuterFlat - level.Outer, hole = blank.InnerCorner;
        return hole > 0 ? Math.Min(outside, level.Inner - hole) : outside;
    }
}
