using Microsoft.Data.Sqlite;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Store.Sqlite;

namespace Ringwright.Store;

/// <summary>The user's shops, one of which is in use. Throws as <see cref="PieceLibrary"/> does.</summary>
public sealed class ShopShelf
{
    private const string Columns = "SELECT id, name, current, changed, removed FROM shop ";
    private readonly Database _database;
    private readonly TimeProvider _clock;

    internal ShopShelf(Database database, TimeProvider clock)
    {
        _database = database;
        _clock = clock;
    }

    /// <summary>The shops by name.</summary>
    public IReadOnlyList<ShopEntry> List() => _database.Read(s => s.All(Columns + "WHERE removed IS NULL ORDER BY name, id", Entry));

    /// <summary>The shops that were removed and can be put back, the last removed first.</summary>
    public IReadOnlyList<ShopEntry> Removed() => _database.Read(s => s.All(Columns + "WHERE removed IS NOT NULL ORDER BY removed DESC, id DESC", Entry));

    /// <summary>The shop in use; null before there is any.</summary>
    public ShopEntry? Current() => _database.Read(s => s.One(Columns + "WHERE current = 1", Entry));

    /// <summary>A shop.</summary>
    public Shop Read(long id) => _database.Read(s =>
    {
        Find(s, id);
        return DocumentJson.ReadShop(s.One("SELECT document FROM shop WHERE id = $id", r => r.GetString(0), ("$id", id))!);
    });

    /// <summary>Adds a shop and returns its number. The first one is in use at once.</summary>
    public long Add(Shop shop) => _database.Write(s =>
    {
        string document = Written(shop);
        bool first = s.One("SELECT count(*) FROM shop WHERE current = 1", r => r.GetInt64(0)) == 0;
        return s.Insert(
            "INSERT INTO shop (name, document, created, changed, current) VALUES ($name, $document, $now, $now, $current)",
            ("$name", shop.Name), ("$document", document), ("$now", _clock.Stamp()), ("$current", first ? 1 : null));
    });

    /// <summary>Saves a shop.</summary>
    public void Save(long id, Shop shop) => _database.Write(s =>
    {
        string document = Written(shop);
        Find(s, id);
        s.Run(
            "UPDATE shop SET name = $name, document = $document, changed = $now WHERE id = $id AND document <> $document",
            ("$name", shop.Name), ("$document", document), ("$now", _clock.Stamp()), ("$id", id));
    });

    /// <summary>Takes a shop into use.</summary>
    public void Use(long id) => _database.Write(s =>
    {
        if (Find(s, id).Removed is not null) throw new BadInputException($"shop {id}", "it was removed", "put it back first");
        s.Run("UPDATE shop SET current = NULL WHERE current = 1");
        s.Run("UPDATE shop SET current = 1 WHERE id = $id", ("$id", id));
    });

    /// <summary>Takes a shop off the list. <see cref="PutBack"/> undoes it.</summary>
    public void Remove(long id) => _database.Write(s =>
    {
        if (Find(s, id).IsCurrent) throw new BadInputException($"shop {id}", "it is in use", "take another shop into use first");
        s.Run("UPDATE shop SET removed = $now WHERE id = $id AND removed IS NULL", ("$now", _clock.Stamp()), ("$id", id));
    });

    /// <summary>Puts a removed shop back on the list.</summary>
    public void PutBack(long id) => _database.Write(s =>
    {
        Find(s, id);
        s.Run("UPDATE shop SET removed = NULL WHERE id = $id", ("$id", id));
    });

    private static string Written(Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        ShopCheck.Check(shop);
        return DocumentJson.Write(shop);
    }

    private static ShopEntry Find(Session session, long id) => session.One(Columns + "WHERE id = $id", Entry, ("$id", id))
        ?? throw new BadInputException($"shop {id}", "there is none with this number", "the list of shops shows the numbers");

    private static ShopEntry Entry(SqliteDataReader row) => new(row.GetInt64(0), row.GetString(1), !row.IsDBNull(2), row.Time(3), row.TimeOrNull(4));
}
