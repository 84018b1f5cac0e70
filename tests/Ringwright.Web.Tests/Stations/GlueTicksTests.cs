using Ringwright.Core.Planning;
using Ringwright.Web.Bench;
using Ringwright.Web.Stations;

namespace Ringwright.Web.Tests.Stations;

/// <summary>How far the gluing has come.</summary>
public class GlueTicksTests
{
    [Fact]
    public void Every_example_begins_loose_and_ends_whole()
    {
        foreach (string file in Example.Files)
        {
            Sheet sheet = Example.BenchWith(file).Now;
            GluePlan glue = GluePlan.Of(sheet.Good);
            ImmutableArray<GlueTask> tasks = GlueSchedule.ProblemOf(glue).Tasks;
            var before = new GlueTicks(glue, tasks, _ => false, sheet.RingMarks);
            var after = new GlueTicks(glue, tasks, _ => true, sheet.RingMarks);
            Assert.Equal(tasks.Length, before.Steps.Distinct().Count());
            Assert.Equal((0, tasks.Length), (before.Done, after.Done));
            for (int ring = 0; ring < glue.Rings.Length; ring++)
            {
                Assert.False(before.IsStacked(ring));
                Assert.True(after.IsGlued(ring));
                Assert.Equal(glue.Rings.Length > 1, after.IsStacked(ring));
            }

            Assert.NotEmpty(GlueGrowth.Of(glue, before).Parts);
            Assert.DoesNotContain(GlueGrowth.Of(glue, after).Parts, p => p.State == Growth.Loose);
        }
    }

    [Fact]
    public void The_first_joint_of_the_stack_takes_two_rings()
    {
        Sheet sheet = Example.BenchWith("feature-bowl.json").Now;
        GluePlan glue = GluePlan.Of(sheet.Good);
        ImmutableArray<GlueTask> tasks = GlueSchedule.ProblemOf(glue).Tasks;
        ImmutableArray<string> steps = new GlueTicks(glue, tasks, _ => false, sheet.RingMarks).Steps;
        string first = steps[tasks.ToList().FindIndex(t => t.Kind == GlueTaskKind.Stack)];
        var ticks = new GlueTicks(glue, tasks, step => step == first, sheet.RingMarks);
        Assert.Equal(2, Enumerable.Range(0, glue.Rings.Length).Count(ticks.IsStacked));
    }
}
