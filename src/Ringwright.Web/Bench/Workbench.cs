using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Web.Bench;

/// <summary>
/// The one piece in work and everything done to it. All windows show the same bench. Thread-safe; <see cref="Changed"/> is
/// raised outside the lock, on the thread that made the change.
/// </summary>
public sealed class Workbench
{
    private readonly Lock _lock = new();
    private readonly string _example;
    private History<Sheet> _history;

    /// <summary>A bench that starts with <paramref name="sheet"/>; <paramref name="example"/> is the JSON text of the example piece.</summary>
    public Workbench(Sheet sheet, string example)
    {
        _history = new(sheet);
        _example = example;
    }

    /// <summary>Raised after every change.</summary>
    public event Action? Changed;

    /// <summary>The present state.</summary>
    public Sheet Now => _history.Now;

    /// <summary>Whether there is something to undo.</summary>
    public bool CanUndo => _history.CanUndo;

    /// <summary>Whether there is something to redo.</summary>
    public bool CanRedo => _history.CanRedo;

    /// <summary>Types <paramref name="text"/> into a field of the shown ring.</summary>
    public void Type(Field field, string text) => Change(d => d.WithRing(r => r.With(field, text)), "ring " + field.Key);

    /// <summary>Types <paramref name="text"/> into a field of the shop.</summary>
    public void Type(ShopField field, string text) => Change(d => d.WithShopText(field, text), "shop " + field.Field.Key);

    /// <summary>Types the piece's name.</summary>
    public void Rename(string name) => Change(d => d with { Name = name }, "name");

    /// <summary>One segment more or fewer than the last good number; within what can be.</summary>
    public void StepSegments(int by)
    {
        int count = Math.Clamp(Now.Ring.Ring.Around + by, PieceCheck.FewestSegments, PieceCheck.MostSegments);
        Change(d => d.WithRing(r => r.With(RingFields.Segments, count.ToString(System.Globalization.CultureInfo.InvariantCulture))));
    }

    /// <summary>Switches the construction of the shown ring.</summary>
    public void Build(Construction construction) => Change(d => d.WithRing(r => r.Built(construction, d.Units.Unit())));

    /// <summary>Lets tip or board width count.</summary>
    public void GiveInner(InnerBy by) => Change(d => d.WithRing(r => r with { InnerBy = by }));

    /// <summary>Names the wood at <paramref name="index"/> of the shown ring's list.</summary>
    public void NameWood(int index, string wood) => Change(d => d.WithRing(r => r with { Woods = r.Woods.SetItem(index, wood) }), "wood " + index);

    /// <summary>Adds a wood to the list.</summary>
    public void AddWood(string wood) => Change(d => d.WithRing(r => r with { Woods = r.Woods.Add(wood) }));

    /// <summary>Takes a wood off the list.</summary>
    public void RemoveWood(int index) => Change(d => d.WithRing(r => r with { Woods = r.Woods.RemoveAt(index) }));

    /// <summary>Chooses what holds the board.</summary>
    public void UseSled(SledKind kind) => Change(d => d with { Sled = kind });

    /// <summary>Chooses how lengths are shown.</summary>
    public void Show(UnitChoice units) => Change(d => d.In(units));

    /// <summary>Shows another ring of the piece.</summary>
    public void Select(int ring) => Change(d => d with { Selected = Math.Clamp(ring, 0, d.Rings.Length - 1) });

    /// <summary>Makes the change that a finding offers, in the ring it names.</summary>
    public void Mend(string ringName, FieldChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        Field field = RingFields.All.First(f => f.Key == change.Field);
        int ring = Now.Good.Piece.Rings.Select(r => r.Name).ToList().IndexOf(ringName);
        Change(d => (d with { Selected = ring }).WithRing(r => r.With(field, Length.FromMillimetres(change.Millimetres).Written) with
        {
            InnerBy = field == RingFields.Tip ? InnerBy.Tip : field == RingFields.BoardWidth ? InnerBy.BoardWidth : r.InnerBy,
        }));
    }

    /// <summary>Puts another piece on the bench, from the text of its file. What was there can be had back by undo.</summary>
    /// <exception cref="BadInputException">It cannot be read or planned; the bench is as it was.</exception>
    public void Open(string json)
    {
        Piece piece = DocumentJson.ReadPiece(json);
        RefuseOthers(piece);
        Move(h => h.To(Sheet.Of(piece, h.Now.Good.Shop, h.Now.Draft.Units)));
    }

    /// <summary>Puts the example on the bench.</summary>
    public void OpenExample() => Open(_example);

    /// <summary>Takes the last step back.</summary>
    public void Undo() => Move(h => h.Undone());

    /// <summary>Makes the step again that was taken back.</summary>
    public void Redo() => Move(h => h.Redone());

    /// <summary>Ends the present run of keystrokes, when a field is left.</summary>
    public void EndRun() => Move(h => h.Sealed(), tell: false);

    // A field of the page that is not there cannot be edited, and editing the rest would lose it from sight.
    private static void RefuseOthers(Piece piece)
    {
        if (piece.Shape is not null)
            throw new BadInputException("shape", "this page cannot show a piece with a shape yet", "the command line plans it; here, open a piece whose rings give their own sizes");
        if (piece.Rings.FirstOrDefault(r => r is not (WedgeDisc or SegmentRing)) is Ring other)
            throw new BadInputException($"ring {other.Name}, construction", "this page cannot show this construction yet", "the command line plans it; here, open a piece of wedge discs and segment rings");
    }

    private void Change(Func<Draft, Draft> change, string? run = null) => Move(h => h.To(h.Now.With(change(h.Now.Draft)), run));

    private void Move(Func<History<Sheet>, History<Sheet>> move, bool tell = true)
    {
        lock (_lock) _history = move(_history);
        if (tell) Changed?.Invoke();
    }
}
