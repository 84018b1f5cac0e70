using Ringwright.Core.Patterns;
using Ringwright.Core.Pieces;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Stage;

/// <summary>How far one touch of the brush reaches.</summary>
public enum BrushReach
{
    /// <summary>The piece that is touched.</summary>
    Piece,

    /// <summary>The whole ring.</summary>
    Ring,
}

/// <summary>The brush of one window: its wood, how far a touch reaches, and how often it comes again around the ring.</summary>
public sealed class Painter
{
    /// <summary>Its wood.</summary>
    public string Wood { get; set; } = "walnut";

    /// <summary>How far a touch reaches.</summary>
    public BrushReach Reach { get; set; }

    /// <summary>How often a touch comes again around the ring, evenly.</summary>
    public int Times { get; set; } = 1;

    /// <summary>Paints pieces; rings that are not of equal segments stay as they are.</summary>
    /// <param name="bench">The bench.</param>
    /// <param name="places">Ring and segment of each touch.</param>
    /// <param name="run">Touches of one stroke are one step.</param>
    public void Paint(Workbench bench, IEnumerable<(int Ring, int Segment)> places, string? run)
    {
        ArgumentNullException.ThrowIfNull(bench);
        bench.Change(work => Painted(work, places), run);
    }

    private Work Painted(Work work, IEnumerable<(int Ring, int Segment)> places)
    {
        ImmutableArray<ImmutableArray<string>> rows = [.. work.Piece.Rings.Select(r => Enumerable.Range(0, r.Around).Select(r.WoodOf).ToImmutableArray())];
        foreach ((int ring, int segment) in places.Where(p => p.Ring < rows.Length && work.Piece.Rings[p.Ring] is SegmentedRing))
        {
            int around = rows[ring].Length;
            if (Reach == BrushReach.Ring) rows = rows.SetItem(ring, [.. Enumerable.Repeat(Wood, around)]);
            else
                for (int i = 0; i < Times; i++) rows = rows.SetItem(ring, rows[ring].SetItem((segment + (int)Math.Round((double)i * around / Times)) % around, Wood));
        }

        return new(PieceLattice.Paint(work.Piece, rows), work.Shop);
    }
}
