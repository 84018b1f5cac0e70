using Microsoft.Data.Sqlite;

namespace Ringwright.Store.Tests;

/// <summary>A data file as a past version wrote it, from its text in the folder Past.</summary>
internal static class PastFile
{
    public static void Make(int version, string file)
    {
        using var connection = new SqliteConnection($"Data Source={file};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Past", $"version-{version}.sql"));
        command.ExecuteNonQuery();
    }
}
