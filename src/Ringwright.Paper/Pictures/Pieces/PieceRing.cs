using System.Collections.Immutable;
using Ringwright.Core.Planning;
using Ringwright.Core.Turning;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>A ring where it stands in its piece. Heights in mm above the bottom of the lowest ring.</summary>
/// <param name="Plan">The ring.</param>
/// <param name="Bottom">Its lower face as glued.</param>
/// <param name="Top">Its upper face as glued.</param>
/// <param name="Turned">What the lathe leaves of it; null when it is turned away altogether.</param>
internal sealed record PieceRing(RingPlan Plan, double Bottom, double Top, TurnedRing? Turned)
{
    /// <summary>How far a wall may leave its chords, of the piece's size: a hundredth of a millimetre on the paper.</summary>
    public const double PaperFineness = 1e-4;

    /// <summary>Its walls from the bottom up; none when it is turned away.</summary>
    public ImmutableArray<WallLevel> Levels => Turned?.Section.Levels ?? [];

    /// <summary>Its pieces of wood as they show on the outer wall at these of its levels.</summary>
    public IEnumerable<SeenSegment> Seen(ImmutableArray<WallLevel> levels) =>
        Turned is null ? [] : Turned.Segments.Select((segment, i) => new SeenSegment(segment, Plan.Layout[i].Wood, levels));

    /// <summary>The rings of a piece from the bottom up.</summary>
    public static ImmutableArray<PieceRing> Of(Plan plan, double fineness = PaperFineness)
    {
        double size = Math.Max(plan.Rings.Max(r => r.Ring.Outside.Millimetres), plan.Rings.Sum(r => r.Ring.Thickness.Millimetres));
        Queue<TurnedRing> turned = new(plan.Turned(fineness * size).Rings);
        var rings = ImmutableArray.CreateBuilder<PieceRing>(plan.Rings.Length);
        double bottom = 0;
        foreach (RingPlan ring in plan.Rings)
        {
            double top = bottom + ring.Ring.Thickness.Millimetres;
            // A ring that is turned away is not among the turned ones.
            bool left = turned.TryPeek(out TurnedRing? next) && next.Section.Levels[0].Z < top && next.Section.Levels[^1].Z > bottom;
            rings.Add(new(ring, bottom, top, left ? turned.Dequeue() : null));
            bottom = top;
        }

        return rings.MoveToImmutable();
    }
}
