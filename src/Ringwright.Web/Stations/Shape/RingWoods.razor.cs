using Ringwright.Core.Measures;
using Ringwright.Core.Patterns.Reports;
using Ringwright.Core.Pieces;
using Ringwright.Core.Timber;
using Ringwright.Web.Bench.Fields;
using Ringwright.Web.Drawing;

namespace Ringwright.Web.Stations;

/// <summary>What the shown ring is made of: its woods in turn, its parts, or the strips of its board.</summary>
public partial class RingWoods
{
    // More are not read one under the other; they were painted.
    private const int MostListed = 12;

    private Ring Ring => Sheet.Good.Piece.Rings[Sheet.Shown];

    private string Thing => Ring switch
    {
        MixedRing => "segment",
        LaminatedRing => "strip",
        _ => "wood",
    };

    private string Legend => Ring switch
    {
        MixedRing => "Parts, in turn around the ring: wood, share of the turn or thickness",
        LaminatedRing => "Strips of the laminated board: wood, thickness",
        _ => "Woods, in turn around the ring",
    };

    private IReadOnlyList<ImmutableArray<Lens>> Rows =>
    [
        .. RingLenses.Of(Sheet.Work, Sheet.Shown)
            .Where(l => l.Field.Key.Split(' ')[0] is "woods" or "parts" or "strips")
            .GroupBy(l => l.Field.Key.Split(',')[0]).Select(g => g.ToImmutableArray()),
    ];

    private SpeciesTable Table => SpeciesTable.For(Sheet.Good.Shop);

    private WoodLook Look(Lens wood)
    {
        string name = wood.Read(Sheet.Work);
        return WoodLook.For(Ring.Cycle.Append(name), Table).First(l => string.Equals(l.Name, name, StringComparison.OrdinalIgnoreCase));
    }

    private static string Counts(SegmentedRing ring) => string.Join(", ", WoodCounts.Of([ring.Woods]).InAll.Select(c => $"{c.Wood} {c.Pieces}"));

    // A wood that is not there yet shows best that one was added.
    private static string Fresh(IEnumerable<string> woods) => Wood.All.Select(w => w.Name).FirstOrDefault(name => !woods.Contains(name, StringComparer.OrdinalIgnoreCase)) ?? Wood.All[0].Name;

    private void Add() => Each(ring => ring switch
    {
        SegmentedRing r => r with { Woods = r.Woods.Add(Fresh(r.Woods)) },
        MixedRing r => r with { Parts = r.Parts.Add(new() { Wood = Fresh(r.Cycle), Share = 1 }) },
        LaminatedRing r => r with { Strips = r.Strips.Add(new(Fresh(r.Cycle), r.Strips[^1].Thickness)) },
        _ => ring,
    });

    private void AddSpacer() => Each(ring => ring is MixedRing r ? r with { Parts = r.Parts.Add(new() { Wood = Fresh(r.Cycle), Thickness = Length.FromMillimetres(1) }) } : ring);

    private void Remove(int index) => Each(ring => ring switch
    {
        SegmentedRing r when index < r.Woods.Length && r.Woods.Length > 1 => r with { Woods = r.Woods.RemoveAt(index) },
        MixedRing r when index < r.Parts.Length && r.Parts.Length > 1 => r with { Parts = r.Parts.RemoveAt(index) },
        LaminatedRing r when index < r.Strips.Length && r.Strips.Length > 1 => r with { Strips = r.Strips.RemoveAt(index) },
        _ => ring,
    });

    // Rings of another construction that are chosen too stay as they are.
    private void Each(Func<Ring, Ring> change)
    {
        Type kind = Ring.GetType();
        ImmutableSortedSet<int> chosen = Sheet.Selected;
        Bench.Change(work => chosen.Where(i => work.Piece.Rings[i].GetType() == kind).Aggregate(work, (w, i) => w.WithRing(i, change(w.Piece.Rings[i]))));
    }
}
