using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Store.Pieces;
using Ringwright.Store.Sqlite;

namespace Ringwright.Store;

/// <summary>
/// The versions of each piece. Saving makes them by itself, <see cref="StoreOptions.VersionSpacing"/> apart, and
/// <see cref="VersionThinning"/> says which are kept. Throws as <see cref="PieceLibrary"/> does.
/// </summary>
public sealed class PieceHistory
{
    private readonly Database _database;
    private readonly PieceRows _rows;

    internal PieceHistory(Database database, PieceRows rows)
    {
        _database = database;
        _rows = rows;
    }

    /// <summary>The versions of a piece, the newest first: it is how the piece is now.</summary>
    public IReadOnlyList<PieceVersion> List(long id) => _database.Read(s =>
    {
        PieceRows.Newest(s, id);
        return s.All("SELECT id, saved, name FROM version WHERE piece = $id ORDER BY id DESC", PieceRows.ReadVersion, ("$id", id));
    });

    /// <summary>The piece as it was in a version.</summary>
    public PieceState Read(long id, long version) => _database.Read(s => Read(s, id, version));

    /// <summary>Names the state a piece is in, so that it is kept for good.</summary>
    public void Keep(long id, string name)
    {
        if (string.IsNullOrWhiteSpace(name)) throw new BadInputException("version", "its name is empty", "a name such as “before the foot” is needed");
        _database.Write(s => s.Run("UPDATE version SET name = $name WHERE id = $version", ("$name", name.Trim()), ("$version", PieceRows.Newest(s, id).Id)));
    }

    /// <summary>Takes a piece back to a version, with what was typed then. The state before stays as a version.</summary>
    public void Restore(long id, long version) => _database.Write(s =>
    {
        PieceState state = Read(s, id, version);
        _rows.Put(s, id, state.Piece, DocumentJson.Write(state.Piece), state.Draft);
    });

    private static PieceState Read(Session session, long id, long version)
    {
        PieceRows.Newest(session, id);
        return session.One(
            "SELECT v.id, v.document, d.content FROM version v LEFT JOIN draft d ON d.version = v.id WHERE v.piece = $id AND v.id = $version",
            r => new PieceState(r.GetInt64(0), DocumentJson.ReadPiece(r.GetString(1)), r.TextOrNull(2)), ("$id", id), ("$version", version))
            ?? throw new BadInputException($"piece {id}", $"it has no version {version}", "the list of its versions shows their numbers");
    }
}
