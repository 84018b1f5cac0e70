using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Planning;

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
        foreach (StackedRing ring in StackedRing.Of(plan, section))
            if (ring.Section is WallSection walls) rings.Add(new(walls, [.. ring.Plan.Layout.Select(s => Lift(s, numbers[s.Wood], ring.Bottom))]));
        return new(rings.ToImmutable(), woods);
    }

    // From the ring's own heights to the piece's.
    private static TurnedSegment Lift(LaidSegment laid, int wood, double by) => new(
        Lift(laid.From, by), Lift(laid.To, by), wood, laid.Frame with { Origin = laid.Frame.Origin + new Vector3D(0, 0, by) })
    { Within = laid.Within }; // upright joints through the axis are the same at any height

    private static JointPlane Lift(JointPlane plane, double by) => plane with { Offset = plane.Offset - (Math.Sin(plane.Tilt) * by) };
}
