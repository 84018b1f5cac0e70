using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>
/// Blanks for what is measured at saw, sander and bench, ring by ring: the fields of the record document, from which the next plan
/// learns.
/// </summary>
internal static class RecordSheet
{
    private const double Ring = 3, Angle = 1.7; // shares of the width, against 1 for a blank

    public static bool IsFor(Plan plan) => plan.Rings.Any(r => !r.Batches.IsEmpty);

    public static void Add(Packet packet, Plan plan, MeasureStyle style)
    {
        string[][] runs = [.. Runs(plan, style)];
        string[][] rings = [.. plan.Rings.Where(r => !r.Batches.IsEmpty).Select(r => new[] { r.Ring.Name, Count(r.Layout.Length) })];
        BlankColumn ring = new("ring", Ring), angle = new("wedge angle wanted", Angle);
        packet.Flow("Record", "–", [
            new Column(3, new Paragraph("What really happened", TypeScale.Title), new Paragraph("Copy it into your record; the next plan then works with your own angles, losses and times.", RingJob.Words)),
            new BlankFields(3, "saw, blade and sled", "wood and its moisture", "date"),
            new Section("At the saw and the sander", new BlankGrid([ring, angle, new("wedges sawn"), new("of them lost"), new("cuts timed"), new("minutes"), new("faces sanded"), new("minutes")], runs)),
            new Section("Wedge angles, in the order of sawing", new BlankGrid([ring, angle, .. Enumerable.Range(1, 6).Select(i => new BlankColumn($"angle {i}"))], runs)),
            new Section("The ring laid dry, all joints but the last pressed shut", new BlankGrid(
                [ring, new("wedges"), new("from boards"), new("last gap", 1.4), new("open at rim or centre", 1.6), new($"read at: rim gap, from the centre; centre gap, from the rim", 2.6)], rings)),
        ]);
    }

    // A run with the fences set once: a row for each batch of a ring.
    private static IEnumerable<string[]> Runs(Plan plan, MeasureStyle style) => plan.Rings.SelectMany(r => r.Batches.Select((batch, b) => new[]
    {
        r.Batches.Length == 1 ? r.Ring.Name : $"{r.Ring.Name}, wedge {b + 1}", style.Print(batch.Glued.WedgeAngle, Quantity.Angle),
    }));

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
