using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Pictures.Pieces;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The first sheet of a piece with a shape or several rings: the whole, its numbers, its rings and its woods.</summary>
internal static class PieceSheet
{
    private const string Name = "The whole piece";
    private const double Headings = 18;  // heading above, caption and air below the picture, mm
    private const double LeastPicture = 100, MostPicture = 170;
    private static readonly string[] FirstNumbers = ["piece-height", "widest", "stack-height", "pieces"]; // what one asks first
    private const double MostWords = 26; // of a name in the table of rings, mm

    public static bool IsFor(Plan plan) => plan.Form is not null || plan.Rings.Length > 1;

    /// <summary>Keeps its sheets at the front of a packet whose page numbers are not known yet; <see cref="Blocks"/> finishes them.</summary>
    public static Action<IEnumerable<IBlock>> Keep(Packet packet, Plan plan, MeasureStyle style, Contents contents)
    {
        (DrawingScale scale, IReadOnlyList<IBlock> blocks) = Blocks(plan, style, packet.FreeArea, contents);
        return packet.Keep(Name, scale.ToString(), blocks);
    }

    /// <summary>What stands on it, and the scale of its picture.</summary>
    public static (DrawingScale Scale, IReadOnlyList<IBlock> Blocks) Blocks(Plan plan, MeasureStyle style, Box free, Contents contents)
    {
        Column head = new(3, new Paragraph(Title(plan), TypeScale.Title), new Paragraph(plan.Verdict.In(style), RingJob.Words));
        Figure[] large = [.. FirstNumbers.Select(n => plan.Figures.FirstOrDefault(f => f.Name == n)).OfType<Figure>()];
        KeyFigures figures = new(style.Unit == LengthUnit.Millimetre ? 4 : 3, [.. large.Select(f => Reading.Of(f.Label, f, style))]);
        Table others = new([new("Also"), new("Value", ColumnKind.Numbers)], [.. plan.Figures.Except(large).Select(f => new[] { f.Label, style.Print(f.Value, f.Quantity) })]);
        double legend = PiecePage.Legend(plan, false, false).HeightAt(free.Width);
        double tall = Math.Clamp(free.Height - head.HeightAt(free.Width) - figures.HeightAt(free.Width) - legend - (2 * Sheet.Gap) - Headings, LeastPicture, MostPicture);
        ScaledPicture picture = PiecePicture.Draw(plan, style, new(free.Width, tall));
        bool shaded = PiecePicture.IsShaded(plan, picture.Scale.Ratio);
        return (picture.Scale, [
            head,
            new Section($"Half from outside, half cut through, {picture.Scale}", new Column(4, new Picture(picture.Drawing, PiecePage.Caption), PiecePage.Legend(plan, shaded, false))),
            figures,
            new Section("Rings, from the bottom up", Rings(plan, style, contents)),
            .. contents.Others() is Section elsewhere ? new IBlock[] { elsewhere } : [],
            new Section("In numbers", others),
            .. WoodKey.Of(plan).Entries.Count <= WoodLegend.Most ? [] : new IBlock[] { new Section("Pieces of each wood", new Table([new("Wood"), new("Pieces", ColumnKind.Numbers), new("In rings", ColumnKind.Numbers)], [.. Woods(plan)])) },
        ]);
    }

    private static string Title(Plan plan)
    {
        string kind = plan.Piece.Kind switch
        {
            null => "Piece",
            PieceKind.PenBarrel => "Pen barrel",
            PieceKind known => known.ToString(),
        };
        int rings = plan.Rings.Length, pieces = plan.Rings.Sum(r => r.Layout.Length);
        return string.Create(CultureInfo.InvariantCulture, $"{kind} of {rings} {(rings == 1 ? "ring" : "rings")}, {pieces:N0} {(pieces == 1 ? "piece" : "pieces")} of wood");
    }

    private static Table Rings(Plan plan, MeasureStyle style, Contents contents) => new(
        [
            new("", ColumnKind.Numbers), new("Ring"), new("Made as"), new("Segments", ColumnKind.Numbers), new("Height", ColumnKind.Numbers),
            new("Outside Ø", ColumnKind.Numbers), new("Inside Ø", ColumnKind.Numbers), new("Rip width", ColumnKind.Numbers), new("Shift", ColumnKind.Numbers), new("Page", ColumnKind.Numbers),
        ],
        [.. plan.Rings.Select((ring, i) => Row(ring, i, style, contents.PageOf(i)))]);

    private static string[] Row(RingPlan plan, int index, MeasureStyle style, string page)
    {
        string Size(Length? length) => length is Length known ? Caliper.Short(style, known.Millimetres) : "–";
        return
        [
            Count(index + 1), Cut(plan.Ring.Name), Cut(MadeAs(plan.Ring)), Count(plan.Ring.Around), Size(plan.Ring.Thickness), Size(plan.Ring.Outside), Size(Inside(plan.Ring)),
            Rip(plan) is Figure rip ? Caliper.Short(style, rip.Value) : "–", plan.Ring.Shift.ToString("0.##", CultureInfo.InvariantCulture), page,
        ];
    }

    // Rounds and board rings are not ripped; staves are sawn to their own widths.
    private static Figure? Rip(RingPlan plan) => plan.Batches.IsEmpty ? null : plan.Find("board-width");

    // Two lines of the narrowest column, so that a row never grows tall.
    private static string Cut(string words) => Shortened.To(words, s => Typesetter.WidthOf(s, TypeScale.Number) <= MostWords);

    private static Length? Inside(Ring ring) => ring is WedgeDisc disc ? disc.Bore : (ring as IHollowRing)?.InnerDiameter;

    private static string MadeAs(Ring ring) => ring switch
    {
        WedgeDisc => "disc",
        OpenRing => "open ring",
        MixedRing => "mixed ring",
        StaveRing => "staves",
        LaminatedRing => "motif band",
        BoardRing board => $"from {board.Board}",
        SolidLayer { IsVeneer: true } => "veneer",
        SolidLayer => "one piece",
        _ => "ring",
    };

    private static IEnumerable<string[]> Woods(Plan plan) => PiecePage.Pieces(plan).OrderByDescending(w => w.Value).Select(wood => new[]
    {
        wood.Key, Count(wood.Value), Count(plan.Rings.Count(r => r.Layout.Any(s => string.Equals(s.Wood, wood.Key, StringComparison.OrdinalIgnoreCase)))),
    });

    private static string Count(int count) => count.ToString("N0", CultureInfo.InvariantCulture);
}
