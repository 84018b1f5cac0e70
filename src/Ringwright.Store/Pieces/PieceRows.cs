using Microsoft.Data.Sqlite;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Store.Sqlite;

namespace Ringwright.Store.Pieces;

/// <summary>
/// The rows of pieces and their versions, within a transaction. A piece is as its newest version says. Saving goes on in the
/// newest version when this opening of the file began it not long ago, and otherwise begins another.
/// </summary>
internal sealed class PieceRows(TimeProvider clock, StoreOptions options, string opening)
{
    /// <summary>The opening of versions that are never saved into again.</summary>
    public const string Closed = "";

    /// <summary>This opening of the file.</summary>
    public string Opening => opening;

    /// <summary>Adds a piece and its first version.</summary>
    public long Add(Session session, Piece piece, string? draft, string by)
    {
        string document = Written(piece);
        long now = clock.Stamp();
        PieceDigest digest = PieceDigest.Of(document);
        long id = session.Insert(
            "INSERT INTO piece (name, kind, woods, rings, words, created, changed) VALUES ($name, $kind, $woods, $rings, $words, $now, $now)",
            ("$name", piece.Name), ("$kind", digest.Kind), ("$woods", digest.Woods), ("$rings", piece.Rings.Length), ("$words", digest.Words), ("$now", now));
        session.Run("INSERT INTO piece_words (rowid, words) VALUES ($id, $words)", ("$id", id), ("$words", digest.Words));
        Begin(session, id, document, draft, by, now);
        return id;
    }

    /// <summary>The newest version.</summary>
    /// <exception cref="BadInputException">There is no such piece.</exception>
    public static Newest Newest(Session session, long id) => session.One(
        "SELECT v.id, v.begun, v.name, v.opening, v.document, d.content FROM version v LEFT JOIN draft d ON d.version = v.id WHERE v.piece = $id ORDER BY v.id DESC LIMIT 1",
        r => new Newest(r.GetInt64(0), r.GetInt64(1), r.TextOrNull(2), r.GetString(3), r.GetString(4), r.TextOrNull(5)), ("$id", id)) ?? throw None(id);

    /// <summary>Saves a document, and what was typed beside it.</summary>
    public void Save(Session session, long id, Piece piece, string? draft)
    {
        Newest newest = Newest(session, id);
        string document = Written(piece);
        bool same = document == newest.Document;
        if (same && draft == newest.Draft) return;
        long now = clock.Stamp();
        // A draft is not overwritten by nothing: it stays with its own version.
        if (GoesOn(newest, now) && (draft is not null || newest.Draft is null)) GoOn(session, newest.Id, same ? null : document, draft, now);
        else Begin(session, id, document, draft, opening, now);
        if (same) Touch(session, id, now);
        else Describe(session, id, piece, document, now);
    }

    /// <summary>Saves only what was typed.</summary>
    public void SaveDraft(Session session, long id, string draft)
    {
        Newest newest = Newest(session, id);
        if (draft == newest.Draft) return;
        long now = clock.Stamp();
        if (GoesOn(newest, now)) GoOn(session, newest.Id, null, draft, now);
        else Begin(session, id, newest.Document, draft, opening, now);
        Touch(session, id, now);
    }

    /// <summary>Puts a state in place as a version of its own, which later saving leaves as it is.</summary>
    public void Put(Session session, long id, Piece piece, string document, string? draft)
    {
        long now = clock.Stamp();
        Begin(session, id, document, draft, Closed, now);
        Describe(session, id, piece, document, now);
    }

    /// <summary>The piece as JSON text.</summary>
    /// <exception cref="BadInputException">It cannot be.</exception>
    public static string Written(Piece piece)
    {
        PieceCheck.Check(piece);
        return DocumentJson.Write(piece);
    }

    public static BadInputException None(long id) => new($"piece {id}", "there is none with this number", "the list of pieces shows the numbers");

    public static PieceVersion ReadVersion(SqliteDataReader row) => new(row.GetInt64(0), row.Time(1), row.TextOrNull(2));

    private bool GoesOn(Newest newest, long now) =>
        newest.Opening == opening && newest.Name is null && now >= newest.Begun && now - newest.Begun < options.VersionSpacing.TotalMilliseconds;

    private static void GoOn(Session session, long version, string? document, string? draft, long now)
    {
        if (document is null) session.Run("UPDATE version SET saved = $now WHERE id = $id", ("$now", now), ("$id", version));
        else session.Run("UPDATE version SET saved = $now, document = $document WHERE id = $id", ("$now", now), ("$document", document), ("$id", version));
        SetDraft(session, version, draft);
    }

    private void Begin(Session session, long id, string document, string? draft, string by, long now)
    {
        long version = session.Insert(
            "INSERT INTO version (piece, begun, saved, opening, document) VALUES ($piece, $now, $now, $by, $document)",
            ("$piece", id), ("$now", now), ("$by", by), ("$document", document));
        SetDraft(session, version, draft);
        List<PieceVersion> all = session.All("SELECT id, saved, name FROM version WHERE piece = $piece", ReadVersion, ("$piece", id));
        foreach (PieceVersion surplus in VersionThinning.Surplus(all, clock.GetUtcNow()))
            session.Run("DELETE FROM version WHERE id = $id", ("$id", surplus.Id));
    }

    private static void SetDraft(Session session, long version, string? draft)
    {
        if (draft is null) return;
        session.Run("INSERT INTO draft (version, content) VALUES ($version, $draft) ON CONFLICT (version) DO UPDATE SET content = $draft", ("$version", version), ("$draft", draft));
    }

    private static void Touch(Session session, long id, long now) => session.Run("UPDATE piece SET changed = $now WHERE id = $id", ("$now", now), ("$id", id));

    private static void Describe(Session session, long id, Piece piece, string document, long now)
    {
        PieceDigest digest = PieceDigest.Of(document);
        bool newWords = session.One("SELECT words FROM piece WHERE id = $id", r => r.GetString(0), ("$id", id)) != digest.Words;
        session.Run(
            "UPDATE piece SET name = $name, kind = $kind, woods = $woods, rings = $rings, words = $words, changed = $now WHERE id = $id",
            ("$name", piece.Name), ("$kind", digest.Kind), ("$woods", digest.Woods), ("$rings", piece.Rings.Length), ("$words", digest.Words), ("$now", now), ("$id", id));
        if (newWords) session.Run("UPDATE piece_words SET words = $words WHERE rowid = $id", ("$words", digest.Words), ("$id", id));
    }
}

/// <summary>The newest version of a piece.</summary>
internal sealed record Newest(long Id, long Begun, string? Name, string Opening, string Document, string? Draft);
