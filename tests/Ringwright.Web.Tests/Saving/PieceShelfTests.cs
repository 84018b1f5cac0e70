using Ringwright.Core.Documents;
using Ringwright.Web.Bench;
using Ringwright.Web.Bench.Fields;
using Ringwright.Web.Saving;

namespace Ringwright.Web.Tests.Saving;

public sealed class PieceShelfTests : IDisposable
{
    private readonly TemporaryFolder _files = new();
    private PieceShelf _shelf;

    public PieceShelfTests()
    {
        _shelf = new(_files.Path);
        Assert.Null(_shelf.Claim());
    }

    public void Dispose()
    {
        _shelf.Dispose();
        _files.Dispose();
    }

    [Fact]
    public void All_that_was_typed_comes_back_also_what_cannot_be_read()
    {
        Workbench bench = Example.BenchWith("feature-bowl.json");
        bench.Select(4);
        bench.Type(RingFields.Diameter, "3/4\" x");
        bench.Show(UnitChoice.InchDecimals);
        bench.Note("find.heights", "3/4 in");
        bench.Type(ShopLenses.Saw[0], "1.4");
        _shelf.Save(bench.Now);
        Sheet back = Restarted();
        Assert.Equal(bench.Now.Texts, back.Texts);
        Assert.Equal(bench.Now.Selected, back.Selected);
        Assert.Equal("3/4 in", back.Desk["find.heights"]);
        Assert.Equal(UnitChoice.InchDecimals, back.Units);
        Assert.Equal(bench.Now.Problems.Select(p => p.Sentence), back.Problems.Select(p => p.Sentence));
        Assert.Equal(DocumentJson.Write(bench.Now.Good.Piece), DocumentJson.Write(back.Good.Piece));
    }

    [Fact]
    public void Each_piece_is_one_entry_however_often_it_is_changed_and_an_untouched_example_is_none()
    {
        Workbench bench = Example.Bench;
        bench.Open(Example.Json, borrowed: true);
        _shelf.Save(bench.Now);
        Assert.Empty(_shelf.List());
        bench.Type(RingFields.Segments, "18");
        _shelf.Save(bench.Now);
        bench.Type(RingFields.Segments, "20");
        _shelf.Save(bench.Now);
        Assert.Single(_shelf.List());
        bench.Put(Example.Piece with { Name = "Another" });
        _shelf.Save(bench.Now);
        Assert.Equal(2, _shelf.List().Count);
        bench.Undo();
        _shelf.Save(bench.Now);
        Assert.Equal(2, _shelf.List().Count);
        Assert.Equal("Two-wood disc", Restarted().Good.Piece.Name);
    }

    [Fact]
    public void A_piece_opens_in_the_shop_of_today_and_goes_on_as_its_own_entry()
    {
        Workbench bench = Example.Bench;
        bench.Type(RingFields.Segments, "18");
        _shelf.Save(bench.Now);
        long id = _shelf.EntryOf(bench.Now)!.Value;
        bench.Put(Example.Piece with { Name = "Another" });
        bench.Type(ShopLenses.Saw[0], "2 mm");
        _shelf.Save(bench.Now);
        bench.Put(_shelf.Open(id, bench.Now.Good.Shop));
        Assert.Equal((18, 2), (bench.Now.Ring.Ring.Around, bench.Now.Good.Shop.Saw.Kerf.Millimetres));
        bench.Type(RingFields.Segments, "22");
        _shelf.Save(bench.Now);
        Assert.Equal(2, _shelf.List().Count);
        Assert.Equal(22, _shelf.Read(id).Rings[0].Around);
        _shelf.Duplicate(id);
        Assert.Equal(3, _shelf.List().Count);
        Assert.Single(_shelf.List("another"));
        _shelf.Remove(id);
        Assert.Equal(2, _shelf.List().Count);
        _shelf.PutBack(id);
        Assert.Equal(3, _shelf.List().Count);
        Assert.NotEmpty(_shelf.Versions(id));
    }

    [Fact]
    public void An_empty_folder_is_no_trouble()
    {
        Assert.Null(_shelf.Load(out string? trouble));
        Assert.Null(trouble);
    }

    // As it was kept before there was a list of pieces.
    [Fact]
    public void The_draft_of_an_earlier_version_is_taken_over()
    {
        string draft = DraftJson.Write(Example.Sheet).Replace("\"version\": 2", "\"version\": 1, \"draft\": {\"name\": \"Two-wood disc\"}", StringComparison.Ordinal);
        File.WriteAllText(_files.In("draft.json"), draft);
        Assert.Equal("Two-wood disc", _shelf.Load(out string? trouble)!.Good.Piece.Name);
        Assert.Null(trouble);
        Assert.Equal(draft, File.ReadAllText(_files.In("draft.json")));
    }

    [Fact]
    public void A_folder_in_use_is_not_shared()
    {
        using var second = new PieceShelf(_files.Path);
        Assert.Contains("Another Ringwright", second.Claim(), StringComparison.Ordinal);
    }

    private Sheet Restarted()
    {
        _shelf.Dispose();
        _shelf = new(_files.Path);
        Assert.Null(_shelf.Claim());
        Sheet? back = _shelf.Load(out string? trouble);
        Assert.Null(trouble);
        return back!;
    }
}
