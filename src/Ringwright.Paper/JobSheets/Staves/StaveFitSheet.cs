using Ringwright.Core.Measures;
using Ringwright.Core.Rings;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The sheet at the bench for staves: what a gap says about tilt and mitre, lines for the record.</summary>
internal static class StaveFitSheet
{
    private const double GapTall = 52; // of the picture of a gap, mm

    public static void Add(Packet packet, RingJob job) => packet.Flow(job.SheetName("dry fit and record"), "–", [
        new Section("If the dry ring gapes", Gaps(job)),
        new Section("Write down for the next plan", new BlankFields(
            4,
            "tilt as read", "mitre as read", "angle between faces", "date",
            "gap of the dry ring, outside", "gap, inside", "tilt changed by", "staves lost",
            "minutes milling", "minutes sawing", "minutes sanding", "abrasive")),
    ]);

    private static Column Gaps(RingJob job)
    {
        double[] gaps = FitSheet.GapsIn(job.Style);
        double[] counts = [job.Ring["tilt-counts"].Value, job.Ring["mitre-counts"].Value];
        bool leaning = job.Ring.Find("mitre") is not null;
        Drawing outside = GapPicture.Draw(job.Ring.Glued, atRim: true, new(job.Width / 2.5, GapTall)), inside = GapPicture.Draw(job.Ring.Glued, atRim: false, new(job.Width / 2.5, GapTall));
        double tall = Math.Max(outside.Height, inside.Height);
        return new Column(
            5,
            new Columns(
                FitSheet.Case(outside.Standing(tall), "Open outside", "The staves are too narrow in angle: tilt the blade more. Press all joints shut but one, and read that one outside, at the wider end."),
                FitSheet.Case(inside.Standing(tall), "Open inside", "The staves are too wide in angle: tilt the blade less. Press the outsides together, and add up the openings inside, at the wider end.")),
            new Paragraph(leaning ? "Change the tilt or the mitre, not both; the ring then leans a little more or less than planned." : "Only the tilt counts; a joint that is open at one end only has edges that are not parallel."),
            Table(job, gaps, counts, leaning));
    }

    private static Table Table(RingJob job, double[] gaps, double[] counts, bool leaning)
    {
        TableColumn[] head = [new("Gap", ColumnKind.Numbers), new("Outside: tilt", ColumnKind.Numbers), new("Inside: tilt", ColumnKind.Numbers)];
        TableColumn[] mitre = [new("or outside: mitre", ColumnKind.Numbers), new("or inside: mitre", ColumnKind.Numbers)];
        return new(leaning ? [.. head, .. mitre] : head, [.. gaps.Select(gap => Row(job, gap, counts, leaning))]);
    }

    // E = gap over the distance at which the joint opens; each of the 2 N edges takes its share, through what the setting counts.
    private static string[] Row(RingJob job, double gap, double[] counts, bool leaning)
    {
        StaveGeometry stave = job.Ring.Stave!.Value;
        double cos = Math.Cos(stave.HalfAngle), outer = stave.OuterApothem(stave.WideEnd) / cos, joint = outer - (stave.InnerApothem(stave.WideEnd) / cos);
        string Of(double closing, double count) => FitSheet.Signed(job.Style.Print(closing / (2 * stave.Segments * count), Quantity.FineAngle));
        string[] tilt = [job.Fine(gap), Of(gap / outer, counts[0]), Of(-gap / joint, counts[0])];
        return leaning ? [.. tilt, Of(gap / outer, counts[1]), Of(-gap / joint, counts[1])] : tilt;
    }
}
