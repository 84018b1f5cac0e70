using System.Collections.Immutable;
using Ringwright.Core.Planning;
using Ringwright.Core.Turning;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>A ring where it stands in its piece.</summary>
/// <param name="Stacked">The ring in its stack, as glued.</param>
/// <param name="Turned">What the lathe leaves of it; null when it is turned away altogether.</param>
internal sealed record PieceRing(StackedRing Stacked, TurnedRing? Turned)
{
    /// <summary>How far a wall may leave its chords, of the piece's size: a hundredth of a millimetre on the paper.</summary>
    public const double PaperFineness = 1e-4;

    /// <summary>The ring.</summary>
    public RingPlan Plan => Stacked.Plan;

    /// <summary>Its walls from the bottom up; none when it is turned away.</summary>
    public ImmutableArray<WallLevel> Levels => Turned?.Section.Levels ?? [];

    /// <summary>Its pieces of wood as they show on the outer wall at these of its levels.</summary>
    public IEnumerable<SeenSegment> Seen(ImmutableArray<WallLevel> levels) =>
        Turned is null ? [] : SeenSegment.Of(Turned.Segments, i => Plan.Layout[i].Wood, levels);

    /// <summary>The rings of a piece from the bottom up.</summary>
    public static ImmutableArray<PieceRing> Of(Plan plan, double fineness = PaperFineness)
    {
        double size = Math.Max(plan.Rings.Max(r => r.Ring.Outside.Millimetres), plan.Rings.Sum(r => r.Ring.Thickness.Millimetres));
        return [.. plan.Stacked(fineness * size).Rings.Select(r => new PieceRing(r.Glued, r.Turned))];
    }
}
