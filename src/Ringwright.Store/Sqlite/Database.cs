using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Ringwright.Store.Sqlite;

/// <summary>
/// One connection to the data file, used by one thread at a time. A change is one transaction: it is on the disk when
/// <see cref="Write{T}"/> returns, or it never was.
/// </summary>
internal sealed class Database : IDisposable
{
    private readonly SqliteConnection _connection;
    private readonly Lock _gate = new();

    private Database(string file, SqliteConnection connection)
    {
        File = file;
        _connection = connection;
    }

    /// <summary>Where it is.</summary>
    public string File { get; }

    /// <summary>Opens the file, or makes it, without looking at what is in it.</summary>
    public static Database Open(string file, StoreOptions options)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder
        {
            DataSource = file,
            Mode = SqliteOpenMode.ReadWriteCreate,
            Pooling = false,
            ForeignKeys = true,
            // Zero would wait for ever.
            DefaultTimeout = Math.Max(1, (int)Math.Ceiling(options.Patience.TotalSeconds)),
        }.ToString());
        try
        {
            connection.Open();
            return new(file, connection);
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>Write-ahead log, and every commit flushed to the disk before it is said to be done.</summary>
    public void Prepare(StoreOptions options)
    {
        Pragma("journal_mode = WAL");
        Pragma("synchronous = FULL");
        if (options.MostPages is long pages) Pragma(string.Create(CultureInfo.InvariantCulture, $"max_page_count = {pages}"));
    }

    /// <summary>A setting of the file, read or written.</summary>
    public string Pragma(string statement)
    {
        lock (_gate) return new Session(_connection, null).One("PRAGMA " + statement, r => r.GetString(0)) ?? "";
    }

    /// <summary>Whether SQLite's own check finds nothing wrong.</summary>
    public bool IsSound() => Pragma("quick_check(1)") == "ok";

    /// <summary>Reads in one consistent view.</summary>
    public T Read<T>(Func<Session, T> read) => InTransaction(read, deferred: true);

    /// <summary>Changes all or nothing.</summary>
    public T Write<T>(Func<Session, T> change) => InTransaction(change, deferred: false);

    /// <summary>Changes all or nothing.</summary>
    public void Write(Action<Session> change) => Write(session =>
    {
        change(session);
        return true;
    });

    /// <summary>Copies everything to a new file at <paramref name="path"/>.</summary>
    public void CopyTo(string path)
    {
        lock (_gate)
        {
            using var copy = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = path, Pooling = false }.ToString());
            copy.Open();
            _connection.BackupDatabase(copy);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _connection.Dispose();

    private T InTransaction<T>(Func<Session, T> work, bool deferred)
    {
        lock (_gate)
        {
            try
            {
                using SqliteTransaction transaction = _connection.BeginTransaction(deferred);
                T result = work(new(_connection, transaction));
                transaction.Commit();
                return result;
            }
            catch (SqliteException e) when (Faults.Of(e, File) is StoreException told)
            {
                throw told;
            }
        }
    }
}
