using Ringwright.Store.Sqlite;

namespace Ringwright.Store;

/// <summary>Small settings by name: units, paper, print correction. Throws <see cref="StoreException"/> when the file cannot be read or written.</summary>
public sealed class Settings
{
    private readonly Database _database;

    internal Settings(Database database) => _database = database;

    /// <summary>A setting's value, or null; set it to null to forget it.</summary>
    /// <param name="name">The setting's name.</param>
    public string? this[string name]
    {
        get => _database.Read(s => s.One("SELECT value FROM setting WHERE name = $name", r => r.GetString(0), ("$name", name)));
        set => _database.Write(s => value is null
            ? s.Run("DELETE FROM setting WHERE name = $name", ("$name", name))
            : s.Run("INSERT INTO setting (name, value) VALUES ($name, $value) ON CONFLICT (name) DO UPDATE SET value = $value WHERE value <> $value", ("$name", name), ("$value", value)));
    }

    /// <summary>All settings.</summary>
    public IReadOnlyDictionary<string, string> All() => _database.Read(s => s.All("SELECT name, value FROM setting", r => KeyValuePair.Create(r.GetString(0), r.GetString(1)))).ToDictionary();
}
