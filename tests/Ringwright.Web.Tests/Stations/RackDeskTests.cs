using Ringwright.Core;
using Ringwright.Core.Boards;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Stock.Boards;
using Ringwright.Web.Saving;
using Ringwright.Web.Stations;

namespace Ringwright.Web.Tests.Stations;

/// <summary>The boards at hand behind the page: planned, sawn, put back.</summary>
public sealed class RackDeskTests : IDisposable
{
    private readonly TemporaryFolder _data = new();
    private readonly PieceShelf _shelf;
    private readonly RackDesk _desk;
    private readonly Plan _plan = Planner.Plan(Example.Piece, Shop.Starting);

    public RackDeskTests()
    {
        _shelf = new(_data.Path);
        Assert.Null(_shelf.Claim());
        _desk = new(_shelf, new BoardPlanner(5));
    }

    public void Dispose()
    {
        _desk.Dispose();
        _shelf.Dispose();
        _data.Dispose();
    }

    [Fact]
    public async Task A_cutting_holds_as_long_as_the_same_is_wanted_of_the_same_boards()
    {
        _desk.Change(r => r.Take(Rack("maple", "padauk")));
        CuttingPlan cutting = await Planned();
        Assert.Empty(cutting.Shortages);
        Assert.Same(cutting, _desk.For(Planner.Plan(Example.Piece with { Name = "Another name" }, Shop.Starting)));
        Piece other = Example.Piece with { Rings = [((WedgeDisc)Example.Piece.Rings[0]) with { Segments = 30 }] };
        Assert.Null(_desk.For(Planner.Plan(other, Shop.Starting)));
        Assert.Same(cutting, _desk.For(_plan));
        _desk.Change(r => r.Remove("A2"));
        Assert.Null(_desk.For(_plan));
        Assert.True(_desk.WasPlanned);
    }

    [Fact]
    public async Task What_is_sawn_leaves_the_rack_its_rests_come_back_and_undo_brings_the_boards()
    {
        _desk.Change(r => r.Take(Rack("maple", "padauk")));
        CuttingPlan cutting = await Planned();
        _desk.Finish("Disc", cutting);
        Assert.Equal(DocumentJson.Write(cutting.After), DocumentJson.Write(_desk.Rack!));
        Assert.NotEqual(DocumentJson.Write(cutting.Rack), DocumentJson.Write(_desk.Rack!));
        Assert.Contains("Disc", _desk.Last!.What, StringComparison.Ordinal);
        Assert.Throws<BadInputException>(() => _desk.Finish("Disc", cutting));
        _desk.Change(r => r.Undo());
        Assert.Equal(DocumentJson.Write(cutting.Rack), DocumentJson.Write(_desk.Rack!));
    }

    [Fact]
    public async Task A_wood_that_is_not_there_is_a_shortage_and_an_empty_rack_a_sentence()
    {
        _desk.Begin(_plan);
        await Done();
        Assert.Contains("no board", _desk.Trouble, StringComparison.Ordinal);
        _desk.Change(r => r.Take(Rack("maple")));
        CuttingPlan cutting = await Planned();
        Assert.Contains(cutting.Shortages, s => s.Demand.Wood == "padauk" && s.Missing > 0);
    }

    private async Task<CuttingPlan> Planned()
    {
        _desk.Begin(_plan);
        await Done();
        return _desk.For(_plan)!;
    }

    private async Task Done()
    {
        while (_desk.Progress is not null) await Task.Delay(10, TestContext.Current.CancellationToken);
    }

    private static Rack Rack(params string[] woods) => new()
    {
        Name = "Test rack",
        Boards = [.. woods.Select((wood, i) => new RackBoard { Label = $"A{i + 1}", Wood = wood, Length = Length.FromMillimetres(900), Width = Length.FromMillimetres(120), Thickness = Length.FromMillimetres(36) })],
    };
}
