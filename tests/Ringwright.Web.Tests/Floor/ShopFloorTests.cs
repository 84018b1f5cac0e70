using Ringwright.Core.Pieces;
using Ringwright.Store;
using Ringwright.Web.Floor;

namespace Ringwright.Web.Tests.Floor;

/// <summary>What was done is kept, once, through restarts, and can be taken back.</summary>
public sealed class ShopFloorTests : IDisposable
{
    private const string Job = "7/1", Cut = "1/maple";
    private readonly TemporaryFolder _data = new();

    public void Dispose() => _data.Dispose();

    [Fact]
    public void Marks_ticks_and_clocks_come_back()
    {
        ShopFloor floor = Open();
        floor.Mark(Job, Cut, MarkKind.Sawn, "sawn", basis: [new CutBasis(Cut, 15, 2.5, 7, 30)]);
        floor.Change(s => s.Turn("7/glue | 1 | Close 1"), "ticked off");
        floor.Press("7/open time", "clock started");
        ShopFloor again = Open();
        Assert.Equal(floor.Now.MarksOf(Job), again.Now.MarksOf(Job));
        Assert.Equal(floor.Now.BasisOf(Job), again.Now.BasisOf(Job));
        Assert.Contains("7/glue | 1 | Close 1", again.Now.Ticks);
        Assert.NotNull(again.Now.WatchOf("7/open time").Since);
        Assert.Null(again.Trouble);
        // What was done before the restart can still be taken back.
        foreach (FloorStep step in again.Now.Steps) Assert.Null(again.Return(step.Number));
        Assert.Equal((0, 0), (CutTally.Of(again.Now.MarksOf(Job), Cut).Good, again.Now.Ticks.Count));
    }

    [Fact]
    public void Marks_sent_twice_count_once()
    {
        var mark = new Mark("a", Cut, MarkKind.Sawn, 1);
        FloorState once = FloorState.Empty.Add(Job, [mark, mark]);
        Assert.Single(once.MarksOf(Job));
        Assert.Same(once, once.Add(Job, [mark]));
        Assert.Empty(once.MarksOf("7/2"));
    }

    [Fact]
    public void What_cannot_be_read_is_kept_beside()
    {
        File.WriteAllText(_data.In("floor.json"), "{ half");
        ShopFloor floor = Open();
        Assert.Contains("floor-unread-1.json", floor.Trouble, StringComparison.Ordinal);
        Assert.Equal("{ half", File.ReadAllText(_data.In("floor-unread-1.json")));
        floor.Mark(Job, Cut, MarkKind.Lost, "lost");
        Assert.Single(Open().Now.MarksOf(Job));
    }

    [Fact]
    public void Each_kind_of_step_is_taken_back_and_done_again_by_itself()
    {
        ShopFloor floor = Open();
        (string What, Action Do, Func<object> See)[] steps =
        [
            ("sawn", () => floor.Mark(Job, Cut, MarkKind.Sawn, "sawn", by: "Tablet"), () => CutTally.Of(floor.Now.MarksOf(Job), Cut).Good),
            ("lost", () => floor.Mark(Job, Cut, MarkKind.Lost, "lost", by: "Tablet"), () => CutTally.Of(floor.Now.MarksOf(Job), Cut).Lost),
            ("tick", () => floor.Change(s => s.Turn("7/glue | 1 | Close 1"), "tick", "Tablet"), () => floor.Now.Ticks.Count),
            ("faces", () => floor.Change(s => s.Count("7/1/sander", 3), "faces", "Tablet"), () => floor.Now.Counts.GetValueOrDefault("7/1/sander")),
            ("start", () => floor.Press("7/1/sander", "start", "Tablet"), () => floor.Now.WatchOf("7/1/sander")),
            ("reset", () => floor.Reset("7/1/sander", "reset", "Tablet"), () => floor.Now.WatchOf("7/1/sander")),
        ];
        foreach ((string what, Action act, Func<object> see) in steps)
        {
            object before = see();
            act();
            object after = see();
            Assert.NotEqual(before, after);
            FloorStep step = floor.Now.Steps[^1];
            Assert.Equal((what, "Tablet", false), (step.What, step.By, step.IsBack));
            Assert.Null(floor.Return(step.Number));
            Assert.Equal(before, see());
            Assert.True(floor.Now.Steps[^1].IsBack);
            Assert.Null(floor.Return(step.Number));
            Assert.Equal(after, see());
        }

        Assert.Contains("too long ago", floor.Return(999), StringComparison.Ordinal);
    }

