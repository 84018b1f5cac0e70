using Ringwright.Store;
using Ringwright.Web.Floor;

namespace Ringwright.Web.Tests.Floor;

/// <summary>What was done is kept, once, through restarts.</summary>
public sealed class ShopFloorTests : IDisposable
{
    private readonly TemporaryFolder _data = new();

    public void Dispose() => _data.Dispose();

    [Fact]
    public void Marks_ticks_and_clocks_come_back()
    {
        ShopFloor floor = Open();
        floor.Mark("Disc", "Ring 1", "1/maple", MarkKind.Sawn);
        floor.Change(s => s.Turn("Disc | glue"));
        floor.Press("Disc | open time");
        ShopFloor again = Open();
        Assert.Equal(floor.Now.MarksOf("Disc", "Ring 1"), again.Now.MarksOf("Disc", "Ring 1"));
        Assert.Contains("Disc | glue", again.Now.Ticks);
        Assert.NotNull(again.Now.WatchOf("Disc | open time").Since);
        Assert.Null(again.Trouble);
    }

    [Fact]
    public void Marks_sent_twice_count_once()
    {
        var mark = new Mark("a", "1/maple", MarkKind.Sawn, 1);
        FloorState once = FloorState.Empty.Add("Disc", "Ring 1", [mark, mark]);
        Assert.Single(once.MarksOf("Disc", "Ring 1"));
        Assert.Same(once, once.Add("Disc", "Ring 1", [mark]));
        Assert.Empty(once.MarksOf("Disc", "Ring 2"));
    }

    [Fact]
    public void What_cannot_be_read_is_kept_beside()
    {
        File.WriteAllText(_data.In("floor.json"), "{ half");
        ShopFloor floor = Open();
        Assert.Contains("floor-unread-1.json", floor.Trouble, StringComparison.Ordinal);
        Assert.Equal("{ half", File.ReadAllText(_data.In("floor-unread-1.json")));
        floor.Mark("Disc", "Ring 1", "1/maple", MarkKind.Lost);
        Assert.Single(Open().Now.MarksOf("Disc", "Ring 1"));
    }

    [Fact]
    public void A_run_goes_into_the_record()
    {
        Assert.Null(Open().Record(new() { Sled = Core.Pieces.SledKind.TwoFences, Sawn = 14, Lost = 1 }));
        using var store = DataStore.Open(_data.Path, TimeProvider.System);
        Assert.Equal(14, Assert.Single(store.Record.List()).Run.Sawn);
        Assert.Contains("nothing is saved", new ShopFloor(null, TimeProvider.System).Record(new() { Sled = Core.Pieces.SledKind.TwoFences, Sawn = 1 }), StringComparison.Ordinal);
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
}
