using System.Text.Json;
using Microsoft.Data.Sqlite;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Store.Sqlite;

namespace Ringwright.Store;

/// <summary>
/// The record of real runs, which learning works from. Throws <see cref="StoreException"/> when the file cannot be read or written
/// as things stand, and <see cref="BadInputException"/> for a run that cannot be or is not there.
/// </summary>
public sealed class RunRecord
{
    private const string FirstName = "My record";
    private readonly Database _database;
    private readonly TimeProvider _clock;

    internal RunRecord(Database database, TimeProvider clock)
    {
        _database = database;
        _clock = clock;
    }

    /// <summary>The runs in the order they were added.</summary>
    public IReadOnlyList<RunEntry> List() => _database.Read(s => Rows(s, "removed IS NULL")).ConvertAll(r => r.Entry);

    /// <summary>The runs that were removed and can be put back.</summary>
    public IReadOnlyList<RunEntry> Removed() => _database.Read(s => Rows(s, "removed IS NOT NULL")).ConvertAll(r => r.Entry);

    /// <summary>The whole record as one document.</summary>
    public RunLog Read()
    {
        List<Row> rows = _database.Read(s => Rows(s, "removed IS NULL"));
        var unknown = new Dictionary<string, JsonElement>();
        foreach ((string field, JsonElement value) in rows.SelectMany(r => r.Log.Unknown ?? new Dictionary<string, JsonElement>())) unknown.TryAdd(field, value);
        return new() { Name = rows is [Row first, ..] ? first.Log.Name : FirstName, Runs = [.. rows.Select(r => r.Entry.Run)], Unknown = unknown.Count == 0 ? null : unknown };
    }

    /// <summary>Adds a run and returns its number.</summary>
    public long Add(LoggedRun run) => _database.Write(s => Insert(s, Alone(new RunLog { Name = s.One("SELECT document FROM run WHERE removed IS NULL ORDER BY id LIMIT 1", LogOf)?.Name ?? FirstName, Runs = [] }, run)));

    /// <summary>
    /// Adds the runs of a record that are not there yet, so that taking the same file twice teaches nothing twice. Returns how many
    /// were added.
    /// </summary>
    public int Take(RunLog log)
    {
        RunLogCheck.Check(log);
        return _database.Write(s =>
        {
            Dictionary<string, int> there = Rows(s, "removed IS NULL").CountBy(r => Text(r.Entry.Run)).ToDictionary();
            int added = 0;
            foreach (LoggedRun run in log.Runs)
            {
                string text = Text(run);
                if (there.TryGetValue(text, out int count) && count > 0)
                {
                    there[text] = count - 1;
                    continue;
                }

                Insert(s, Alone(log, run));
                added++;
            }

            return added;
        });
    }

    /// <summary>Takes a run out of the record. <see cref="PutBack"/> undoes it.</summary>
    public void Remove(long id) => SetRemoved(id, _clock.Stamp());

    /// <summary>Puts a removed run back.</summary>
    public void PutBack(long id) => SetRemoved(id, null);

    private void SetRemoved(long id, long? removed) => _database.Write(s =>
    {
        if (s.Run("UPDATE run SET removed = $removed WHERE id = $id", ("$removed", removed), ("$id", id)) == 0)
            throw new BadInputException($"run {id}", "there is none with this number", "the list of the record shows the numbers");
    });

    private long Insert(Session session, RunLog alone) =>
        session.Insert("INSERT INTO run (added, document) VALUES ($now, $document)", ("$now", _clock.Stamp()), ("$document", Written(alone)));

    private static string Written(RunLog log)
    {
        RunLogCheck.Check(log);
        return DocumentJson.Write(log);
    }

    // Each row is a record of its own with format and version, so that it can be read for good; the record's other fields go with it.
    private static RunLog Alone(RunLog log, LoggedRun run) => log with { Runs = [run] };

    private static string Text(LoggedRun run) => DocumentJson.Write(new RunLog { Name = "", Runs = [run] });

    private static RunLog LogOf(SqliteDataReader row) => DocumentJson.ReadRunLog(row.GetString(0));

    private static List<Row> Rows(Session session, string where) => session.All(
        $"SELECT document, id, added, removed FROM run WHERE {where} ORDER BY id",
        r =>
        {
            RunLog log = LogOf(r);
            return new Row(log, new(r.GetInt64(1), r.Time(2), log.Runs[0], r.TimeOrNull(3)));
        });

    private sealed record Row(RunLog Log, RunEntry Entry);
}