    [Fact]
    public void Taking_back_an_old_step_leaves_what_others_did_since()
    {
        ShopFloor floor = Open();
        floor.Change(s => s.Count("7/1/sander", 1), "face");
        floor.Mark(Job, Cut, MarkKind.Sawn, "sawn", by: "Tablet");
        floor.Change(s => s.Count("7/1/sander", 5), "faces", "Tablet");
        floor.Mark(Job, Cut, MarkKind.Sawn, "sawn");
        Assert.Null(floor.Return(1));
        Assert.Null(floor.Return(2));
        Assert.Equal((5, 1), (floor.Now.Counts["7/1/sander"], CutTally.Of(floor.Now.MarksOf(Job), Cut).Good));
    }

    [Fact]
    public void A_tablet_that_sends_its_mark_again_does_not_bring_back_what_was_taken_back()
    {
        ShopFloor floor = Open();
        var mark = new Mark("a", Cut, MarkKind.Sawn, 1);
        floor.Change(s => s.Add(Job, [mark]), "sawn", "Tablet");
        Assert.Null(floor.Return(1));
        floor.Change(s => s.Add(Job, [mark]), "sawn", "Tablet");
        Assert.Equal(0, CutTally.Of(floor.Now.MarksOf(Job), Cut).Good);
    }

    [Fact]
    public void A_run_goes_into_the_record_and_comes_out_again()
    {
        ShopFloor floor = Open();
        floor.Mark(Job, Cut, MarkKind.Sawn, "sawn");
        Assert.Null(floor.Record(new() { Sled = SledKind.TwoFences, Sawn = 1 }, "recorded", change: s => s.Add(Job, [new("r", Cut, MarkKind.Recorded, 2) { Cuts = 1, Lost = 0 }])));
        Assert.Equal((1, 0), (Kept(), CutTally.Of(floor.Now.MarksOf(Job), Cut).NewCuts));
        Assert.Null(floor.Return(floor.Now.Steps[^1].Number));
        Assert.Equal((0, 1), (Kept(), CutTally.Of(floor.Now.MarksOf(Job), Cut).NewCuts));
        Assert.Null(floor.Return(floor.Now.Steps[^1].Number));
        Assert.Equal((1, 0), (Kept(), CutTally.Of(floor.Now.MarksOf(Job), Cut).NewCuts));
        Assert.Contains("nothing is saved", new ShopFloor(null, TimeProvider.System).Record(new() { Sled = SledKind.TwoFences, Sawn = 1 }, "recorded"), StringComparison.Ordinal);
    }

    [Fact]
    public void Only_so_many_steps_are_kept()
    {
        ShopFloor floor = new(null, TimeProvider.System);
        for (int i = 0; i < FloorState.MostSteps + 5; i++) floor.Change(s => s.Turn("7/step"), "tick");
        Assert.Equal((FloorState.MostSteps, FloorState.MostSteps + 5), (floor.Now.Steps.Length, floor.Now.Steps[^1].Number));
    }

    [Fact]
    public void A_clock_adds_its_runs_up()
    {
        DateTimeOffset noon = new(2026, 3, 1, 12, 0, 0, TimeSpan.Zero);
        Watch twice = Watch.Zero.Pressed(noon).Pressed(noon.AddSeconds(90)).Pressed(noon.AddSeconds(200));
        Assert.Equal(100, twice.Seconds(noon.AddSeconds(210)));
        // A clock that was set back meanwhile does not take time away.
        Assert.Equal(90, twice.Seconds(noon));
    }

    private ShopFloor Open() => new(_data.Path, TimeProvider.System);

    private int Kept()
    {
        using var store = DataStore.Open(_data.Path, TimeProvider.System);
        return store.Record.List().Count;
    }
}
