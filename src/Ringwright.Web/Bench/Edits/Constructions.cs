using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Web.Bench.Edits;

/// <summary>The ways a ring can be built.</summary>
public static class Constructions
{
    /// <summary>All of them by the name in the file, with a few words each.</summary>
    public static ImmutableArray<(string Name, string Label, string Words)> All { get; } =
    [
        (WedgeDisc.ConstructionName, "Wedge disc", "solid, wedges to a point"),
        (SegmentRing.ConstructionName, "Segment ring", "closed, around a hole"),
        (OpenRing.ConstructionName, "Open ring", "segments with gaps"),
        (MixedRing.ConstructionName, "Mixed ring", "unequal segments, spacers"),
        (StaveRing.ConstructionName, "Stave ring", "grain up the piece"),
        (LaminatedRing.ConstructionName, "Laminated ring", "a motif from glued strips"),
        (BoardRing.ConstructionName, "Board ring", "out of one flat board"),
        (SolidLayer.ConstructionName, "Solid layer", "one piece, or a veneer"),
    ];

    /// <summary>The construction of a ring, as the file names it.</summary>
    public static string NameOf(Ring ring) => ring switch
    {
        WedgeDisc => WedgeDisc.ConstructionName,
        SegmentRing => SegmentRing.ConstructionName,
        OpenRing => OpenRing.ConstructionName,
        MixedRing => MixedRing.ConstructionName,
        StaveRing => StaveRing.ConstructionName,
        LaminatedRing => LaminatedRing.ConstructionName,
        BoardRing => BoardRing.ConstructionName,
        _ => SolidLayer.ConstructionName,
    };

    /// <summary>Its label.</summary>
    public static string LabelOf(Ring ring) => All.First(c => c.Name == NameOf(ring)).Label;

    /// <summary>
    /// The sheet with the chosen rings built another way. What they had before is kept for switching back; sizes, count and
    /// woods go along.
    /// </summary>
    public static Sheet Switch(Sheet sheet, string construction)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        Work work = sheet.Work;
        ImmutableDictionary<string, Ring> kept = sheet.Kept;
        bool shaped = work.Piece.Shape is not null;
        foreach (int i in sheet.Selected)
        {
            Ring before = work.Piece.Rings[i];
            if (NameOf(before) == construction) continue;
            kept = kept.SetItem($"{before.Name}, {NameOf(before)}", before);
            Ring made = kept.TryGetValue($"{before.Name}, {construction}", out Ring? earlier)
                ? earlier with { Name = before.Name, Thickness = before.Thickness, Diameter = before.Diameter, Allowance = before.Allowance, Shift = before.Shift }
                : Made(before, construction, shaped);
            work = work.WithRing(i, made);
        }

        return (sheet with { Kept = kept }).With(work);
    }

    private static Ring Made(Ring from, string construction, bool shaped)
    {
        int n = from.Around >= 3 ? from.Around : 12;
        ImmutableArray<string> woods = [.. from.Cycle.Take(n)];
        // A ring that never had an inner diameter starts with half the outer one; with a shape it follows from that.
        Length? inner = (from as IHollowRing)?.InnerDiameter ?? (shaped || from.Diameter is null ? null : Length.FromMillimetres(Math.Round(from.Diameter.Value.Millimetres / 2, 2)));
        return construction switch
        {
            WedgeDisc.ConstructionName => new WedgeDisc { Name = from.Name, Thickness = from.Thickness, Diameter = from.Diameter, Allowance = from.Allowance, Shift = from.Shift, Segments = n, Woods = woods },
            SegmentRing.ConstructionName => new SegmentRing { Name = from.Name, Thickness = from.Thickness, Diameter = from.Diameter, Allowance = from.Allowance, Shift = from.Shift, Segments = n, Woods = woods, InnerDiameter = inner },
            // A quarter of each segment's place stays open: wide enough to be meant, narrow enough to bear on its neighbours.
            OpenRing.ConstructionName => new OpenRing { Name = from.Name, Thickness = from.Thickness, Diameter = from.Diameter, Allowance = from.Allowance, Shift = from.Shift, Segments = n, Woods = woods, InnerDiameter = inner, Gap = Angle.FromDegrees(Math.Round(90.0 / n, 2)) },
            StaveRing.ConstructionName => new StaveRing { Name = from.Name, Thickness = from.Thickness, Diameter = from.Diameter, Allowance = from.Allowance, Shift = from.Shift, Segments = n, Woods = woods, InnerDiameter = inner, Lean = shaped ? null : Angle.FromDegrees(0) },
            BoardRing.ConstructionName => new BoardRing { Name = from.Name, Thickness = from.Thickness, Diameter = from.Diameter, Allowance = from.Allowance, Shift = from.Shift, Segments = n, Woods = woods, InnerDiameter = inner, Board = "Board A" },
            MixedRing.ConstructionName => new MixedRing { Name = from.Name, Thickness = from.Thickness, Diameter = from.Diameter, Allowance = from.Allowance, Shift = from.Shift, InnerDiameter = inner, Parts = Parts(woods), Repeats = Math.Max(1, n / woods.Length) },
            LaminatedRing.ConstructionName => new LaminatedRing { Name = from.Name, Thickness = from.Thickness, Diameter = from.Diameter, Allowance = from.Allowance, Shift = from.Shift, Segments = n, InnerDiameter = inner, Strips = [.. woods.Distinct(StringComparer.OrdinalIgnoreCase).Select(w => new Strip(w, Length.FromMillimetres(6)))], Recut = Angle.FromDegrees(45), Mirrored = true },
            _ => new SolidLayer { Name = from.Name, Thickness = from.Thickness, Diameter = from.Diameter, Allowance = from.Allowance, Wood = woods[0] },
        };
    }

    private static ImmutableArray<RingPart> Parts(ImmutableArray<string> woods) => [.. woods.Select(w => new RingPart { Wood = w, Share = 1 })];
}
