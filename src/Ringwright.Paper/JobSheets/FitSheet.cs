using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The sheet at the bench: what a gap says about the fence, lines for the record, cautions.</summary>
internal static class FitSheet
{
    private const double GapTall = 52; // of the picture of a gap, mm
    private const double TableShare = 2; // of the width, against 1 for the picture
    private static readonly double[] GapsInMillimetres = [0.1, 0.2, 0.5, 1];
    private static readonly double[] GapsInInches = [0.004, 0.008, 0.02, 0.04];

    public static void Add(Packet packet, RingJob job) => packet.Flow(job.SheetName("dry fit and record"), "–", [
        job.Ring.Ring is OpenRing ? new Section("If the last gap is not like the others", OpenGaps(job)) : new Section("If the dry ring gapes", Gaps(job)),
        new Section("Write down for the next plan", new BlankFields(
            4,
            "angle of wedge 1", "angle of wedge 2", "angle of wedge 3", "date",
            job.Ring.Ring is OpenRing ? "first gap, at the rim" : "gap of the dry ring, at the rim", job.Ring.Ring is OpenRing ? "last gap, at the rim" : "gap, at the centre", "fence moved by", "wedges lost",
            "minutes milling", "minutes sawing", "minutes sanding", "abrasive")),
    ]);

    /// <summary>Gaps worth a row, mm, round in the reader's unit.</summary>
    public static double[] GapsIn(MeasureStyle style) => style.Unit == LengthUnit.Millimetre ? GapsInMillimetres : [.. GapsInInches.Select(g => g * MeasureStyle.MillimetresPerInch)];

    private static Column Gaps(RingJob job)
    {
        double[] gaps = GapsIn(job.Style);
        var ring = DiagnosedRing.Of(job.Ring, job.Shop.Sled);
        FenceCorrection example = FenceCorrection.Of(ring, OpenAt.Rim, gaps[0]);
        string caption = $"A gap of {job.Fine(gaps[0])} at the rim: each fence grows by {job.Style.Print(example.FenceAngle, Quantity.FineAngle)}.";
        double width = (job.Width - Columns.Gutter) / (1 + TableShare);
        Drawing rim = GapPicture.Draw(job.Ring.Glued, atRim: true, new(job.Width / 2.5, GapTall));
        Drawing centre = GapPicture.Draw(job.Ring.Glued, atRim: false, new(job.Width / 2.5, GapTall));
        double tall = Math.Max(rim.Height, centre.Height);
        return new Column(
            5,
            new Columns(
                Case(rim.Standing(tall), "Open at the rim", "The wedges are too narrow in angle: increase the mitre. Press all joints shut but one, and read that one at the rim."),
                Case(centre.Standing(tall), "Open at the centre", "The wedges are too wide in angle: decrease the mitre. Press the rims together, and add up the openings at the inner ends.")),
            new Paragraph(job.Ring.Batches.Length > 1 ? "Every mitre of this ring changes by the same angle; the rule is told for wedge 1." : "The rule is read where the settings say."),
            new Columns(
                (TableShare, Table(job, ring, gaps)),
                (1, new Picture(CorrectionPicture.Draw(example, job.Style, new(width, 62)), caption))));
    }

    // Laid from spacer to spacer, so that all error is in the last gap.
    private static Column OpenGaps(RingJob job)
    {
        double[] gaps = GapsIn(job.Style);
        var ring = DiagnosedRing.Of(job.Ring, job.Shop.Sled);
        FenceCorrection example = FenceCorrection.Of(ring, OpenAt.Rim, gaps[0]);
        string caption = $"The last gap {job.Fine(gaps[0])} too wide: each fence grows by {job.Style.Print(example.FenceAngle, Quantity.FineAngle)}.";
        return new Column(
            5,
            new Paragraph("Lay all segments dry from spacer to spacer, and compare the last gap with the spacer, at the rim."),
            new Paragraph("Too wide: the wedges are too narrow in angle, increase the mitre. Too narrow: decrease it by the same. Even gaps without new wedges: lay the segments on the drawn steps, each takes its part."),
            new Columns(
                (TableShare, new Table(
                    [new("Last gap differs by", ColumnKind.Numbers), new("Each fence", ColumnKind.Numbers), new("On the rule", ColumnKind.Numbers), new("Each gap, on drawn steps", ColumnKind.Numbers)],
                    [.. gaps.Select(gap => OpenRow(job, gap, FenceCorrection.Of(ring, OpenAt.Rim, gap)))])),
                (1, new Picture(CorrectionPicture.Draw(example, job.Style, new((job.Width - Columns.Gutter) / (1 + TableShare), 62)), caption))));
    }

    private static string[] OpenRow(RingJob job, double gap, FenceCorrection fence) =>
        [job.Fine(gap), Angle(job, fence), Signed(job.Fine(fence.RuleChange)), job.Fine(gap / job.Ring.Ring.Around)];

    /// <summary>A picture of a gap, what it is, and what to do.</summary>
    public static Column Case(Drawing picture, string what, string then) => new(
        3,
        new Picture(picture),
        new Paragraph(what, TypeScale.Body with { Weight = FontWeight.SemiBold }),
        new Paragraph(then));

    private static Table Table(RingJob job, DiagnosedRing ring, double[] gaps) => new(
        [
            new("Gap", ColumnKind.Numbers), new("Rim: fence", ColumnKind.Numbers), new("Rim: on the rule", ColumnKind.Numbers),
            new("Centre: fence", ColumnKind.Numbers), new("Centre: on the rule", ColumnKind.Numbers),
        ],
        [.. gaps.Select(gap => Row(job, gap, FenceCorrection.Of(ring, OpenAt.Rim, gap), FenceCorrection.Of(ring, OpenAt.Centre, gap)))]);

    private static string[] Row(RingJob job, double gap, FenceCorrection rim, FenceCorrection centre) =>
        [job.Fine(gap), Angle(job, rim), Signed(job.Fine(rim.RuleChange)), Angle(job, centre), Signed(job.Fine(centre.RuleChange))];

    public static string Angle(RingJob job, FenceCorrection correction) => Signed(job.Style.Print(correction.FenceAngle, Quantity.FineAngle));

    /// <summary>With its sign, a plus too.</summary>
    public static string Signed(string text) => text.StartsWith('−') ? text : $"+{text}";
}
