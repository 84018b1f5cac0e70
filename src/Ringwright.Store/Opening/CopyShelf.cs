using System.Globalization;
using Microsoft.Data.Sqlite;
using Ringwright.Store.Sqlite;

namespace Ringwright.Store.Opening;

/// <summary>
/// The automatic copies of the data file, numbered so that a wrong clock cannot mix up their order:
/// <c>copies/00012-20261129T205315Z.db</c>.
/// </summary>
internal sealed class CopyShelf(string folder, TimeProvider clock, StoreOptions options)
{
    private const string TimePattern = "yyyyMMdd'T'HHmmss'Z'";

    /// <summary>Where they lie.</summary>
    public string Folder { get; } = Path.Combine(folder, "copies");

    /// <summary>The copies, newest first.</summary>
    public IReadOnlyList<DataCopy> All() => !Directory.Exists(Folder) ? [] : [.. Directory.EnumerateFiles(Folder, "*.db").Select(Read).OfType<DataCopy>().OrderByDescending(c => c.Number)];

    /// <summary>Whether the newest copy is missing, too old, or from the future.</summary>
    public bool IsDue()
    {
        IReadOnlyList<DataCopy> all = All();
        return all is not [DataCopy newest, ..] || clock.GetUtcNow() - newest.Taken >= options.CopySpacing || newest.Taken > clock.GetUtcNow();
    }

    /// <summary>Copies the data file, and removes the oldest copies when there are more than are kept.</summary>
    public DataCopy Take(Database database)
    {
        Directory.CreateDirectory(Folder);
        IReadOnlyList<DataCopy> before = All();
        DateTimeOffset now = clock.GetUtcNow();
        string path = Path.Combine(Folder, string.Create(CultureInfo.InvariantCulture, $"{(before is [DataCopy last, ..] ? last.Number : 0) + 1:00000}-{now.UtcDateTime.ToString(TimePattern, CultureInfo.InvariantCulture)}.db"));
        string part = string.Create(CultureInfo.InvariantCulture, $"{path}.{Environment.ProcessId}.part");
        RemoveUnfinished();
        try
        {
            database.CopyTo(part);
            File.Move(part, path, overwrite: true);
        }
        catch
        {
            // Half a copy must not fill a disk that is full already.
            File.Delete(part);
            throw;
        }

        foreach (DataCopy old in before.Skip(Math.Max(0, options.CopiesKept - 1))) File.Delete(old.Path);
        return Read(path)!;
    }

    /// <summary>Puts the newest good copy at <paramref name="target"/>; null when there is none.</summary>
    public DataCopy? Restore(string target)
    {
        string part = target + ".part";
        foreach (DataCopy copy in All())
        {
            // A log that a killed process left belongs to another copy.
            foreach (string end in new[] { "-wal", "-shm" }) File.Delete(part + end);
            File.Copy(copy.Path, part, overwrite: true);
            if (!IsGood(part)) continue;
            using (var stream = new FileStream(part, FileMode.Open)) stream.Flush(flushToDisk: true);
            File.Move(part, target, overwrite: true);
            return copy;
        }

        File.Delete(part);
        return null;
    }

    private bool IsGood(string path)
    {
        try
        {
            using Database database = Database.Open(path, options);
            if (Migrations.VersionOf(database) == 0 || !database.IsSound()) return false;
            // Only what can be brought up to date can be worked with.
            Migrations.Run(database, Migrations.Newest);
            return Migrations.IsWhole(database);
        }
        catch (Exception e) when (e is StoreException or SqliteException)
        {
            return false;
        }
    }

    // Left by a process that was killed; what is younger than a day may still be written.
    private void RemoveUnfinished()
    {
        foreach (string part in Directory.EnumerateFiles(Folder, "*.part*").Where(p => clock.GetUtcNow() - File.GetLastWriteTimeUtc(p) > TimeSpan.FromDays(1)))
            File.Delete(part);
    }

    private static DataCopy? Read(string path)
    {
        string[] parts = Path.GetFileNameWithoutExtension(path).Split('-');
        return parts.Length == 2 && int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            && DateTimeOffset.TryParseExact(parts[1], TimePattern, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset taken)
            ? new(number, taken, path)
            : null;
    }
}
