using Ringwright.Core.Documents;
using Ringwright.Web.Bench;
using Ringwright.Web.Bench.Fields;
using Ringwright.Web.Saving;

namespace Ringwright.Web.Tests.Saving;

public sealed class DataFolderTests : IDisposable
{
    private readonly TemporaryFolder _files = new();
    private readonly DataFolder _folder;

    public DataFolderTests()
    {
        _folder = new(_files.Path);
        Assert.Null(_folder.Claim());
    }

    public void Dispose()
    {
        _folder.Dispose();
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
        _folder.Save(bench.Now);
        Sheet back = _folder.Load(out string? trouble)!;
        Assert.Null(trouble);
        Assert.Equal(bench.Now.Texts, back.Texts);
        Assert.Equal(bench.Now.Selected, back.Selected);
        Assert.Equal("3/4 in", back.Desk["find.heights"]);
        Assert.Equal(UnitChoice.InchDecimals, back.Units);
        Assert.Equal(bench.Now.Problems.Select(p => p.Sentence), back.Problems.Select(p => p.Sentence));
        Assert.Equal(DocumentJson.Write(bench.Now.Good.Piece), DocumentJson.Write(back.Good.Piece));
    }

    // As it was written before every kind of piece could be on the bench.
    [Fact]
    public void A_draft_of_version_1_opens_with_its_piece_and_shop()
    {
        _folder.Save(Example.Sheet);
        string text = File.ReadAllText(_files.In("draft.json"));
        File.WriteAllText(_files.In("draft.json"), text.Replace("\"version\": 2", "\"version\": 1, \"draft\": {\"name\": \"Two-wood disc\"}", StringComparison.Ordinal));
        Assert.Equal("Two-wood disc", _folder.Load(out string? trouble)!.Good.Piece.Name);
        Assert.Null(trouble);
    }

    [Fact]
    public void Piece_and_shop_are_files_of_their_own_that_the_library_reads()
    {
        Workbench bench = Example.Bench;
        bench.Type(RingFields.Segments, "18");
        _folder.Save(bench.Now);
        Assert.Equal(18, DocumentJson.ReadPiece(File.ReadAllText(_files.In("piece.json"))).Rings[0].Around);
        Assert.Equal(bench.Now.Good.Shop.Name, DocumentJson.ReadShop(File.ReadAllText(_files.In("shop.json"))).Name);
    }

    [Fact]
    public void Without_a_draft_piece_and_shop_are_enough()
    {
        _folder.Save(Example.Sheet);
        File.Delete(_files.In("draft.json"));
        Assert.Equal("Two-wood disc", _folder.Load(out _)!.Good.Piece.Name);
    }

    [Fact]
    public void A_spoilt_draft_is_set_aside_whole_and_told()
    {
        _folder.Save(Example.Sheet);
        string spoilt = File.ReadAllText(_files.In("draft.json"))[..100];
        File.WriteAllText(_files.In("draft.json"), spoilt);
        Assert.NotNull(_folder.Load(out string? trouble));
        Assert.Contains("draft-unread-1.json", trouble, StringComparison.Ordinal);
        Assert.Equal(spoilt, File.ReadAllText(_files.In("draft-unread-1.json")));
    }

    [Fact]
    public void An_empty_folder_is_no_trouble()
    {
        Assert.Null(_folder.Load(out string? trouble));
        Assert.Null(trouble);
    }

    [Fact]
    public void A_folder_in_use_is_not_shared()
    {
        using var second = new DataFolder(_files.Path);
        Assert.Contains("Another Ringwright", second.Claim(), StringComparison.Ordinal);
    }
}
