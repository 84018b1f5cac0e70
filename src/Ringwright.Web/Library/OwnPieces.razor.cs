using System.Globalization;
using Ringwright.Core;
using Ringwright.Core.Planning;
using Ringwright.Store;
using Ringwright.Web.Bench;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Library;

/// <summary>The user's pieces: found, opened, copied, removed, compared; and the versions of the one on the bench.</summary>
public partial class OwnPieces
{
    private readonly List<long> _compared = [];
    private string _search = "";
    private string? _wrong;
    private PieceEntry? _taken;

    private IReadOnlyList<PieceEntry> Entries => Shelf.List(_search);

    private long? Here => Shelf.EntryOf(Sheet);

    private Plan[] Plans => [.. _compared.Select(id => id == Here ? Sheet.Good : Planner.Plan(Shelf.Read(id), Sheet.Good.Shop))];

    private static string Words(PieceEntry entry) =>
        $"{(entry.Kind is null ? "" : entry.Kind + ", ")}{entry.Rings} {(entry.Rings == 1 ? "ring" : "rings")}, {string.Join(", ", entry.Woods.Take(4))}; changed {Local(entry.Changed)}";

    private static string Local(DateTimeOffset time) => time.ToLocalTime().ToString("d MMM yyyy, HH:mm", CultureInfo.InvariantCulture);

    private void Compare(long id)
    {
        if (_compared.Remove(id)) return;
        if (_compared.Count == 2) _compared.RemoveAt(0);
        _compared.Add(id);
        Do(() => _ = Plans);
    }

    private void Put(Sheet sheet)
    {
        Bench.Put(sheet);
        Navigation.NavigateTo("/shape");
    }

    private void Take(PieceEntry entry)
    {
        Shelf.Remove(entry.Id);
        _compared.Remove(entry.Id);
        _taken = entry;
    }

    private void PutBack(PieceEntry entry)
    {
        Shelf.PutBack(entry.Id);
        _taken = null;
    }

    private void Keep(long id)
    {
        Shelf.Keep(id, Sheet.Desk["version.name"]);
        Bench.Note("version.name", "");
    }

    private void Do(Action action)
    {
        try
        {
            action();
            _wrong = null;
        }
        catch (Exception e) when (e is BadInputException or StoreException)
        {
            _wrong = FieldProblem.Capital(e.Message);
            _compared.Clear();
        }
    }
}
