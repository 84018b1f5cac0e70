using Ringwright.Core;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Tests.JobSheets;

namespace Ringwright.Paper.Tests;

/// <summary>Pictures that stand by themselves: nothing leaves the page, no two texts run into each other, and they say what is so.</summary>
public class FitPictureTests
{
    private static readonly MeasureStyle Style = MeasureStyle.Millimetres;

    [Theory]
    [InlineData(6, 0.02)]
    [InlineData(24, -0.01)]
    [InlineData(48, 0.03)]
    [InlineData(180, 0.01)]
    public void A_dry_fit_numbers_its_joints_and_points_out_the_widest(int n, double closing)
    {
        double half = ((2 * Math.PI) - closing) / n / 2;
        double Width(double radius) => 2 * radius * Math.Tan(half);
        FitWedge[] wedges = [.. Enumerable.Range(0, n).Select(_ => FitWedge.FromCaliper(Width(50), Width(30), 20))];
        DryFitResult fit = DryFitSolver.Fit(wedges);
        Drawing page = DryFitPicture.Draw(fit, "Ring", Style);
        AssertClean(page);
        string worst = $"{fit.Summary.WorstJoint + 1}: {Style.Print(fit.Summary.WorstGap, Quantity.FineLength)} at the {(closing > 0 ? "rim" : "centre")}";
        Assert.Contains(worst, page.TextBoxes.Select(b => b.Text));
    }

    [Theory]
    [InlineData(SledKind.TwoFences, 0.5)]
    [InlineData(SledKind.OneFence, 0.001)]
    [InlineData(SledKind.DiscSander, 3)]
    public void A_diagnosis_shows_its_answer(SledKind kind, double gap)
    {
        RingPlan ring = Example.PlanOf(Example.Open, kind).Rings[0];
        FitDiagnosis diagnosis = FitDiagnosis.Of(DiagnosedRing.Of(ring, new Sled { Kind = kind }), [new GatheredGap(OpenAt.Rim, JointLevel.Middle, gap)]);
        Drawing page = DiagnosisPicture.Draw(diagnosis, Style);
        AssertClean(page);
        Assert.Contains(diagnosis.Advice[0].In(Style)[..20], string.Join(' ', page.TextBoxes.Select(b => b.Text)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, 1)]
    [InlineData(8, 9)]
    [InlineData(30, 40)]
    [InlineData(120, 2)]
    public void A_reach_map_letters_every_cell_that_cannot_be_made(int columns, int rows)
    {
        ReachMap map = Map(columns, rows);
        Drawing page = ReachPicture.Draw(map, Style);
        AssertClean(page);
        ReachStop[] stops = [.. map.Cells.Select(c => c.Stop).Where(s => s != ReachStop.None)];
        Assert.Equal(stops.Length + stops.Distinct().Count(), page.TextBoxes.Count(b => b.Text is "S" or "B" or "T" or "D" or "G"));
    }

    [Fact]
    public void A_reach_map_larger_than_can_be_read_is_refused() =>
        Assert.Contains("121 by 1", Assert.Throws<BadInputException>(() => ReachPicture.Draw(Map(121, 1), Style)).Message, StringComparison.Ordinal);

    /// <summary>Hatch and letter each tell the reasons apart by themselves.</summary>
    [Fact]
    public void Every_reason_has_a_pattern_and_a_letter_of_its_own()
    {
        ReachMark[] marks = [.. Enum.GetValues<ReachStop>().Where(s => s != ReachStop.None).Select(ReachMark.Of)];
        Assert.Equal(marks.Length, marks.Select(m => m.Letter).Distinct().Count());
        Assert.Equal(marks.Length + 1, marks.Select(m => m.Hatch).Append(Hatch.Plain).Distinct().Count());
    }

    [Theory]
    [InlineData(SledKind.TwoFences)]
    [InlineData(SledKind.OneFence)]
    [InlineData(SledKind.DiscSander)]
    public void The_setting_stands_above_its_three_cuts(SledKind kind)
    {
        foreach (Ring ring in new Ring[] { Example.Disc, Example.Open })
        {
            RingPlan plan = Example.PlanOf(ring, kind).Rings[0];
            Drawing page = SawPicture.Draw(plan, new Sled { Kind = kind }, TestCutPicture.Of(plan), Style);
            LayoutChecks.AssertInside(page, new(0, 0, page.Width, page.Height));
        }
    }

    private static ReachMap Map(int columns, int rows) =>
        ReachMap.Of(Shop.Starting, [.. Enumerable.Range(0, columns).Select(i => 6 + (2 * i))], [.. Enumerable.Range(0, rows).Select(i => 4 + (1.5 * i))]);

    private static void AssertClean(Drawing page)
    {
        Box paper = new(0, 0, page.Width, page.Height);
        LayoutChecks.AssertClean(page, paper);
        LayoutChecks.AssertInside(page, paper);
    }
}
