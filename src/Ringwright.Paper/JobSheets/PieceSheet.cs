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
    private const double MostWords = 26; // of a name in the table of rings, mm
    private const int RowsTogether = 15; // of a long table; it may be divided after each

    public static bool IsFor(Plan plan) => plan.Form is not null || plan.Rings.Length > 1;

    public static void Add(Packet packet, Plan plan, MeasureStyle style)
    {
        Box free = packet.FreeArea;
        Column head = new(3, new Paragraph(Title(plan), TypeScale.Title), new Paragraph(plan.Verdict.In(style), RingJob.Words));
        Section figures = new("In numbers", new KeyFigures(style.Unit == LengthUnit.Millimetre ? 4 : 3, [.. plan.Figures.Select(f => Reading.Of(f.Label, f, style))]));
        double legend = PiecePage.Legend(plan, false, false).HeightAt(free.Width);
        double above = head.HeightAt(free.Width), below = figures.HeightAt(free.Width);
        double tall = Math.Clamp(free.Height - above - below - legend - (3 * Sheet.Gap) - Headings, LeastPicture, MostPicture);
        ScaledPicture picture = PiecePicture.Draw(plan, style, new(free.Width, tall));
        bool shaded = PiecePicture.IsShaded(plan, picture.Scale.Ratio);
        packet.Flow(Name, picture.Scale.ToString(), [
            head,
            new Section($"Half from outside, half cut through, {picture.Scale}", new Column(4, new Picture(picture.Drawing, PiecePage.Caption), PiecePage.Legend(plan, shaded, false))),
            figures,
            .. Divided("Rings, from the bottom up", plan.Rings.Select((r, i) => Row(r, i, style)), Rings),
            .. WoodKey.Of(plan).Entries.Count <= WoodLegend.Most ? [] : Divided("Pieces of each wood", Woods(plan), rows => new([new("Wood"), new("Pieces", ColumnKind.Numbers), new("In rings", ColumnKind.Numbers)], rows)),
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

    private static IEnumerable<IBlock> Divided(string heading, IEnumerable<string[]> rows, Func<string[][], Table> table) =>
        rows.Chunk(RowsTogether).Select((some, i) => i == 0 ? new Section(heading, table(some)) : (IBlock)table(some));

    private static Table Rings(string[][] rows) => new(
        [
            new("", ColumnKind.Numbers), new("Ring"), new("Made as"), new("Segments", ColumnKind.Numbers), new("Height", ColumnKind.Numbers),
            new("Outside Ø", ColumnKind.Numbers), new("Inside Ø", ColumnKind.Numbers), new("Rip width", ColumnKind.Numbers), new("Shift", ColumnKind.Numbers),
        ],
        rows);

    private static string[] Row(RingPlan plan, int index, MeasureStyle style)
    {
        string Size(Length? length) => length is Length known ? Caliper.Short(style, known.Millimetres) : "–";
        return
        [
            Count(index + 1), Cut(plan.Ring.Name), Cut(MadeAs(plan.Ring)), Count(plan.Ring.Around), Size(plan.Ring.Thickness), Size(plan.Ring.Outside), Size(Inside(plan.Ring)),
            Rip(plan) is Figure rip ? Caliper.Short(style, rip.Value) : "–", plan.Ring.Shift.ToString("0.##", CultureInfo.InvariantCulture),
        ];
    }

    // Rounds and board rings are not ripped; staves are sawn to their own widths.
    private static Figure? Rip(RingPlan plan) => plan.Batches.IsEmpty ? null : plan.Find("board-width");

    // Two lines of the narrowest column, so that a row never grows tall.
    private static string Cut(string words) => Shortened.To(words, s => Typesetter.Set(s, TypeScale.Number).Width <= MostWords);

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
