using System.Text.Json;
using CsCheck;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;

namespace Ringwright.Store.Tests;

public sealed class PieceLibraryTests : IDisposable
{
    private readonly Desk _desk = new();
    private readonly DataStore _store;

    public PieceLibraryTests() => _store = _desk.Open();

    public static TheoryData<string> Examples => [.. Directory.EnumerateFiles(Path.Combine(SolutionFolder.Path, "examples"), "*.json")
        .Where(f => File.ReadAllText(f).Contains(Piece.FormatName, StringComparison.Ordinal)).Select(f => Path.GetFileNameWithoutExtension(f)!).Order()];

    public void Dispose()
    {
        _store.Dispose();
        _desk.Dispose();
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_comes_back_as_it_was_also_after_closing(string example)
    {
        Piece piece = Desk.Piece(example);
        long id = _store.Pieces.Add(piece, "typed: Ø 19,0 \u0001 “x”");
        using DataStore again = _desk.Open();
        PieceState back = again.Pieces.Read(id);
        Assert.Equal(DocumentJson.Write(piece), DocumentJson.Write(back.Piece));
        Assert.Equal("typed: Ø 19,0 \u0001 “x”", back.Draft);
        PieceEntry entry = again.Pieces.Find(id);
        Assert.Equal((piece.Name, piece.Rings.Length, _desk.Now), (entry.Name, entry.Rings, entry.Created));
        Assert.Superset(piece.Rings.SelectMany(r => r.Cycle).ToHashSet(), entry.Woods.ToHashSet());
    }

    [Fact]
    public void Fields_of_other_programs_are_kept()
    {
        string text = Desk.Text("two-wood-disc").Replace("\"name\": \"Two-wood disc\"", "\"name\": \"Two-wood disc\", \"later\": { \"x\": [1, null] }", StringComparison.Ordinal);
        long id = _store.Pieces.Add(DocumentJson.ReadPiece(text));
        _store.Pieces.Rename(id, "Another");
        using JsonDocument json = JsonDocument.Parse(DocumentJson.Write(_store.Pieces.Read(id).Piece));
        Assert.Equal("[1, null]", json.RootElement.GetProperty("later").GetProperty("x").GetRawText().Replace("\n", "", StringComparison.Ordinal).Replace("  ", "", StringComparison.Ordinal).Replace(",null", ", null", StringComparison.Ordinal));
        Assert.Equal("Another", _store.Pieces.Find(id).Name);
    }

    [Fact]
    public void What_was_saved_last_is_what_is_read_whatever_came_before() =>
        Gen.Select(Gen.Int[0, 3], Gen.String, Gen.String, Gen.Int[0, 400]).Array[1, 12].Sample(
            steps =>
            {
                Piece piece = Desk.Piece();
                long id = _store.Pieces.Add(piece);
                string? draft = null;
                foreach ((int kind, string name, string typed, int minutes) in steps)
                {
                    _desk.Wait(TimeSpan.FromMinutes(minutes));
                    if (kind > 0) piece = piece with { Notes = name };
                    if (kind == 0) _store.Pieces.SaveDraft(id, draft = typed);
                    else _store.Pieces.Save(id, piece, draft = kind == 1 ? null : typed);
                    PieceState state = _store.Pieces.Read(id);
                    Assert.Equal((DocumentJson.Write(piece), draft), (DocumentJson.Write(state.Piece), state.Draft));
                }
            },
            iter: 40);

    [Fact]
    public void The_list_begins_with_what_was_changed_last()
    {
        long first = _store.Pieces.Add(Desk.Piece());
        _desk.Wait(TimeSpan.FromSeconds(1));
        long second = _store.Pieces.Add(Desk.Piece("bead"));
        Assert.Equal([second, first], _store.Pieces.List().Select(p => p.Id));
        _desk.Wait(TimeSpan.FromSeconds(1));
        _store.Pieces.SaveDraft(first, "19 m");
        Assert.Equal([first, second], _store.Pieces.List().Select(p => p.Id));
    }

    [Theory]
    [InlineData("two-wood", true)]
    [InlineData("TWO", true)]
    [InlineData("padauk maple", true)]
    [InlineData("pada disc", true)]
    [InlineData("wedge", true)]
    [InlineData("padauk oak", false)]
    [InlineData("adauk", false)]
    [InlineData("", true)]
    [InlineData("\" OR * NEAR( -", false)]
    [InlineData("---", true)]
    public void Search_finds_by_the_beginnings_of_words(string search, bool found)
    {
        long id = _store.Pieces.Add(Desk.Piece());
        Assert.Equal(found, _store.Pieces.List(search).Any(p => p.Id == id));
    }

    [Fact]
    public void Search_follows_changes_and_no_text_breaks_it()
    {
        long id = _store.Pieces.Add(Desk.Piece());
        _store.Pieces.Rename(id, "Zebra");
        Assert.Single(_store.Pieces.List("zebra"));
        _store.Pieces.Rename(id, "Écuelle de Noël");
        Assert.Equal(id, Assert.Single(_store.Pieces.List("ecuelle noel")).Id);
        Assert.Empty(_store.Pieces.List("zebra"));
        Gen.String.Sample(text => _store.Pieces.List(text).Count <= 1, iter: 300);
    }

    [Fact]
    public void A_removed_piece_is_put_back_whole()
    {
        long id = _store.Pieces.Add(Desk.Piece(), "typed");
        _store.Pieces.SetThumbnail(id, [1, 2, 3]);
        _store.Pieces.Remove(id);
        Assert.Empty(_store.Pieces.List());
        Assert.Empty(_store.Pieces.List("disc"));
        Assert.Equal(id, Assert.Single(_store.Pieces.Removed()).Id);
        _store.Pieces.PutBack(id);
        Assert.Equal("typed", _store.Pieces.Read(id).Draft);
        Assert.Equal([1, 2, 3], _store.Pieces.Thumbnail(id)!);
        Assert.Equal(id, Assert.Single(_store.Pieces.List("disc")).Id);
    }

    [Fact]
    public void A_duplicate_goes_its_own_way()
    {
        long id = _store.Pieces.Add(Desk.Piece());
        long copy = _store.Pieces.Duplicate(id), third = _store.Pieces.Duplicate(id);
        Assert.Equal(["Two-wood disc (2)", "Two-wood disc (3)"], new[] { copy, third }.Select(p => _store.Pieces.Find(p).Name));
        _store.Pieces.Save(copy, Desk.Piece("bead"));
        Assert.Equal("Two-wood disc", _store.Pieces.Read(id).Piece.Name);
    }

    [Fact]
    public void What_cannot_be_is_refused_whole()
    {
        long id = _store.Pieces.Add(Desk.Piece());
        Assert.Contains("piece 99", Assert.Throws<BadInputException>(() => _store.Pieces.Read(99)).Message, StringComparison.Ordinal);
        Assert.Throws<BadInputException>(() => _store.Pieces.Remove(99));
        Assert.Throws<BadInputException>(() => _store.Pieces.SaveDraft(99, "x"));
        Assert.Throws<BadInputException>(() => _store.Pieces.SetThumbnail(id, new byte[PieceLibrary.LargestThumbnail + 1]));
        Assert.Throws<BadInputException>(() => _store.Pieces.Save(id, Desk.Piece() with { Name = "" }));
        Assert.Throws<BadInputException>(() => _store.Pieces.Save(id, Desk.Piece() with { Rings = [] }));
        Assert.Equal("Two-wood disc", _store.Pieces.Read(id).Piece.Name);
    }
}
