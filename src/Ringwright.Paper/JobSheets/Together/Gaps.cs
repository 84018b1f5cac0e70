using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Pictures;

namespace Ringwright.Paper.JobSheets;

/// <summary>What a gap of the dry ring asks of the fence: the pictures once, the moves ring by ring.</summary>
internal static class Gaps
{
    private const double GapTall = 40;      // of the picture of a gap, mm
    private const double PictureShare = 1.0 / 3, PictureTall = 58;
    private const int Shown = 3;            // gaps told of each ring, the smallest

    public static IEnumerable<IBlock> Of(AllRings rings)
    {
        if (rings.Jobs.Count == 0) yield break;
        RingJob[] closed = [.. rings.Jobs.Where(j => j.Ring.Ring is not OpenRing)], open = [.. rings.Jobs.Where(j => j.Ring.Ring is OpenRing)];
        RingJob example = closed.Length > 0 ? closed[closed.Length / 2] : open[0];
        if (closed.Length > 0) yield return new Section("If a dry ring gapes", Cases(example));
        if (open.Length > 0)
        {
            yield return new Section("If the last gap of an open ring is not like the others", new Paragraph(
                "Lay all segments dry from spacer to spacer, and compare the last gap with the spacer, at the rim. Too wide: the wedges are too narrow in angle, increase the mitre as for a gap at the rim. Too narrow: decrease it by the same. Even gaps without new wedges: lay the segments on the drawn steps, each takes its part."));
        }

        double[] gaps = FitSheet.GapsIn(example.Style)[..Shown];
        yield return new Section("What a gap asks of the rule, ring by ring", Moves(rings, gaps, (job, fence) => FitSheet.Signed(job.Fine(fence.RuleChange))));
        yield return new Section("The same as an angle of the fence", Moves(rings, gaps, FitSheet.Angle));
    }

    private static Column Cases(RingJob example)
    {
        double gap = FitSheet.GapsIn(example.Style)[0], third = (example.Width - (2 * Columns.Gutter)) * PictureShare;
        FenceCorrection move = FenceCorrection.Of(DiagnosedRing.Of(example.Ring, example.Shop.Sled), OpenAt.Rim, gap);
        Drawing rim = GapPicture.Draw(example.Ring.Glued, atRim: true, new(third, GapTall)), centre = GapPicture.Draw(example.Ring.Glued, atRim: false, new(third, GapTall));
        double tall = Math.Max(rim.Height, centre.Height);
        string told = example.Shop.Sled.Kind == SledKind.TwoFences ? "each fence" : "the fence";
        return new Column(
            4,
            new Columns(
                FitSheet.Case(rim.Standing(tall), "Open at the rim", "The wedges are too narrow in angle: increase the mitre. Press all joints shut but one, and read that one at the rim."),
                FitSheet.Case(centre.Standing(tall), "Open at the centre", "The wedges are too wide in angle: decrease the mitre. Press the rims together, and add up the openings at the inner ends."),
                new Picture(CorrectionPicture.Draw(move, example.Style, new(third, PictureTall)), $"{example.Ring.Ring.Name}, {example.Fine(gap)} at the rim: {told} grows by {example.Style.Print(move.FenceAngle, Quantity.FineAngle)}.")),
            new Paragraph($"Plus: away from square. The rule is read where the settings say, at {example.Length(example.Shop.Sled.RuleDistance.Millimetres)}. Wedges that are not all alike: every mitre of the ring changes by the same angle; the rule is told for wedge 1."));
    }

    private static Table Moves(AllRings rings, double[] gaps, Func<RingJob, FenceCorrection, string> told)
    {
        RingJob first = rings.Jobs[0];
        return new(
            [
                new("Ring"), .. gaps.Select(g => new TableColumn($"Rim {first.Fine(g)}", ColumnKind.Numbers)), .. gaps.Select(g => new TableColumn($"Centre {first.Fine(g)}", ColumnKind.Numbers)),
            ],
            AllRings.Rows(rings.Jobs.Select(job => (job.Ring.Ring.Name, Row(job, gaps, told)))));
    }

    private static string[] Row(RingJob job, double[] gaps, Func<RingJob, FenceCorrection, string> told)
    {
        var ring = DiagnosedRing.Of(job.Ring, job.Shop.Sled);
        IEnumerable<string> At(OpenAt where) => gaps.Select(g => job.Ring.Ring is OpenRing && where == OpenAt.Centre ? "–" : told(job, FenceCorrection.Of(ring, where, g)));
        return [.. At(OpenAt.Rim), .. At(OpenAt.Centre)];
    }
}
