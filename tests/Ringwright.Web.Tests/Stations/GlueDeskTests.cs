using Ringwright.Core.Planning;
using Ringwright.Web.Bench;
using Ringwright.Web.Printing;
using Ringwright.Web.Stations;

namespace Ringwright.Web.Tests.Stations;

/// <summary>The quickest order of gluing: looked for once, for the station and for the paper.</summary>
public sealed class GlueDeskTests : IDisposable
{
    private readonly GlueDesk _desk = new();
    private readonly Sheet _sheet = Example.BenchWith("feature-bowl.json").Now;

    public void Dispose() => _desk.Dispose();

    [Fact]
    public async Task What_was_found_is_of_its_plan_and_is_what_is_printed()
    {
        Plan plan = _sheet.Good;
        Assert.False(_desk.Knows(plan));
        FoundOrder found = await Found(plan);
        GlueSchedule quick = GlueSchedule.Quick(GluePlan.Of(plan));
        Assert.True(found.Schedule.Work.Makespan <= quick.Work.Makespan);
        Assert.False(_desk.IsSearching(plan));
        Assert.Null(_desk.For(Example.Sheet.Good));
        var query = PrintQuery.Of(new Dictionary<string, string> { ["sheets"] = "glue" });
        Assert.Same(found.Schedule, query.Options(_sheet, default, found.Schedule).Schedule);
        // The sheet says which order it shows, so the two papers differ.
        Assert.NotEqual(PiecePaper.JobPacket(_sheet, query, default, null), PiecePaper.JobPacket(_sheet, query, default, found.Schedule with { Work = found.Schedule.Work with { LowerBound = 1 } }));
    }

    [Fact]
    public async Task A_search_that_is_stopped_leaves_the_quick_order_and_can_begin_again()
    {
        _desk.Begin(_sheet.Good);
        _desk.Cancel();
        Assert.False(_desk.IsSearching(_sheet.Good));
        Assert.True(_desk.Knows(_sheet.Good));
        Assert.Null(_desk.For(_sheet.Good));
        Assert.NotNull(await Found(_sheet.Good));
    }

    [Fact]
    public async Task Another_plan_ends_the_search_for_the_one_before()
    {
        Plan other = Example.BenchWith("lidded-box.json").Now.Good;
        _desk.Begin(_sheet.Good);
        Assert.NotNull(await Found(other));
        Assert.Null(_desk.For(_sheet.Good));
    }

    private async Task<FoundOrder> Found(Plan plan)
    {
        var ended = new TaskCompletionSource<FoundOrder>(TaskCreationOptions.RunContinuationsAsynchronously);
        _desk.Changed += () =>
        {
            if (_desk.For(plan) is FoundOrder found) ended.TrySetResult(found);
        };
        _desk.Begin(plan);
        return await ended.Task.WaitAsync(TimeSpan.FromMinutes(2), TestContext.Current.CancellationToken);
    }
}
