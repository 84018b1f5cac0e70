using Ringwright.Core.Documents;
using Ringwright.Web.Bench;
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
        Workbench bench = Example.Bench;
        bench.Type(RingFields.Diameter, "3/4\" x");
        bench.Build(Construction.SegmentRing);
        bench.Show(UnitChoice.InchDecimals);
        bench.Type(ShopFields.Main[0], "1.4");
        _folder.Save(bench.Now);
        Sheet back = _folder.Load(out string? trouble)!;
        Assert.Null(trouble);
        Assert.Equal(bench.Now.Draft.Ring.Texts, back.Draft.Ring.Texts);
        Assert.Equal(bench.Now.Draft.ShopTexts, back.Draft.ShopTexts);
        Assert.Equal((Construction.SegmentRing, UnitChoice.InchDecimals), (back.Draft.Ring.Construction, back.Draft.Units));
        Assert.Equal(bench.Now.Problems.Select(p => p.Sentence), back.Problems.Select(p => p.Sentence));
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
