using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The sheets of a plain layer: its round in the board, the sizes large and what to know; then the order of work and the cautions.</summary>
internal static class LayerSheet
{
    private const double Headings = 14; // heading above and air below the picture, mm
    private const double LeastPicture = 55, MostPicture = 150;

    public static void Add(Packet packet, RingJob job)
    {
        bool veneer = job.Ring.Ring is SolidLayer { IsVeneer: true };
        Column head = new(3, new Paragraph(RingDescription.Of(job.Ring.Ring).In(job.Style), TypeScale.Title with { Fractions = true }), new Paragraph(job.Ring.Verdict.In(job.Style), RingJob.Words));
        Section figures = new(veneer ? "To cut" : "To saw", new KeyFigures(job.Style.Unit == LengthUnit.Millimetre ? 4 : 3, [.. Figures(job, veneer)]));
        Section steps = new("In this order", new ListBlock(ListMark.Number, [.. job.Ring.Steps.Select(s => s.In(job.Style))], RingJob.Words));
        Section know = new("Good to know", new ListBlock(ListMark.Dot, [.. job.Ring.Findings.Select(f => f.Sentence.In(job.Style))], RingJob.Words));
        Section care = new("Take care", new ListBlock(ListMark.Caution, veneer ? Cautions.ForVeneer : Cautions.ForRounds));
        double tall = Math.Clamp(job.Beside(head, figures, know) - Headings, LeastPicture, MostPicture);
        ScaledPicture layer = LayerPicture.Draw(job.Ring, job.Style, new(job.Width, tall));
        packet.Flow(job.SheetName("round"), layer.Scale.ToString(), [head, new Section($"From above in its {(veneer ? "sheet" : "board")}, {layer.Scale}", new Picture(layer.Drawing)), figures, know]);
        packet.Flow(job.SheetName("order of work"), "–", [steps, care]);
    }

    private static IEnumerable<KeyFigure> Figures(RingJob job, bool veneer)
    {
        KeyFigure Of(string caption, string name) => Reading.Of(caption, job.Ring[name], job.Style);
        string what = veneer ? "Sheet" : "Board";
        return
        [
            Of(veneer ? "Cut the round to Ø" : "Saw the round to Ø", "round"),
            Of(veneer ? "Veneer thickness" : "Plane to a thickness of", "board-thickness"),
            Of($"{what}, width", "board-width"),
            Of($"{what}, length", "board-length"),
        ];
    }
}
