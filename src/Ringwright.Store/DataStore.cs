using Ringwright.Store.Opening;
using Ringwright.Store.Pieces;
using Ringwright.Store.Sqlite;

namespace Ringwright.Store;

/// <summary>
/// A user's work in one SQLite file, <c>ringwright.db</c> in the data folder. Several programs may have it open. A change is on the
/// disk when the method that makes it returns; a process that is killed leaves the last change whole or unmade.
/// </summary>
public sealed class DataStore : IDisposable
{
    private readonly Database _database;
    private readonly FolderClaim _claim;
    private readonly CopyShelf _copies;

    private DataStore(Opened opened, string folder, TimeProvider clock, StoreOptions options)
    {
        (_database, _claim, Told) = opened;
        _copies = new(folder, clock, options);
        var rows = new PieceRows(clock, options, Guid.NewGuid().ToString("N"));
        Pieces = new(_database, clock, rows);
        History = new(_database, rows);
        Shops = new(_database, clock);
        Rack = new(_database, clock);
        Record = new(_database, clock);
        Settings = new(_database);
    }

    /// <summary>The data file.</summary>
    public string File => _database.File;

    /// <summary>One sentence about what had to be done to open the file, for the user to see; null when nothing unusual was.</summary>
    public string? Told { get; }

    /// <summary>The pieces.</summary>
    public PieceLibrary Pieces { get; }

    /// <summary>Their versions.</summary>
    public PieceHistory History { get; }

    /// <summary>The shops.</summary>
    public ShopShelf Shops { get; }

    /// <summary>The boards.</summary>
    public BoardRack Rack { get; }

    /// <summary>The record of runs.</summary>
    public RunRecord Record { get; }

    /// <summary>Small settings.</summary>
    public Settings Settings { get; }

    /// <summary>The automatic copies of the file, newest first.</summary>
    public IReadOnlyList<DataCopy> Copies => _copies.All();

    /// <summary>Whether <paramref name="folder"/> has a data file; only looks.</summary>
    public static bool IsIn(string folder) => System.IO.File.Exists(Path.Combine(folder, Opener.FileName));

    /// <summary>
    /// Opens the data file in <paramref name="folder"/> and makes both when they are missing. Takes a copy when the last one is a day
    /// old, brings an older file up to date, and sets a damaged one aside for the newest good copy.
    /// </summary>
    /// <param name="folder">The data folder; <see cref="UserFolder.Usual"/> is the user's.</param>
    /// <param name="clock">Gives the times that are kept.</param>
    /// <param name="options">How it is opened; null for the usual way.</param>
    /// <exception cref="StoreException">Folder or file cannot be used as things stand; they are left as they are.</exception>
    public static DataStore Open(string folder, TimeProvider clock, StoreOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(clock);
        string full = Path.GetFullPath(folder);
        options ??= new();
        return new(new Opener(full, clock, options).Open(), full, clock, options);
    }

    /// <summary>Closes the file.</summary>
    public void Dispose()
    {
        _database.Dispose();
        _claim.Dispose();
    }
}
