using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Pictures;

namespace Ringwright.Paper.Tests;

public class PlanViewTests
{
    public static TheoryData<string> Examples => [.. new[] { "two-wood-disc", "open-ring", "mixed-ring", "stave-ring", "zigzag-band", "board-bowl", "feature-bowl" }];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_view_that_a_plan_has_can_be_drawn(string example)
    {
        Plan plan = Planner.Plan(DocumentJson.ReadPiece(File.ReadAllText(Path.Combine(SolutionFolder.Path, "examples", $"{example}.json"))), Shop.Starting);
        HashSet<string> names = [];
        foreach (RingPlan ring in plan.Rings)
            foreach (PlanView view in PlanView.Of(plan, ring))
            {
                Drawing drawing = view.Draw(plan, ring.Alone(0), MeasureStyle.InchFractions);
                LayoutChecks.AssertClean(drawing, new(0, 0, drawing.Width, drawing.Height));
                names.Add(view.Name);
            }

        Assert.Contains("ring", names);
    }

    [Fact]
    public void Every_view_is_of_some_example()
    {
        HashSet<string> seen = [];
        foreach (string example in Examples.Select(row => row.Data))
        {
            Plan plan = Planner.Plan(DocumentJson.ReadPiece(File.ReadAllText(Path.Combine(SolutionFolder.Path, "examples", $"{example}.json"))), Shop.Starting);
            foreach (RingPlan ring in plan.Rings) seen.UnionWith(PlanView.Of(plan, ring).Select(v => v.Name));
        }

        Assert.Equal(PlanView.All.Select(v => v.Name).Order(StringComparer.Ordinal), seen.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_name_that_is_none_is_answered_with_those_there_are() =>
        Assert.Contains("unrolled", Assert.Throws<BadInputException>(() => PlanView.Named("everything")).Right, StringComparison.Ordinal);
}
