using Microsoft.Data.Sqlite;

namespace Ringwright.Store.Sqlite;

/// <summary>Columns that may be empty, and times, which are stored as milliseconds since 1970 UTC.</summary>
internal static class Column
{
    public static string? TextOrNull(this SqliteDataReader row, int column) => row.IsDBNull(column) ? null : row.GetString(column);

    public static DateTimeOffset Time(this SqliteDataReader row, int column) => DateTimeOffset.FromUnixTimeMilliseconds(row.GetInt64(column));

    public static DateTimeOffset? TimeOrNull(this SqliteDataReader row, int column) => row.IsDBNull(column) ? null : row.Time(column);

    public static long Stamp(this TimeProvider clock) => clock.GetUtcNow().ToUnixTimeMilliseconds();
}
