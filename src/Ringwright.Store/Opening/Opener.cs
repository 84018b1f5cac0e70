using System.Globalization;
using Microsoft.Data.Sqlite;
using Ringwright.Store.Sqlite;

namespace Ringwright.Store.Opening;

/// <summary>
/// Opens the data file, whatever state it is in: makes a missing one, takes a copy when one is due, brings an old one up to
/// date, and sets a damaged one aside and puts the newest good copy in its place.
/// </summary>
internal sealed class Opener(string folder, TimeProvider clock, StoreOptions options)
{
    /// <summary>The data file's name in the folder.</summary>
    public const string FileName = "ringwright.db";

    private readonly string _file = Path.Combine(folder, FileName);
    private readonly CopyShelf _copies = new(folder, clock, options);
    private string? _told;

    /// <summary>Opens it.</summary>
    /// <exception cref="StoreException">It cannot be opened as things stand; nothing was changed.</exception>
    public Opened Open()
    {
        try
        {
            Directory.CreateDirectory(folder);
            return Claimed();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw Faults.Unwritable(folder, e);
        }
        catch (SqliteException e) when (Faults.Of(e, _file) is StoreException told)
        {
            throw told;
        }
    }

    private Opened Claimed()
    {
        FolderClaim claim = FolderClaim.Share(folder, options.Patience);
        try
        {
            if (IsAtHand() && Sound() is Database sound) return new(sound, claim, _told);
            claim.Dispose();
            string? told = Mend();
            claim = FolderClaim.Share(folder, options.Patience);
            Database database = Sound() ?? throw Faults.Damaged(_file, "the disk may be failing, check it");
            return new(database, claim, told);
        }
        catch
        {
            claim.Dispose();
            throw;
        }
    }

    // A missing or empty file is made anew only where none was lost.
    private bool IsAtHand() => HasContent() || (_copies.All().Count == 0 && !File.Exists(_file + "-wal"));

    private bool HasContent() => new FileInfo(_file) is { Exists: true, Length: > 0 };

    /// <summary>The file, opened and brought up to date; null when it is damaged.</summary>
    private Database? Sound()
    {
        Database? database = null;
        try
        {
            database = Database.Open(_file, options);
            int version = Migrations.VersionOf(database);
            if (version > 0 && !database.IsSound())
            {
                database.Dispose();
                return null;
            }

            database.Prepare(options);
            if (version > 0) TakeCopy(database, needed: version < Migrations.Newest);
            if (version < Migrations.Newest) Migrations.Run(database, Migrations.Newest);
            if (Migrations.IsWhole(database)) return database;
            database.Dispose();
            return null;
        }
        catch (SqliteException e) when (Faults.IsDamage(e))
        {
            database?.Dispose();
            return null;
        }
        catch (StoreException e) when (e.Fault == StoreFault.Damaged)
        {
            database?.Dispose();
            return null;
        }
        catch
        {
            database?.Dispose();
            throw;
        }
    }

    // Without a copy nothing is brought up to date; the daily one may wait for a better day.
    private void TakeCopy(Database database, bool needed)
    {
        if (!needed && !_copies.IsDue()) return;
        try
        {
            _copies.Take(database);
        }
        catch (Exception e) when (!needed && e is IOException or UnauthorizedAccessException or SqliteException)
        {
            _told = $"{_copies.Folder}: today's copy of your work could not be made ({e.Message.TrimEnd('.')}); make room on the disk and open Ringwright again.";
        }
    }

    private string? Mend()
    {
        using FolderClaim alone = FolderClaim.Alone(folder, options.Patience)
            ?? throw Faults.Damaged(_file, "close the other Ringwright that has it open and try again, the newest good copy is then taken");
        // Another process may have mended it while this one waited.
        if (IsAtHand() && Sound() is Database sound)
        {
            sound.Dispose();
            return null;
        }

        string? aside = SetAside();
        DataCopy? copy = _copies.Restore(_file);
        string problem = aside is null ? $"{_file} was missing or empty" : $"{_file} was damaged and is kept as {Path.GetFileName(aside)}";
        return copy is null
            ? $"{problem}; there was no good copy to go back to, so Ringwright starts empty."
            : $"{problem}; the copy of {copy.Taken.ToString("d MMMM yyyy, HH:mm", CultureInfo.InvariantCulture)} UTC was taken in its place, and what was saved after that is not in it.";
    }

    private string? SetAside()
    {
        string aside = Enumerable.Range(1, int.MaxValue).Select(i => Path.Combine(folder, $"ringwright-damaged-{i}.db")).First(p => !Path.Exists(p) && !Path.Exists(p + "-wal"));
        bool any = HasContent();
        // The log goes too: a good copy must never meet the log of another file.
        foreach (string end in new[] { "", "-wal", "-shm" })
            if (File.Exists(_file + end)) File.Move(_file + end, aside + end);
        return any ? aside : null;
    }
}

/// <summary>An opened data file.</summary>
/// <param name="Database">The file.</param>
/// <param name="Claim">The share in the folder.</param>
/// <param name="Told">One sentence about what was done to open it; null when nothing unusual was.</param>
internal sealed record Opened(Database Database, FolderClaim Claim, string? Told);
