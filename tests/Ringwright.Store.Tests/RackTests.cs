using CsCheck;
using Ringwright.Core;
using Ringwright.Core.Boards;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;

namespace Ringwright.Store.Tests;

public sealed class RackTests : IDisposable
{
    private readonly Desk _desk = new();
    private readonly DataStore _store;

    public RackTests() => _store = _desk.Open();

    public void Dispose()
    {
        _store.Dispose();
        _desk.Dispose();
    }

    [Fact]
    public void A_whole_rack_comes_back_as_it_was_with_fields_of_others()
    {
        Assert.Empty(_store.Rack.Read().Boards);
        string text = Desk.Text("small-rack").Replace("\"label\":", "\"shelf\": 2, \"label\":", StringComparison.Ordinal).Replace("\"boards\":", "\"wall\": \"north\", \"boards\":", StringComparison.Ordinal);
        Rack rack = DocumentJson.ReadRack(text);
        _store.Rack.Take(rack);
        using DataStore again = _desk.Open();
        Assert.Equal(DocumentJson.Write(rack), DocumentJson.Write(again.Rack.Read()));
    }

    [Fact]
    public void Boards_are_added_changed_and_removed_by_their_label()
    {
        _store.Rack.Add(Board("A1", 600));
        _store.Rack.Add(Board("A2", 500));
        _store.Rack.Change("a1", Board("A1", 450));
        _store.Rack.Remove("A2");
        Assert.Equal(450, Assert.Single(_store.Rack.Read().Boards).Length.Millimetres);
        Assert.Equal(["board A2 removed", "board a1 changed", "board A2 added", "board A1 added"], _store.Rack.Changes().Select(c => c.What));
        Assert.Contains("no board has the label B9", Assert.Throws<BadInputException>(() => _store.Rack.Remove("B9")).Message, StringComparison.Ordinal);
        Assert.Throws<BadInputException>(() => _store.Rack.Add(Board("a1", 100)));
        Assert.Throws<BadInputException>(() => _store.Rack.Add(Board("A3", 0)));
        Assert.Equal(4, _store.Rack.Changes().Count);
    }

    [Fact]
    public void A_job_puts_the_rack_after_it_in_place_and_is_undone_and_made_again()
    {
        Rack before = DocumentJson.ReadRack(Desk.Text("small-rack"));
        _store.Rack.Take(before);
        Rack planned = _store.Rack.Read(), after = planned with { Boards = planned.Boards.RemoveAt(0).Add(Board("Z9", 120)) };
        _store.Rack.Finish("Bowl", planned, after);
        Assert.Equal(DocumentJson.Write(after), DocumentJson.Write(_store.Rack.Read()));
        Assert.Equal("“Bowl” sawn", _store.Rack.Undo()!.What);
        Assert.Equal(DocumentJson.Write(before), DocumentJson.Write(_store.Rack.Read()));
        Assert.True(_store.Rack.Changes()[0].IsUndone);
        Assert.Equal("“Bowl” sawn", _store.Rack.Redo()!.What);
        Assert.Equal(DocumentJson.Write(after), DocumentJson.Write(_store.Rack.Read()));
        Assert.Null(_store.Rack.Redo());
        _store.Rack.Remove("Z9");
        Assert.Contains("changed since the job was planned", Assert.Throws<BadInputException>(() => _store.Rack.Finish("Bowl", after, before)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Undo_goes_back_through_every_change_and_redo_forward_again() =>
        Gen.Int[100, 2000].Array[1, 8].Sample(
            lengths =>
            {
                using var desk = new Desk();
                using DataStore store = desk.Open();
                var states = new List<string> { Text(store) };
                foreach ((int length, int i) in lengths.Select((l, i) => (l, i)))
                {
                    store.Rack.Add(Board($"B{i}", length));
                    states.Add(Text(store));
                }

                for (int i = states.Count - 2; i >= 0; i--)
                {
                    Assert.NotNull(store.Rack.Undo());
                    Assert.Equal(states[i], Text(store));
                }

                Assert.Null(store.Rack.Undo());
                foreach (string state in states.Skip(1))
                {
                    Assert.NotNull(store.Rack.Redo());
                    Assert.Equal(state, Text(store));
                }
            },
            iter: 6);

    private static string Text(DataStore store) => DocumentJson.Write(store.Rack.Read());

    private static RackBoard Board(string label, double length) => new()
    {
        Label = label,
        Wood = "maple",
        Length = Length.FromMillimetres(length),
        Width = Length.FromMillimetres(80),
        Thickness = Length.FromMillimetres(25),
    };
}
