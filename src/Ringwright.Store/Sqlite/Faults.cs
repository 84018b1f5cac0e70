using Microsoft.Data.Sqlite;

namespace Ringwright.Store.Sqlite;

/// <summary>Turns SQLite's result codes into one sentence. Codes: sqlite.org, "Result and Error Codes".</summary>
internal static class Faults
{
    private const int Error = 1, Perm = 3, Busy = 5, Locked = 6, ReadOnly = 8, IoError = 10, Corrupt = 11, Full = 13, CannotOpen = 14, Mismatch = 20, Format = 24, NotADatabase = 26;

    // Our own statements are right, so a general error means that tables, or what stands in them, are not as they were made.
    public static bool IsDamage(SqliteException e) => e.SqliteErrorCode is Corrupt or NotADatabase or Error or Mismatch or Format;

    /// <summary>The fault in words; null when it is none that a person can do something about.</summary>
    public static StoreException? Of(SqliteException e, string file) => e.SqliteErrorCode switch
    {
        Busy or Locked => new(StoreFault.Locked, file, "another program is writing in it", "close that program or try again in a moment", e),
        ReadOnly or CannotOpen or Perm => Unwritable(file, e),
        Full => new(StoreFault.DiskFull, file, "the disk is full, so the last change was not saved", "make room and save again; what was saved before is whole", e),
        IoError => new(StoreFault.Disk, file, $"the disk refuses ({e.Message.TrimEnd('.')}), so the last change was not saved", "check the disk and save again", e),
        _ when IsDamage(e) => Damaged(file, "close Ringwright and open it again, it then takes the newest good copy", e),
        _ => null,
    };

    public static StoreException Unwritable(string where, Exception e) =>
        new(StoreFault.ReadOnly, where, "it cannot be written", $"a folder of your own is needed, and {UserFolder.Variable} can name it", e);

    public static StoreException Damaged(string file, string right, Exception? e = null) => new(StoreFault.Damaged, file, "its content is damaged", right, e);
}
