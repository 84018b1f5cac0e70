using Microsoft.Data.Sqlite;

namespace Ringwright.Store.Tests;

/// <summary>What a failing disk does to a file.</summary>
internal static class Damage
{
    /// <summary>Overwrites pages after the first, which holds the header.</summary>
    public static void Overwrite(string file)
    {
        using var stream = new FileStream(file, FileMode.Open);
        byte[] noise = new byte[4096];
        new Random(1).NextBytes(noise);
        for (long page = 1; page < stream.Length / 4096; page += 2)
        {
            stream.Position = page * 4096;
            stream.Write(noise);
        }
    }

    public static void OverwriteHeader(string file)
    {
        using var stream = new FileStream(file, FileMode.Open);
        stream.Write(new byte[4096]);
    }

    public static void CutOff(string file)
    {
        using var stream = new FileStream(file, FileMode.Open);
        stream.SetLength(stream.Length / 2 - 100);
    }

    /// <summary>Sets one byte; the log goes into the file before, or SQLite would read the page there.</summary>
    public static void SetByte(string file, int at, byte value)
    {
        using (var connection = new SqliteConnection($"Data Source={file};Pooling=False"))
        {
            connection.Open();
            using SqliteCommand command = connection.CreateCommand();
            command.CommandText = "PRAGMA wal_checkpoint(TRUNCATE)";
            command.ExecuteNonQuery();
        }

        using var stream = new FileStream(file, FileMode.Open);
        stream.Position = at;
        stream.WriteByte(value);
    }

    public static void Empty(string file) => File.WriteAllBytes(file, []);
}
