using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The sheets of a flat board: the cut through it, the stack its rings make, every ring's sizes, what to know, cautions.</summary>
internal static class BoardSheet
{
    private const double Headings = 14; // heading above and air below a picture, mm
    private const double LeastPicture = 55, MostPicture = 110;
    private const double LeastBoard = 25; // of the board itself, mm

    public static void Add(Packet packet, RingJob job)
    {
        BoardGroupPlan board = job.Ring.Board!;
        Paragraph head = new($"{board.Rings.Length} {(board.Rings.Length == 1 ? "ring" : "rings")} out of {board.Name}", TypeScale.Title);
        Section figures = new("To set", new KeyFigures(job.Style.Unit == LengthUnit.Millimetre ? 4 : 3, [.. Figures(job)]));
        double both = Math.Clamp((job.Beside(head, figures) - (2 * (Headings + Sheet.Gap))) / 2, LeastPicture, MostPicture);
        double tall = Math.Min(job.Beside(head) - Headings, Math.Max(both, LeastBoard + BoardSectionPicture.Dimensions(board)));
        ScaledPicture section = BoardSectionPicture.Draw(board, job.Style, new(job.Width, tall));
        ScaledPicture stack = StackPicture.Draw(job.Plan, board, job.Style, new(job.Width, both));
        packet.Flow(job.SheetName("cuts and stack"), section.Scale.ToString(), [
            head,
            new Section($"The board cut through, wide face up, {section.Scale}", new Picture(section.Drawing)),
            new Section($"The stack, {stack.Scale}", new Picture(stack.Drawing, "Dots: the largest outside and the smallest inside to be turned. Dashed: layers from elsewhere.")),
            figures,
        ]);
        packet.Flow(job.SheetName("rings of the board"), "–", [new Section("In the order of cutting", Table(job, board)), .. Findings(job, board), new Section("Take care", new ListBlock(ListMark.Caution, Cautions.ForTiltedRings))]);
    }

    private static IEnumerable<KeyFigure> Figures(RingJob job)
    {
        KeyFigure Of(string caption, string name) => Reading.Of(caption, job.Ring[name], job.Style);
        int tilts = job.Ring.Board!.Tilts.Count();
        return
        [
            Of(tilts == 1 ? "Tilt, all cuts" : "Tilt, first cut", "tilt"),
            Of("Tilt within", "tilt-within"),
            Of("Step from face to face", "step"),
            Of("Start hole Ø", "start-hole"),
        ];
    }

    private static Table Table(RingJob job, BoardGroupPlan board) => new(
        [
            new("", ColumnKind.Numbers), new("Ring"), new("Tilt", ColumnKind.Numbers), new("Inside, wide Ø", ColumnKind.Numbers), new("narrow Ø", ColumnKind.Numbers),
            new("Outside, wide Ø", ColumnKind.Numbers), new("narrow Ø", ColumnKind.Numbers), new("Wide face"), new("Turned by", ColumnKind.Numbers),
        ],
        [.. board.Rings.Select((ring, i) => Row(job, board, ring, i))]);

    private static string[] Row(RingJob job, BoardGroupPlan board, SawnBoardRing ring, int index)
    {
        string Size(double radius) => Caliper.Short(job.Style, 2 * radius);
        double step = 2 * Math.PI / ring.Ring.Segments * ring.Ring.Shift;
        return
        [
            (index + 1).ToString(CultureInfo.InvariantCulture), ring.Ring.Name, job.Style.Print(ring.Inside.Tilt, Quantity.Angle), Size(ring.Wide.Inner), Size(ring.Narrow.Inner),
            Size(ring.Wide.Outer), Size(ring.Narrow.Outer), ring.WideUp ? "up" : "down", job.Style.Print(step, Quantity.Angle),
        ];
    }

    // The carrier's own are on its sheet of settings.
    private static IEnumerable<IBlock> Findings(RingJob job, BoardGroupPlan board)
    {
        string[] found =
        [
            .. job.Plan.Rings.Where(r => ReferenceEquals(r.Board, board) && r.Batches.IsEmpty)
                .SelectMany(r => r.Findings.Select(f => $"{r.Ring.Name}: {f.Sentence.In(job.Style)}")),
        ];
        if (found.Length > 0) yield return new Section("Good to know", new ListBlock(ListMark.Dot, found, RingJob.Words));
    }
}
