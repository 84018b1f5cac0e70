using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Planning;

/// <summary>A glued stack and what the lathe leaves of it.</summary>
/// <param name="Rings">All rings from the bottom up, each with what is turned out of it; null when it is turned away altogether.</param>
/// <param name="Woods">The woods that the turned segments point to by number.</param>
public sealed record StackedPiece(ImmutableArray<(StackedRing Glued, TurnedRing? Turned)> Rings, ImmutableArray<string> Woods)
{
    /// <summary>The turned piece alone.</summary>
    public TurnedPiece Piece => new([.. Rings.Select(r => r.Turned).OfType<TurnedRing>()], Woods);

    /// <summary>The stack of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="section">The walls between two heights, mm: from the shape; each ring's own sizes when null.</param>
    internal static StackedPiece Of(Plan plan, Func<double, double, WallSection>? section)
    {
        ImmutableArray<string> woods = [.. plan.Rings.SelectMany(r => r.Layout).Select(s => s.Wood).Distinct(StringComparer.OrdinalIgnoreCase)];
        var numbers = woods.Select((wood, i) => (wood, i)).ToDictionary(p => p.wood, p => p.i, StringComparer.OrdinalIgnoreCase);
        return new([.. StackedRing.Of(plan, section).Select(ring => (ring, Turn(ring, numbers)))], woods);
    }

    private static TurnedRing? Turn(StackedRing ring, Dictionary<string, int> woods) =>
        ring.Section is WallSection walls ? new(walls, [.. ring.Plan.Layout.Select(s => Lift(s, woods[s.Wood], ring.Bottom))]) : null;

    // From the ring's own heights to the piece's.
    private static TurnedSegment Lift(LaidSegment laid, int wood, double by) => new(
        Lift(laid.From, by), Lift(laid.To, by), wood, laid.Frame with { Origin = laid.Frame.Origin + new Vector3D(0, 0, by) })
    { Within = laid.Within }; // upright joints through the axis are the same at any height

    private static JointPlane Lift(JointPlane plane, double by) => plane with { Offset = plane.Offset - (Math.Sin(plane.Tilt) * by) };
}
