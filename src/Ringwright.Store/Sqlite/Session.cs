using Microsoft.Data.Sqlite;

namespace Ringwright.Store.Sqlite;

/// <summary>Statements within one transaction.</summary>
internal readonly struct Session(SqliteConnection connection, SqliteTransaction? transaction)
{
    /// <summary>Runs a statement and returns the number of rows it changed.</summary>
    public int Run(string sql, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        using SqliteCommand command = Command(sql, values);
        return command.ExecuteNonQuery();
    }

    /// <summary>Runs an insertion and returns the new row's id.</summary>
    public long Insert(string sql, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        Run(sql, values);
        return One("SELECT last_insert_rowid()", r => r.GetInt64(0));
    }

    /// <summary>All rows.</summary>
    public List<T> All<T>(string sql, Func<SqliteDataReader, T> read, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        using SqliteCommand command = Command(sql, values);
        using SqliteDataReader reader = command.ExecuteReader();
        var rows = new List<T>();
        while (reader.Read()) rows.Add(read(reader));
        return rows;
    }

    /// <summary>The first row, or the default when there is none.</summary>
    public T? One<T>(string sql, Func<SqliteDataReader, T> read, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        using SqliteCommand command = Command(sql, values);
        using SqliteDataReader reader = command.ExecuteReader();
        return reader.Read() ? read(reader) : default;
    }

    private SqliteCommand Command(string sql, ReadOnlySpan<(string Name, object? Value)> values)
    {
        SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        command.Transaction = transaction;
        foreach ((string name, object? value) in values) command.Parameters.AddWithValue(name, value ?? DBNull.Value);
        return command;
    }
}
