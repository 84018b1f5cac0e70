using System.Globalization;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Store;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Saving;

/// <summary>
/// The user's pieces and shop in the data folder, and which piece is on the bench. One app has the folder at a time; the shell
/// may use it beside it. May be used from several threads.
/// </summary>
public sealed class PieceShelf : IDisposable
{
    private const string BenchSetting = "bench.piece";
    private const int MostVersionsBack = 8;
    private readonly Lock _lock = new();
    private readonly string _path;
    private readonly Dictionary<Guid, long> _entries = [];
    private FileStream? _claim;
    private DataStore? _store;

    /// <summary>A shelf in a folder; <see cref="Claim"/> opens it.</summary>
    /// <param name="path">The data folder.</param>
    public PieceShelf(string path) => _path = path;

    /// <summary>What had to be done to open it, for the user to see; null when nothing unusual was.</summary>
    public string? Told => _store?.Told;

    /// <summary>Whether it is open.</summary>
    public bool IsOpen => _store is not null;

    /// <summary>The boards; null while it is not open.</summary>
    public BoardRack? Rack => _store?.Rack;

    /// <summary>The shops; null while it is not open.</summary>
    public ShopShelf? Shops => _store?.Shops;

    /// <summary>Small settings; null while it is not open.</summary>
    public Settings? Settings => _store?.Settings;

