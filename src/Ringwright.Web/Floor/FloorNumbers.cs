using System.Globalization;
using Ringwright.Core;
using Ringwright.Core.Planning;
using Ringwright.Store;
using Ringwright.Web.Bench;
using Ringwright.Web.Saving;

namespace Ringwright.Web.Floor;

/// <summary>
/// Under which number a piece has its work on the shop floor: that of the list of pieces. Work on an example makes it one of the
/// user's pieces. Where nothing can be saved the number holds while the app runs.
/// </summary>
public sealed class FloorNumbers : IDisposable
{
    private readonly Workbench _bench;
    private readonly PieceShelf _shelf;
    private readonly ShopFloor _floor;
    private Guid _last;

    /// <summary>Also brings over what was kept by names.</summary>
    public FloorNumbers(Workbench bench, PieceShelf shelf, ShopFloor floor)
    {
        ArgumentNullException.ThrowIfNull(bench);
        (_bench, _shelf, _floor) = (bench, shelf, floor);
        ClaimKept();
        ClaimNew();
        bench.Changed += ClaimNew;
    }

    /// <summary>The number of a sheet's piece.</summary>
    public string Of(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return _shelf.EntryOf(sheet) is long number ? Text(number) : sheet.Token.ToString("N");
    }

    /// <summary>The name of a ring's work.</summary>
    public string Job(Sheet sheet, RingPlan ring)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return FloorNames.Job(Of(sheet), sheet.MarkOf(ring));
    }

    /// <summary>The number of the piece on the bench, on which work begins: it is put among the user's pieces if it is not there.</summary>
    public string Own()
    {
        Sheet sheet = _bench.Now;
        string before = Of(sheet);
        if (_shelf.EntryOf(sheet) is not null || !_shelf.IsOpen) return before;
        _bench.Own();
        try
        {
            _shelf.Save(_bench.Now);
        }
        catch (StoreException)
        {
            // The foot line tells of it; the work is counted all the same.
            return before;
        }

        string number = Of(_bench.Now);
        _floor.Change(s => s.Moved(before, number));
        return number;
    }

    /// <summary>The sheet of a piece by its number: the one on the bench, or one of the list.</summary>
    /// <exception cref="BadInputException">There is none, or it cannot be planned.</exception>
    public Sheet SheetOf(string number)
    {
        Sheet now = _bench.Now;
        if (number == Of(now)) return now;
        if (!long.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out long id) || !_shelf.IsOpen)
            throw new BadInputException($"piece {number}", "it is not among the pieces of this machine", "the code is of a piece that was never saved, or of another machine");
        return _shelf.Open(id, now.Good.Shop);
    }

    /// <summary>Whether a piece of this number is on the bench or was ever on the list.</summary>
    public bool Knows(string number) => number == Of(_bench.Now) || (long.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out long id) && _shelf.List().Concat(_shelf.Removed()).Any(e => e.Id == id));

    /// <inheritdoc/>
    public void Dispose() => _bench.Changed -= ClaimNew;

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);

    // Of pieces of one name the one that was worked on last.
    private void ClaimKept()
    {
        foreach (PieceEntry entry in _shelf.List())
        {
            if (!_floor.Now.HasOld(entry.Name)) continue;
            try
            {
                Claim(entry.Name, Text(entry.Id), _shelf.Open(entry.Id, _bench.Now.Good.Shop));
            }
            catch (Exception e) when (e is BadInputException or StoreException)
            {
                // It stays under its names, and is looked for again when the piece lies on the bench.
            }
        }
    }

    // An example, or a piece that could not be opened before, when it is put on the bench.
    private void ClaimNew()
    {
        Sheet sheet = _bench.Now;
        if (sheet.Token == _last) return;
        _last = sheet.Token;
        if (_floor.Now.HasOld(sheet.Good.Piece.Name)) Claim(sheet.Good.Piece.Name, Own(), sheet);
    }

    private void Claim(string name, string number, Sheet sheet) =>
        _floor.Change(s => s.Claimed(name, number, sheet.Good.Piece.Rings.Select(r => r.Name), sheet.RingMarks));
}
