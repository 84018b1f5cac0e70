using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Bench;

/// <summary>
/// The one piece in work and everything done to it. All windows show the same bench. Thread-safe; <see cref="Changed"/> is
/// raised outside the lock, on the thread that made the change.
/// </summary>
/// <param name="sheet">What it starts with.</param>
public sealed class Workbench(Sheet sheet)
{
    private readonly Lock _lock = new();
    private History<Sheet> _history = new(sheet, s => s.Folded(), s => s.Unfolded());

    /// <summary>Raised after every change.</summary>
    public event Action? Changed;

    /// <summary>The present state.</summary>
    public Sheet Now => _history.Now;

    /// <summary>Whether there is something to undo.</summary>
    public bool CanUndo => _history.CanUndo;

    /// <summary>Whether there is something to redo.</summary>
    public bool CanRedo => _history.CanRedo;

    /// <summary>Why the last change was refused; null when it was made. A sentence.</summary>
    public string? Refused { get; private set; }

    /// <summary>Types <paramref name="text"/> into a field; a field of a ring into that of every ring chosen that has it.</summary>
    public void Type(Lens lens, string text)
    {
        ArgumentNullException.ThrowIfNull(lens);
        Move(h => Step(h, h.Now.Typed(InChosen(h.Now, lens), text), "type " + lens.Id));
    }

    /// <summary>Types <paramref name="text"/> into the shown ring's field of a kind.</summary>
    public void Type(Field field, string text) => Type(RingLenses.Of(Now.Work, Now.Shown).First(l => l.Field.Key == field.Key), text);

    /// <summary>One segment more or fewer than the last good number in every ring chosen; within what can be.</summary>
    public void StepSegments(int by) => Type(RingFields.Segments, Codecs.Whole.Print(Math.Clamp(Now.Ring.Ring.Around + by, PieceCheck.FewestSegments, PieceCheck.MostSegments)));

    /// <summary>Makes a change to the work as one step.</summary>
    /// <param name="change">The change.</param>
    /// <param name="run">Steps of the same run one after another count as one.</param>
    /// <param name="select">Which rings are chosen after it; as before when absent.</param>
    /// <returns>Whether it was made; else <see cref="Refused"/> says why not.</returns>
    public bool Change(Func<Work, Work> change, string? run = null, params ReadOnlySpan<int> select)
    {
        ArgumentNullException.ThrowIfNull(change);
        ImmutableSortedSet<int> chosen = [.. select];
        return Try(h =>
        {
            Sheet changed = (h.Now with { Selected = chosen.IsEmpty ? h.Now.Selected : chosen }).With(change(h.Now.Work));
            return Step(h, changed, run);
        });
    }

    /// <summary>Makes a change to the sheet as one step, such as to what is kept for switching back.</summary>
    public bool Change(Func<Sheet, Sheet> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return Try(h => Step(h, change(h.Now)));
    }

    /// <summary>Types a text on the desk, in a form that is not part of the work yet.</summary>
    public void Note(string name, string text) => Move(h => Step(h, h.Now with { Desk = h.Now.Desk.With(name, text) }, "desk " + name));

    /// <summary>Chooses how lengths are shown.</summary>
    public void Show(UnitChoice units)
    {
        if (units != Now.Units) Change(s => s.In(units));
    }

    /// <summary>Shows a ring alone; no step.</summary>
    public void Select(int ring) => Look(s => s with { Selected = [Math.Clamp(ring, 0, s.Good.Rings.Length - 1)], Typing = null });

    /// <summary>Adds a ring to those chosen or takes it away; the last one stays. No step.</summary>
    public void Toggle(int ring) => Look(s =>
    {
        ImmutableSortedSet<int> other = s.Selected.SymmetricExcept([ring]);
        return other.IsEmpty ? s : s with { Selected = other, Typing = null };
    });

