using Ringwright.Core.Pieces;
using Ringwright.Web.Bench;
using Ringwright.Web.Bench.Edits;
using Ringwright.Web.Bench.Fields;
using Ringwright.Web.Floor;
using Ringwright.Web.Saving;

namespace Ringwright.Web.Tests.Floor;

/// <summary>Counts and ticks hang on the piece's number and the ring's mark; what hung on names is brought over.</summary>
public sealed class FloorNumbersTests : IDisposable
{
    private readonly TemporaryFolder _data = new();
    private readonly PieceShelf _shelf;

    public FloorNumbersTests()
    {
        _shelf = new(_data.Path);
        Assert.Null(_shelf.Claim());
    }

    public void Dispose()
    {
        _shelf.Dispose();
        _data.Dispose();
    }

    [Fact]
    public void Renaming_piece_and_ring_loses_no_count()
    {
        Workbench bench = Example.Bench;
        ShopFloor floor = Floor();
        using var numbers = new FloorNumbers(bench, _shelf, floor);
        floor.Mark(FloorNames.Job(numbers.Own(), bench.Now.RingMarks[0]), "1/maple", MarkKind.Sawn, "sawn");
        bench.Type(LensBook.Find(bench.Now.Work, LensBook.PieceName)!, "Another name");
        bench.Select(0);
        bench.Type(RingFields.Name, "Another ring");
        Assert.Equal("Another ring", bench.Now.Good.Rings[0].Ring.Name);
        Assert.Equal(1, Good(floor, numbers, bench, 0));
        // A second ring gets the first name: nothing is mixed.
        Assert.True(bench.Change(w => RingEdits.AddAbove(w, 0)));
        bench.Select(1);
        bench.Type(RingFields.Name, "Disc");
        Assert.Equal((1, 0), (Good(floor, numbers, bench, 0), Good(floor, numbers, bench, 1)));
    }