    /// <summary>Makes the folder, keeps other apps out of it and opens the data. Answers with a sentence when that cannot be.</summary>
    public string? Claim()
    {
        string claim = Path.Combine(_path, "lock");
        try
        {
            Directory.CreateDirectory(_path);
            _claim = new FileStream(claim, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            _store = DataStore.Open(_path, TimeProvider.System);
            return null;
        }
        catch (StoreException e)
        {
            return $"Your work is not saved. {e.Message} Save a copy of what you do.";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return File.Exists(claim)
                ? $"Another Ringwright is open on the folder {_path}; what you do here is not saved. Close one of the two, or save a copy."
                : $"The folder {_path} cannot be written, so your work is not saved. Save a copy, or start Ringwright with RINGWRIGHT_DATA naming a folder of yours.";
        }
    }

    /// <summary>Number of the shop in use; the first time, <paramref name="shop"/> becomes it. Null while nothing is saved.</summary>
    public long? ShopInUse(Shop shop) => _store is null ? null : _store.Shops.Current()?.Id ?? _store.Shops.Add(shop);

    /// <summary>What was on the bench last; null when nothing was. A piece that cannot be planned any more stays in the list.</summary>
    public Sheet? Load(out string? trouble)
    {
        trouble = Told;
        if (_store is null) return null;
        try
        {
            return long.TryParse(_store.Settings[BenchSetting], out long id) ? Open(id, CurrentShop()) : FromFiles();
        }
        catch (Exception e) when (e is BadInputException or StoreException)
        {
            trouble ??= $"What was on the bench last cannot be put on it ({e.Message.TrimEnd('.')}); it is kept among the pieces.";
            return null;
        }
    }

    /// <summary>Saves a sheet as its piece, and its shop.</summary>
    /// <exception cref="StoreException">The data cannot be written as things stand.</exception>
    public void Save(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        string draft = DraftJson.Write(sheet);
        // The app may be closing: what it closes is not written to any more.
        lock (_lock)
        {
            if (_store is null) return;
            // An example stays what it is, but the shop it is planned for is the user's.
            SaveShop(sheet.ShopEntry, sheet.Good.Shop);
            if (sheet.Borrowed) return;
            if (_entries.TryGetValue(sheet.Token, out long id)) _store.Pieces.Save(id, sheet.Good.Piece, draft);
            else _entries[sheet.Token] = id = _store.Pieces.Add(sheet.Good.Piece, draft);
            _store.Settings[BenchSetting] = id.ToString(CultureInfo.InvariantCulture);
        }
    }

    /// <summary>The pieces, the last changed first; those in which each word of the search stands.</summary>
    public IReadOnlyList<PieceEntry> List(string search = "") => _store?.Pieces.List(search) ?? [];

    /// <summary>The number of a sheet's piece; null before it was saved.</summary>
    public long? EntryOf(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        lock (_lock) return _entries.TryGetValue(sheet.Token, out long id) ? id : null;
    }

    /// <summary>A piece with all that was typed, for the bench of a shop.</summary>
    /// <exception cref="BadInputException">There is none with this number, or it cannot be planned in this shop.</exception>
    public Sheet Open(long id, Shop shop) => Put(id, _store!.Pieces.Read(id), shop);

    /// <summary>An earlier version of a piece; saving it goes on with the piece.</summary>
    /// <exception cref="BadInputException">There is none, or it cannot be planned in this shop.</exception>
    public Sheet Open(long id, long version, Shop shop) => Put(id, _store!.History.Read(id, version), shop);

    /// <summary>A saved piece as it is, to look at.</summary>
    public Piece Read(long id) => _store!.Pieces.Read(id).Piece;

    /// <summary>The versions of a piece, newest first.</summary>
    public IReadOnlyList<PieceVersion> Versions(long id) => _store?.History.List(id) ?? [];

    /// <summary>Names the newest version, so that it is kept for good.</summary>
    public void Keep(long id, string name) => _store!.History.Keep(id, name);

    /// <summary>Adds a piece like another.</summary>
    public void Duplicate(long id) => _store!.Pieces.Duplicate(id);

    /// <summary>Takes a piece off the list.</summary>
    public void Remove(long id) => _store!.Pieces.Remove(id);

    /// <summary>Puts a removed piece back.</summary>
    public void PutBack(long id) => _store!.Pieces.PutBack(id);

    /// <summary>Pieces that were removed.</summary>
    public IReadOnlyList<PieceEntry> Removed() => _store?.Pieces.Removed() ?? [];

    /// <inheritdoc/>
    public void Dispose()
    {
        lock (_lock)
        {
            _store?.Dispose();
            _store = null;
            _claim?.Dispose();
        }
    }

    private Sheet Put(long id, PieceState state, Shop shop)
    {
        Sheet sheet = state.Draft is string draft ? DraftJson.Read(draft) : WithMarks(id, Sheet.Of(state.Piece, shop));
        if (DocumentJson.Write(sheet.Good.Shop) != DocumentJson.Write(shop)) sheet = sheet.With(new(sheet.Good.Piece, shop));
        lock (_lock)
        {
            Guid token = _entries.Where(e => e.Value == id).Select(e => e.Key).FirstOrDefault(sheet.Token);
            _entries[token] = id;
            return sheet with { Token = token };
        }
    }

    // Renamed in the list or saved from the shell, a piece has no draft; the version before still knows which ring is which.
    private Sheet WithMarks(long id, Sheet sheet)
    {
        foreach (PieceVersion version in _store!.History.List(id).Take(MostVersionsBack))
        {
            if (_store.History.Read(id, version.Id).Draft is not string draft) continue;
            Sheet known = DraftJson.Read(draft);
            return sheet with { RingMarks = RingIdentity.Follow(known.Good.Piece.Rings, known.RingMarks, sheet.Good.Piece.Rings) };
        }

        return sheet;
    }

    // A step back may lead to a shop that was in use before; it is then in use again.
    private void SaveShop(long? entry, Shop shop)
    {
        long id = entry ?? _store!.Shops.Current()?.Id ?? _store.Shops.Add(shop);
        _store!.Shops.Save(id, shop);
        if (_store.Shops.Current()?.Id == id) return;
        _store.Shops.PutBack(id);
        _store.Shops.Use(id);
    }

    /// <summary>The shop in use; the one to start with before there is any.</summary>
    public Shop CurrentShop() => _store?.Shops.Current() is ShopEntry current ? _store.Shops.Read(current.Id) : Shop.Starting;

    // As it was saved before there was a list of pieces; the files are left as they are.
    private Sheet? FromFiles()
    {
        string draft = Path.Combine(_path, "draft.json");
        return File.Exists(draft) ? DraftJson.Read(File.ReadAllText(draft)) : null;
    }
}
