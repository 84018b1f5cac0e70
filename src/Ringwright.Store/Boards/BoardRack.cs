using Microsoft.Data.Sqlite;
using Ringwright.Core;
using Ringwright.Core.Boards;
using Ringwright.Core.Documents;
using Ringwright.Store.Boards;
using Ringwright.Store.Sqlite;

namespace Ringwright.Store;

/// <summary>
/// The user's rack of boards. Every change is one transaction, leaves a line in the list of changes, and can be undone. Throws
/// <see cref="StoreException"/> when the file cannot be read or written as things stand, and <see cref="BadInputException"/> for a
/// board that is not there or cannot be.
/// </summary>
public sealed class BoardRack
{
    /// <summary>Changes that can be undone; what is older is forgotten.</summary>
    public const int ChangesKept = 100;

    private readonly Database _database;
    private readonly TimeProvider _clock;

    internal BoardRack(Database database, TimeProvider clock)
    {
        _database = database;
        _clock = clock;
    }

    /// <summary>The rack with all its boards; an empty one before there was any.</summary>
    public Rack Read() => _database.Read(RackRows.Read);

    /// <summary>The changes, the newest first.</summary>
    public IReadOnlyList<RackChange> Changes() => _database.Read(s =>
        s.All("SELECT id, made, what, undone IS NOT NULL FROM rack_change ORDER BY id DESC", r => new RackChange(r.GetInt64(0), r.Time(1), r.GetString(2), r.GetBoolean(3))));

    /// <summary>Puts a whole rack in the place of the one before.</summary>
    public void Take(Rack rack) => Change($"rack “{rack?.Name}” taken", _ => rack!);

    /// <summary>Puts a board on the rack.</summary>
    public void Add(RackBoard board) => Change($"board {board?.Label} added", rack => rack with { Boards = rack.Boards.Add(board!) });

    /// <summary>Puts a board in the place of the one labelled <paramref name="label"/>.</summary>
    public void Change(string label, RackBoard board) => Change($"board {label} changed", rack => rack with { Boards = rack.Boards.SetItem(Find(rack, label), board) });

    /// <summary>Takes the board labelled <paramref name="label"/> off the rack.</summary>
    public void Remove(string label) => Change($"board {label} removed", rack => rack with { Boards = rack.Boards.RemoveAt(Find(rack, label)) });

    /// <summary>
    /// A job was sawn: the rack as it was planned with is replaced by the rack after it. Refused when the rack has changed since it
    /// was planned with.
    /// </summary>
    /// <param name="job">The job's name.</param>
    /// <param name="before">The rack the job was planned with.</param>
    /// <param name="after">The rack after the job.</param>
    public void Finish(string job, Rack before, Rack after)
    {
        string planned = DocumentJson.Write(before);
        Change($"“{job}” sawn", rack => DocumentJson.Write(rack) == planned
            ? after
            : throw new BadInputException("rack", "it has changed since the job was planned", "plan the job again with the rack as it is now"));
    }

    /// <summary>Undoes the newest change that is not undone, and returns it; null when there is none.</summary>
    public RackChange? Undo() => _database.Write(s =>
    {
        Stored? newest = s.One("SELECT id, made, what, before FROM rack_change WHERE undone IS NULL ORDER BY id DESC LIMIT 1", Stored.Read);
        if (newest is null) return null;
        s.Run("UPDATE rack_change SET undone = $after WHERE id = $id", ("$after", DocumentJson.Write(RackRows.Read(s))), ("$id", newest.Id));
        RackRows.Write(s, DocumentJson.ReadRack(newest.Rack));
        return newest.Told(undone: true);
    });

    /// <summary>Makes the change again that was undone last, and returns it; null when there is none or another change came after.</summary>
    public RackChange? Redo() => _database.Write(s =>
    {
        // Undoing goes back in order, so what can be made again is the oldest of the undone ones at the end of the list.
        Stored? oldest = s.One(
            "SELECT id, made, what, undone FROM rack_change WHERE undone IS NOT NULL AND id > (SELECT coalesce(max(id), 0) FROM rack_change WHERE undone IS NULL) ORDER BY id LIMIT 1", Stored.Read);
        if (oldest is null) return null;
        s.Run("UPDATE rack_change SET undone = NULL WHERE id = $id", ("$id", oldest.Id));
        RackRows.Write(s, DocumentJson.ReadRack(oldest.Rack));
        return oldest.Told(undone: false);
    });

    private void Change(string what, Func<Rack, Rack> change) => _database.Write(s =>
    {
        Rack before = RackRows.Read(s), after = change(before);
        RackCheck.Check(after);
        if (DocumentJson.Write(after) == DocumentJson.Write(before)) return;
        RackRows.Write(s, after);
        s.Run("INSERT INTO rack_change (made, what, before) VALUES ($now, $what, $before)", ("$now", _clock.Stamp()), ("$what", what), ("$before", DocumentJson.Write(before)));
        s.Run("DELETE FROM rack_change WHERE id <= (SELECT max(id) FROM rack_change) - $kept", ("$kept", ChangesKept));
    });

    private static int Find(Rack rack, string label)
    {
        for (int i = 0; i < rack.Boards.Length; i++)
            if (string.Equals(rack.Boards[i].Label.Trim(), label.Trim(), StringComparison.OrdinalIgnoreCase)) return i;
        throw new BadInputException("rack", $"no board has the label {label}", rack.Boards.IsEmpty ? "the rack is empty" : $"one of these is needed: {string.Join(", ", rack.Boards.Take(20).Select(b => b.Label))}{(rack.Boards.Length > 20 ? " and so on" : "")}");
    }

    private sealed record Stored(long Id, DateTimeOffset Made, string What, string Rack)
    {
        public static Stored Read(SqliteDataReader row) => new(row.GetInt64(0), row.Time(1), row.GetString(2), row.GetString(3));

        public RackChange Told(bool undone) => new(Id, Made, What, undone);
    }
}