    /// <summary>Makes the change that a finding offers, in the ring it names.</summary>
    public void Mend(string ringName, FieldChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        int ring = Now.Good.Piece.Rings.Index().First(r => r.Item.Name == ringName).Index;
        Select(ring);
        Type(RingLenses.Of(Now.Work, ring).First(l => l.Field.Key == change.Field), Length.FromMillimetres(change.Millimetres).Written);
        EndRun();
    }

    /// <summary>Puts another piece on the bench, what was measured of the one before not with it. What was there can be had back by undo.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="borrowed">Whether it is an example, which becomes one of the user's pieces when it is first changed.</param>
    /// <exception cref="BadInputException">It cannot be planned; the bench is as it was.</exception>
    public void Put(Piece piece, bool borrowed = false)
    {
        Sheet before = Now;
        Put(Sheet.Of(piece, before.Good.Shop, before.Units) with { Desk = before.Desk.Without(Stations.FitDesk.DeskPrefix), Borrowed = borrowed });
    }

    /// <summary>Makes an example one of the user's pieces as it is, because work on it has begun. No step.</summary>
    public void Own()
    {
        if (Now.Borrowed) Look(s => s with { Borrowed = false });
    }

    /// <summary>Puts another sheet on the bench, made in the shop in use. What was there can be had back by undo.</summary>
    public void Put(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        Move(h => h.To(sheet with { ShopEntry = h.Now.ShopEntry }));
    }

    /// <summary>Takes a shop into use; undo goes back to the one before.</summary>
    /// <param name="entry">Its number among the user's shops.</param>
    /// <param name="shop">The shop.</param>
    /// <returns>Whether it was done; else <see cref="Refused"/> says why the piece cannot be made in it.</returns>
    public bool Use(long entry, Shop shop) => Try(h => h.To(h.Now.With(new(h.Now.Work.Piece, shop)) with { ShopEntry = entry }));

    /// <summary>Puts another piece on the bench, from the text of its file.</summary>
    /// <param name="json">The text.</param>
    /// <param name="borrowed">Whether it is an example.</param>
    /// <exception cref="BadInputException">It cannot be read or planned; the bench is as it was.</exception>
    public void Open(string json, bool borrowed = false) => Put(DocumentJson.ReadPiece(json), borrowed);

    /// <summary>Takes the last step back.</summary>
    public void Undo() => Move(h => h.Undone());

    /// <summary>Makes the step again that was taken back.</summary>
    public void Redo() => Move(h => h.Redone());

    /// <summary>Ends the present run of keystrokes, when a field is left; what was typed then stands as it was understood.</summary>
    public void EndRun()
    {
        if (Now.Typing is null) Move(h => h.Sealed(), tell: false);
        else Move(h => h.Showing(h.Now with { Typing = null }).Sealed());
    }

    /// <summary>Forgets why the last change was refused.</summary>
    public void Dismiss()
    {
        Refused = null;
        Changed?.Invoke();
    }

    private static ImmutableArray<Lens> InChosen(Sheet sheet, Lens lens)
    {
        if (lens.Place.Ring is not int shown || lens.Field.Key == RingFields.Name.Key || !sheet.Selected.Contains(shown)) return [lens];
        return [lens, .. sheet.Selected.Where(i => i != shown).Select(i => RingLenses.Of(sheet.Work, i).FirstOrDefault(l => l.Field.Key == lens.Field.Key)).OfType<Lens>()];
    }

    private static History<Sheet> Step(History<Sheet> history, Sheet changed, string? run = null) => history.To(changed with { Borrowed = false }, run);

    private bool Try(Func<History<Sheet>, History<Sheet>> move)
    {
        try
        {
            Move(move);
            return true;
        }
        catch (BadInputException e)
        {
            Refused = FieldProblem.Capital(e.Message);
            Changed?.Invoke();
            return false;
        }
    }

    private void Look(Func<Sheet, Sheet> look) => Move(h => h.Showing(look(h.Now)));

    private void Move(Func<History<Sheet>, History<Sheet>> move, bool tell = true)
    {
        lock (_lock)
        {
            _history = move(_history);
            Refused = null;
        }

        if (tell) Changed?.Invoke();
    }
}
