using System.Collections.Immutable;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Profiles;

/// <summary>The inner wall of a shape: radius over height, 0 where the piece is solid.</summary>
internal static class InnerWall
{
    /// <summary>Arcs lower than this, mm, are rounding and go to their neighbour.</summary>
    private const double Sliver = 1e-9;

    /// <summary>The inner wall within <paramref name="outer"/>, whose shape <c>ShapeCheck</c> has passed field by field.</summary>
    public static WallLine Of(Inside? inside, ProfileCurve outer) => inside switch
    {
        Wall wall => new(Room(OffsetArcs(outer, wall), wall.Floor?.Millimetres ?? outer.Bottom, outer.Top)),
        Bore bore => new(Room([Straight(bore.Diameter.Millimetres / 2, outer)], bore.Floor?.Millimetres ?? outer.Bottom, outer.Top)),
        Hollow hollow => new(Room(ProfileCurve.Through(hollow.Points).Line.Arcs, outer.Bottom, outer.Top)),
        _ => new([]),
    };

    private static SpanArc Straight(double radius, ProfileCurve outer) =>
        new(new(new(radius, 0, 0, 0), new(outer.Bottom, outer.Top - outer.Bottom, 0, 0), new(radius, outer.Top)));

    /// <summary>
    /// The lower envelope of all circles, the innermost at each height. Of two circles, or two families in order along the curve, the
    /// upper one takes over once and for all at some height (their difference changes sign once, as the thickness changes
    /// slower than the height); so one pass with a stack finds it, swallowing whatever lies behind another.
    /// </summary>
    private static IEnumerable<WallArc> OffsetArcs(ProfileCurve outer, Wall wall)
    {
        var stack = new List<(DiscFamily Family, double From)>();
        foreach (DiscFamily next in DiscFamilies.Of(outer, WallThickness.Of(wall)))
        {
            double from = double.NegativeInfinity;
            while (stack.Count > 0)
            {
                from = Handover(stack[^1].Family, next);
                if (from > stack[^1].From) break;
                stack.RemoveAt(stack.Count - 1);
                from = double.NegativeInfinity;
            }

            stack.Add((next, from));
        }

        for (int i = 0; i < stack.Count; i++)
        {
            double to = i + 1 < stack.Count ? stack[i + 1].From : double.PositiveInfinity;
            foreach (WallArc arc in stack[i].Family.Arcs(stack[i].From, to)) yield return arc;
        }
    }

    /// <summary>The height from which on <paramref name="upper"/> reaches further in than <paramref name="lower"/>.</summary>
    private static double Handover(DiscFamily lower, DiscFamily upper)
    {
        double from = upper.Lowest, to = lower.Highest;
        if (lower.End == upper.Start)
        {
            if (upper.IsSingle) return lower.TouchTo;
            if (lower.IsSingle || lower.TouchTo <= upper.TouchFrom) return upper.TouchFrom;
            (from, to) = (upper.TouchFrom, lower.TouchTo);
        }

        if (upper.Radius(from) < lower.Radius(from)) return from;
        for (double z = (from + to) / 2; z > from && z < to; z = (from + to) / 2)
        {
            if (upper.Radius(z) < lower.Radius(z)) to = z;
            else from = z;
        }

        return to;
    }

    // Keeps what lies above the floor, below the top and off the axis.
    private static ImmutableArray<WallArc> Room(IEnumerable<WallArc> arcs, double floor, double top)
    {
        var room = ImmutableArray.CreateBuilder<WallArc>();
        foreach (WallArc arc in arcs)
        {
            double from = Math.Max(floor, arc.From), to = Math.Min(top, arc.To);
            if (to - from <= Sliver || !OffAxis(arc, ref from, ref to) || to - from <= Sliver) continue;
            if (room.Count > 0 && from - room[^1].To <= Sliver) from = room[^1].To;
            else if (from - floor <= Sliver) from = floor;
            room.Add(arc.Cut(from, to));
        }

        if (room.Count > 0 && top - room[^1].To <= Sliver) room[^1] = room[^1].Cut(room[^1].From, top);
        return room.DrainToImmutable();
    }

    private static bool OffAxis(WallArc arc, ref double from, ref double to)
    {
        bool below = arc.Radius(from) > 0, above = arc.Radius(to) > 0;
        if (below == above) return below;
        double inside = below ? from : to, outside = below ? to : from;
        for (double z = (inside + outside) / 2; z != inside && z != outside; z = (inside + outside) / 2)
        {
            if (arc.Radius(z) > 0) inside = z;
            else outside = z;
        }

        if (below) to = inside;
        else from = inside;
        return true;
    }
}