    [Fact]
    public void Work_on_an_example_makes_it_a_piece_of_ones_own_and_is_found_after_a_restart()
    {
        var bench = new Workbench(Example.Sheet with { Borrowed = true });
        ShopFloor floor = Floor();
        using var numbers = new FloorNumbers(bench, _shelf, floor);
        Assert.Empty(_shelf.List());
        string number = numbers.Own();
        Assert.Equal(number, numbers.Own());
        Assert.Single(_shelf.List());
        Assert.False(bench.CanUndo);
        floor.Mark(FloorNames.Job(number, "1"), "1/maple", MarkKind.Sawn, "sawn");
        Sheet again = _shelf.Load(out _)!;
        var next = new Workbench(again);
        using var after = new FloorNumbers(next, _shelf, Floor());
        Assert.Equal(number, after.Of(again));
        Assert.Equal("Two-wood disc", after.SheetOf(number).Good.Piece.Name);
        Assert.True(after.Knows(number));
        Assert.False(after.Knows("99"));
        Assert.Contains("not among the pieces", Assert.Throws<Core.BadInputException>(() => after.SheetOf("x")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void What_hung_on_names_is_brought_over_and_what_fits_nothing_is_kept()
    {
        _shelf.Save(Example.BenchWith("feature-bowl.json").Now);
        Sheet bowl = _shelf.Open(_shelf.List()[0].Id, Shop.Starting);
        (string piece, string ring) = (bowl.Good.Piece.Name, bowl.Good.Rings[1].Ring.Name);
        File.WriteAllText(_data.In("floor.json"), $$"""
            { "format": "ringwright/floor", "version": 1, "floor": {
              "marks": { "{{piece}} | {{ring}}": [{ "id": "a", "cut": "1/maple", "kind": "sawn", "at": 1, "of": null }], "{{piece}} | gone": [{ "id": "b", "cut": "1/maple", "kind": "sawn", "at": 1, "of": null }],
                         "Two-wood disc | Disc": [{ "id": "c", "cut": "1/maple", "kind": "lost", "at": 1, "of": null }] },
              "ticks": ["{{piece}} | glue | {{ring}} | Close 1", "{{piece}} | lathe | Rough it."],
              "watches": { "{{piece}} | open time": { "since": null, "before": 30 } }, "counts": { "{{piece}} | {{ring}} | sander": 12 } } }
            """);
        ShopFloor floor = Floor();
        Assert.Null(floor.Trouble);
        var bench = new Workbench(bowl);
        using var numbers = new FloorNumbers(bench, _shelf, floor);
        string number = numbers.Of(bowl), job = FloorNames.Job(number, "2");
        Assert.Equal("a", Assert.Single(floor.Now.MarksOf(job)).Id);
        Assert.Equal([$"{number}/glue | 2 | Close 1", $"{number}/lathe | Rough it."], floor.Now.Ticks);
        Assert.Equal((30, 12), (floor.Now.WatchOf(FloorNames.OpenTime(number)).Before, floor.Now.Counts[FloorNames.Sander(job)]));
        Assert.Single(floor.Now.MarksOf($"{piece} | gone"));
        // An example that was counted on is taken over when it lies on the bench.
        bench.Put(Example.Piece, borrowed: true);
        Assert.Equal(1, CutTally.Of(Floor().Now.MarksOf(numbers.Job(bench.Now, bench.Now.Ring)), "1/maple").Lost);
        Assert.Equal(2, _shelf.List().Count);
    }

    [Fact]
    public void A_count_of_other_wedges_is_doubted_and_kept_or_cleared()
    {
        Workbench bench = Example.Bench;
        ShopFloor floor = Floor();
        using var numbers = new FloorNumbers(bench, _shelf, floor);
        string job = FloorNames.Job(numbers.Own(), "1");
        RingAccount Account() => RingAccount.Of(numbers.Job(bench.Now, bench.Now.Ring), bench.Now.Ring, bench.Now.Good.Shop);
        floor.Mark(job, SawCut.Of(bench.Now.Ring, bench.Now.Good.Shop)[0].Key, MarkKind.Sawn, "sawn", basis: Account().Now);
        floor.Change(s => s.Turn(FloorNames.Tick(numbers.Own(), FloorNames.Gluing("1") + "Close 1")), "tick");
        Assert.Null(Account().Doubt(floor.Now, bench.Now.Style));
        bench.Type(RingFields.Segments, "18");
        string doubt = Account().Doubt(floor.Now, bench.Now.Style)!;
        Assert.Contains("15°", doubt, StringComparison.Ordinal);
        Assert.Contains("20°", doubt, StringComparison.Ordinal);
        Assert.Single(doubt.Split(". ", StringSplitOptions.RemoveEmptyEntries));
        // Undone, the count applies again.
        bench.Undo();
        Assert.Null(Account().Doubt(floor.Now, bench.Now.Style));
        bench.Redo();
        floor.Change(Account().Kept, "kept");
        Assert.Null(Account().Doubt(floor.Now, bench.Now.Style));
        Assert.Null(floor.Return(floor.Now.Steps[^1].Number));
        Assert.NotNull(Account().Doubt(floor.Now, bench.Now.Style));
        floor.Change(s => Account().Cleared(s, DateTimeOffset.UnixEpoch), "cleared");
        Assert.Null(Account().Doubt(floor.Now, bench.Now.Style));
        Assert.False(floor.Now.HasWork(job));
        Assert.Null(floor.Return(floor.Now.Steps[^1].Number));
        Assert.True(floor.Now.HasWork(job));
        Assert.Single(floor.Now.Ticks);
    }

    private ShopFloor Floor() => new(_data.Path, TimeProvider.System);

    private static int Good(ShopFloor floor, FloorNumbers numbers, Workbench bench, int ring) =>
        CutTally.Of(floor.Now.MarksOf(numbers.Job(bench.Now, bench.Now.Good.Rings[ring])), "1/maple").Good;
}
