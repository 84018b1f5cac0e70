using Ringwright.Core.Pieces;
using Ringwright.Store;
using Ringwright.Web.Bench;
using Ringwright.Web.Bench.Edits;
using Ringwright.Web.Bench.Fields;
using Ringwright.Web.Saving;

namespace Ringwright.Web.Tests.Bench;

/// <summary>A ring stays the same one whatever it is called and wherever it lies.</summary>
public sealed class RingIdentityTests : IDisposable
{
    private readonly TemporaryFolder _data = new();
    private readonly Workbench _bench = new(Sheet.Of(Example.Piece with { Rings = [.. new[] { "Low", "Middle", "Top" }.Select(n => Example.Piece.Rings[0] with { Name = n })] }, Shop.Starting));

    public void Dispose() => _data.Dispose();

    [Fact]
    public void Renaming_reordering_and_undo_change_no_mark()
    {
        ImmutableArray<string> marks = _bench.Now.RingMarks;
        Assert.Equal(["1", "2", "3"], marks.Take(3));
        (string low, string next) = (_bench.Now.Good.Rings[0].Ring.Name, _bench.Now.Good.Rings[1].Ring.Name);
        // Each gets the other's name, on a way round, for two cannot have the same.
        Rename(0, "Between");
        Rename(1, low);
        Rename(0, next);
        Assert.Equal(marks, _bench.Now.RingMarks);
        Assert.True(_bench.Change(w => RingEdits.Move(w, 1, 1)));
        Assert.Equal([marks[0], marks[2], marks[1], .. marks[3..]], _bench.Now.RingMarks);
        _bench.Undo();
        Assert.Equal(marks, _bench.Now.RingMarks);
    }

    [Fact]
    public void A_new_ring_has_a_mark_of_its_own_and_one_that_comes_back_its_old_one()
    {
        ImmutableArray<string> marks = _bench.Now.RingMarks;
        Assert.True(_bench.Change(w => RingEdits.AddAbove(w, 0)));
        Assert.Equal(marks, _bench.Now.RingMarks.RemoveAt(1));
        Assert.DoesNotContain(_bench.Now.RingMarks[1], marks);
        Assert.True(_bench.Change(w => RingEdits.Remove(w, [0])));
        Assert.DoesNotContain(marks[0], _bench.Now.RingMarks);
        _bench.Undo();
        Assert.Equal(marks[0], _bench.Now.RingMarks[0]);
    }

    [Fact]
    public void Marks_are_saved_and_outlive_a_change_of_name_in_the_list()
    {
        using var shelf = new PieceShelf(_data.Path);
        Assert.Null(shelf.Claim());
        Assert.True(_bench.Change(w => RingEdits.Move(w, 0, 1)));
        shelf.Save(_bench.Now);
        long id = shelf.EntryOf(_bench.Now)!.Value;
        Assert.Equal(["2", "1", "3"], shelf.Open(id, Shop.Starting).RingMarks.Take(3));
        using (var store = DataStore.Open(_data.Path, TimeProvider.System)) store.Pieces.Rename(id, "Bowl for Ada");
        Assert.Equal(["2", "1", "3"], shelf.Open(id, Shop.Starting).RingMarks.Take(3));
    }

    private void Rename(int ring, string name)
    {
        _bench.Select(ring);
        _bench.Type(RingFields.Name, name);
        _bench.EndRun();
        Assert.Equal(name, _bench.Now.Good.Rings[ring].Ring.Name);
    }
}
