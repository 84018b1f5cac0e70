using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The sheet at the bench: what the plan found, what a gap says about the fence, lines for the record, cautions.</summary>
internal static class FitSheet
{
    private const int MostFindings = 8;
    private static readonly double[] GapsInMillimetres = [0.1, 0.2, 0.5, 1];
    private static readonly double[] GapsInInches = [0.004, 0.008, 0.02, 0.04];

    public static void Add(Packet packet, RingJob job) => packet.Flow(job.SheetName("fit and record"), "–", [
        new Section("Know before you saw", new ListBlock(ListMark.Dot, [.. Findings(job)])),
        new Section("If the dry ring gapes", Gaps(job)),
        new Section("Write down for the next plan", new BlankFields(
            4,
            "angle of wedge 1", "angle of wedge 2", "angle of wedge 3", "date",
            "gap of the dry ring, at the rim", "gap, at the centre", "fence moved by", "wedges lost",
            "minutes milling", "minutes sawing", "minutes sanding", "abrasive")),
        new Section("Take care", new ListBlock(ListMark.Caution, Cautions.For(job.Shop.Sled.Kind))),
    ]);

    private static IEnumerable<string> Findings(RingJob job)
    {
        foreach (Finding finding in job.Ring.Findings.Take(MostFindings)) yield return finding.Sentence.In(job.Style);
        int more = job.Ring.Findings.Length - MostFindings;
        if (more > 0) yield return $"{more} more in the plan's file.";
    }

    private static Column Gaps(RingJob job)
    {
        bool metric = job.Style.Unit == LengthUnit.Millimetre;
        double[] gaps = metric ? GapsInMillimetres : [.. GapsInInches.Select(g => g * 25.4)];
        GapCorrection correction = new(job.Ring.Glued, job.Ring["mitre"].Value, job.Shop.Sled.RuleDistance.Millimetres);
        double shared = job.Width - 8;
        FenceCorrection example = correction.AtRim(gaps[0]);
        string caption = $"A gap of {Fine(job, gaps[0])} at the rim: each fence grows by {job.Style.Print(example.Change, Quantity.FineAngle)}.";
        return new Column(
            4,
            new Paragraph("Open at the rim: the wedges are too narrow in angle. Increase the mitre. Read the one open joint at the rim, all others pressed shut."),
            new Paragraph("Open at the centre: the wedges are too wide in angle. Decrease the mitre. Add up the openings at the inner ends, the rims touching."),
            new Columns(
                (1.3, Table(job, correction, gaps)),
                (1, new Picture(CorrectionPicture.Draw(example, job.Style, new(shared / 2.3, 46)), caption))));
    }

    private static Table Table(RingJob job, GapCorrection correction, double[] gaps) => new(
        [new("Gap", ColumnKind.Numbers), new("at the rim: each fence", ColumnKind.Numbers), new("on the rule", ColumnKind.Numbers), new("at the centre: each fence", ColumnKind.Numbers), new("on the rule", ColumnKind.Numbers)],
        [.. gaps.Select(gap => Row(job, gap, correction.AtRim(gap), correction.AtCentre(gap)))]);

    private static string[] Row(RingJob job, double gap, FenceCorrection rim, FenceCorrection centre) =>
        [Fine(job, gap), Angle(job, rim), Signed(Fine(job, rim.OffsetChange)), Angle(job, centre), Signed(Fine(job, centre.OffsetChange))];

    private static string Angle(RingJob job, FenceCorrection correction) => Signed(job.Style.Print(correction.Change, Quantity.FineAngle));

    private static string Signed(string text) => text.StartsWith('−') ? text : $"+{text}";

    private static string Fine(RingJob job, double millimetres) => job.Style.Print(millimetres, Quantity.FineLength);
}

/// <summary>
/// From a gap of the dry ring to the fence. Closing error E = gap / distance over which the joint opens; each of the 2 N
/// faces takes E / (2 N) (design, section 6; arc = radius · angle, small angles).
/// </summary>
/// <param name="Glued">The wedges.</param>
/// <param name="Mitre">The fence's angle now, rad.</param>
/// <param name="RuleDistance">Where the fence is measured, mm.</param>
internal readonly record struct GapCorrection(WedgeGeometry Glued, double Mitre, double RuleDistance)
{
    /// <summary>One joint open by <paramref name="gap"/> mm at the rim, all others shut: E = gap / R, R to the rim's corners.</summary>
    public FenceCorrection AtRim(double gap) => Of(gap / Glued.OuterCorner);

    /// <summary>Joints open by <paramref name="gap"/> mm in all at their inner ends, rims touching: −E = gap / length of a joint.</summary>
    public FenceCorrection AtCentre(double gap) => Of(-gap / (Glued.OuterCorner - Glued.InnerCorner));

    private FenceCorrection Of(double closing) => new(Mitre, closing / (2 * Glued.Segments), RuleDistance);
}
