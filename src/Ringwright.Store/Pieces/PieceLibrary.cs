using Microsoft.Data.Sqlite;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Store.Pieces;
using Ringwright.Store.Sqlite;

namespace Ringwright.Store;

/// <summary>
/// The user's pieces. Each change is on the disk when its method returns, or is refused whole. May be used from several threads.
/// Every method throws <see cref="StoreException"/> when the file cannot be read or written as things stand, and
/// <see cref="BadInputException"/> for a number that no piece has or a piece that cannot be.
/// </summary>
public sealed class PieceLibrary
{
    /// <summary>The largest picture kept for a piece, in bytes.</summary>
    public const int LargestThumbnail = 512 * 1024;

    private const string Columns = "SELECT id, name, kind, woods, rings, created, changed, removed FROM piece ";
    private readonly Database _database;
    private readonly TimeProvider _clock;
    private readonly PieceRows _rows;

    internal PieceLibrary(Database database, TimeProvider clock, PieceRows rows)
    {
        _database = database;
        _clock = clock;
        _rows = rows;
    }

    /// <summary>The pieces, the last changed first; with <paramref name="search"/>, those in which each of its words, or its beginning, stands in name, notes, kind, construction or woods.</summary>
    public IReadOnlyList<PieceEntry> List(string search = "") => _database.Read(s => PieceDigest.Query(search) is string query
        ? s.All(Columns + "WHERE removed IS NULL AND id IN (SELECT rowid FROM piece_words WHERE piece_words MATCH $query) ORDER BY changed DESC, id DESC", Entry, ("$query", query))
        : s.All(Columns + "WHERE removed IS NULL ORDER BY changed DESC, id DESC", Entry));

    /// <summary>The pieces that were removed and can be put back, the last removed first.</summary>
    public IReadOnlyList<PieceEntry> Removed() => _database.Read(s => s.All(Columns + "WHERE removed IS NOT NULL ORDER BY removed DESC, id DESC", Entry));

    /// <summary>One piece as the list shows it.</summary>
    public PieceEntry Find(long id) => _database.Read(s => Find(s, id));

    /// <summary>The piece as it was last saved.</summary>
    public PieceState Read(long id) => _database.Read(s =>
    {
        Newest newest = PieceRows.Newest(s, id);
        return new PieceState(newest.Id, DocumentJson.ReadPiece(newest.Document), newest.Draft);
    });

    /// <summary>Adds a piece and returns its number.</summary>
    /// <param name="piece">The document.</param>
    /// <param name="draft">What was typed, as the app writes it.</param>
    public long Add(Piece piece, string? draft = null) => _database.Write(s => _rows.Add(s, piece, draft, _rows.Opening));

    /// <summary>Saves a piece. The state before stays as a version, except what this opening of the file saved in the last minutes.</summary>
    /// <param name="id">Its number.</param>
    /// <param name="piece">The document.</param>
    /// <param name="draft">What was typed, as the app writes it; null when the document says all.</param>
    public void Save(long id, Piece piece, string? draft = null) => _database.Write(s => _rows.Save(s, id, piece, draft));

    /// <summary>Saves what was typed while it makes no piece yet; the document stays.</summary>
    public void SaveDraft(long id, string draft) => _database.Write(s => _rows.SaveDraft(s, id, draft));

    /// <summary>Gives a piece another name. What was typed and is not yet in the document stays with the version before.</summary>
    public void Rename(long id, string name) => _database.Write(s =>
    {
        Piece piece = DocumentJson.ReadPiece(PieceRows.Newest(s, id).Document) with { Name = name };
        _rows.Put(s, id, piece, PieceRows.Written(piece), null);
    });

    /// <summary>Adds a piece like another, with a history of its own, and returns its number.</summary>
    /// <param name="id">The piece to go from.</param>
    /// <param name="name">Its name; otherwise the first free one of "… (2)", "… (3)" and so on.</param>
    public long Duplicate(long id, string? name = null) => _database.Write(s =>
    {
        Piece piece = DocumentJson.ReadPiece(PieceRows.Newest(s, id).Document);
        long copy = _rows.Add(s, piece with { Name = name ?? FreeName(s, piece.Name) }, null, PieceRows.Closed);
        s.Run("INSERT INTO thumbnail (piece, image) SELECT $copy, image FROM thumbnail WHERE piece = $id", ("$copy", copy), ("$id", id));
        return copy;
    });

    /// <summary>Takes a piece off the list. <see cref="PutBack"/> undoes it.</summary>
    public void Remove(long id) => SetRemoved(id, _clock.Stamp());

    /// <summary>Puts a removed piece back on the list.</summary>
    public void PutBack(long id) => SetRemoved(id, null);

    /// <summary>The small picture of a piece; null when it has none.</summary>
    public byte[]? Thumbnail(long id) => _database.Read(s => s.One("SELECT image FROM thumbnail WHERE piece = $id", r => r.GetFieldValue<byte[]>(0), ("$id", id)));

    /// <summary>Keeps a small picture of a piece, in a format of the caller's choice.</summary>
    public void SetThumbnail(long id, byte[] image)
    {
        ArgumentNullException.ThrowIfNull(image);
        if (image.Length > LargestThumbnail) throw new BadInputException("picture", $"it has {image.Length / 1024} kB", $"at most {LargestThumbnail / 1024} kB are kept for a piece");
        _database.Write(s =>
        {
            Find(s, id);
            s.Run("INSERT INTO thumbnail (piece, image) VALUES ($id, $image) ON CONFLICT (piece) DO UPDATE SET image = $image", ("$id", id), ("$image", image));
        });
    }

    private static PieceEntry Find(Session session, long id) => session.One(Columns + "WHERE id = $id", Entry, ("$id", id)) ?? throw PieceRows.None(id);

    private void SetRemoved(long id, long? removed) => _database.Write(s =>
    {
        if (s.Run("UPDATE piece SET removed = $removed WHERE id = $id AND (removed IS NULL) <> ($removed IS NULL)", ("$removed", removed), ("$id", id)) == 0) Find(s, id);
    });

    private static string FreeName(Session session, string name)
    {
        HashSet<string> taken = [.. session.All("SELECT name FROM piece WHERE removed IS NULL", r => r.GetString(0))];
        return Enumerable.Range(2, int.MaxValue - 2).Select(i => $"{name} ({i})").First(n => !taken.Contains(n));
    }

    private static PieceEntry Entry(SqliteDataReader row) => new(
        row.GetInt64(0), row.GetString(1), row.TextOrNull(2), [.. row.GetString(3).Split('\n', StringSplitOptions.RemoveEmptyEntries)], row.GetInt32(4), row.Time(5), row.Time(6), row.TimeOrNull(7));
}
