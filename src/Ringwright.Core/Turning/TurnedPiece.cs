using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Turning;

/// <summary>The turned piece as rings of wood: the plan's segments within the shape's walls.</summary>
/// <param name="Rings">From the bottom up; heights count from the bottom of the lowest ring. A ring that is turned away altogether is left out.</param>
/// <param name="Woods">The woods that segments point to by number.</param>
public sealed record TurnedPiece(ImmutableArray<TurnedRing> Rings, ImmutableArray<string> Woods)
{
    /// <summary>The turned piece of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="section">The walls between two heights, mm: from the shape; each ring's own sizes when null.</param>
    internal static TurnedPiece Of(Plan plan, Func<double, double, WallSection>? section)
    {
        ImmutableArray<string> woods = [.. plan.Rings.SelectMany(r => r.Layout).Select(s => s.Wood).Distinct(StringComparer.OrdinalIgnoreCase)];
        var numbers = woods.Select((wood, i) => (wood, i)).ToDictionary(p => p.wood, p => p.i, StringComparer.OrdinalIgnoreCase);
        var rings = ImmutableArray.CreateBuilder<TurnedRing>(plan.Rings.Length);
        double z = 0;
        foreach (RingPlan ring in plan.Rings)
        {
            double top = z + ring.Ring.Thickness.Millimetres;
            double bottom = z;
            z = top;
            // What lies above or below the shape is turned away.
            (double From, double To)? part = plan.Form is null ? (bottom, top) : Sizing.Within(plan.Form, bottom, top);
            if (part is not { } heights) continue;
            WallSection walls = section?.Invoke(heights.From, heights.To) ?? Straight(ring, bottom, top);
            rings.Add(new(walls, [.. ring.Layout.Select(s => Lift(s, numbers[s.Wood], bottom))]));
        }

        return new(rings.ToImmutable(), woods);
    }

    // The wall leans with staves: its sizes are those outside at their wider end and inside at their narrower one.
    private static WallSection Straight(RingPlan ring, double bottom, double top)
    {
        double outer = ring.Ring.Outside.Millimetres / 2;
        double inner = ring.Ring switch
        {
            WedgeDisc { Bore: Length bore } => bore.Millimetres / 2,
            IHollowRing { InnerDiameter: Length inside } => inside.Millimetres / 2,
            WedgeDisc => OpeningRadius(ring),
            _ => 0,
        };
        double lean = ring.Stave is StaveGeometry stave ? (top - bottom) * Math.Tan(stave.Lean) : 0;
        return new([new(bottom, outer - Math.Max(0, lean), inner + Math.Max(0, -lean)), new(top, outer - Math.Max(0, -lean), inner + Math.Max(0, lean))]);
    }

    // The opening between flat tips has corners; a round one of the same area stands for it.
    private static double OpeningRadius(RingPlan ring)
    {
        double apothem = Math.Max(0, ring.Glued.InnerApothem);
        return apothem * Math.Sqrt(ring.Ring.Around * Math.Tan(ring.Glued.HalfAngle) / Math.PI);
    }

    // From the ring's own heights to the piece's.
    private static TurnedSegment Lift(LaidSegment laid, int wood, double by) => new(
        Lift(laid.From, by), Lift(laid.To, by), wood, laid.Frame with { Origin = laid.Frame.Origin + new Vector3D(0, 0, by) })
    { Within = laid.Within }; // upright joints through the axis are the same at any height

    private static JointPlane Lift(JointPlane plane, double by) => plane with { Offset = plane.Offset - (Math.Sin(plane.Tilt) * by) };
}
