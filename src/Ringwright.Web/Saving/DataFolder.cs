using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Store.Files;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Saving;

/// <summary>
/// The user's data folder: <c>piece.json</c> and <c>shop.json</c> hold the last good values, <c>draft.json</c> everything as
/// typed. The draft alone is enough to go on; it is written first.
/// </summary>
internal sealed class DataFolder(string path) : IDisposable
{
    private const string DraftFile = "draft.json";
    private const string PieceFile = "piece.json";
    private const string ShopFile = "shop.json";
    private FileStream? _lock;

    /// <summary>Where it is.</summary>
    public string Path { get; } = path;

    /// <summary>Makes the folder and keeps other Ringwrights out of it. Answers with a sentence when that cannot be.</summary>
    public string? Claim()
    {
        try
        {
            Directory.CreateDirectory(Path);
            _lock = new FileStream(In("lock"), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return File.Exists(In("lock"))
                ? $"Another Ringwright is open on the folder {Path}; what you do here is not saved. Close one of the two, or save a copy."
                : $"The folder {Path} cannot be written, so your work is not saved. Save a copy, or start Ringwright with RINGWRIGHT_DATA naming a folder of yours.";
        }
    }

    /// <summary>What was saved last; null when nothing was. What cannot be read is set aside, not overwritten, and told in <paramref name="trouble"/>.</summary>
    public Sheet? Load(out string? trouble)
    {
        trouble = null;
        if (TryRead(() => DraftJson.Read(File.ReadAllText(In(DraftFile))), DraftFile, ref trouble) is Sheet draft) return draft;
        Shop shop = TryRead(() => DocumentJson.ReadShop(File.ReadAllText(In(ShopFile))), ShopFile, ref trouble) ?? Shop.Starting;
        return TryRead(() => Sheet.Of(DocumentJson.ReadPiece(File.ReadAllText(In(PieceFile))), shop), PieceFile, ref trouble);
    }

    /// <summary>Saves a sheet.</summary>
    /// <exception cref="IOException">The disk refuses.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public void Save(Sheet sheet)
    {
        SafeFile.Write(In(DraftFile), DraftJson.Write(sheet));
        SafeFile.Write(In(PieceFile), DocumentJson.Write(sheet.Good.Piece));
        SafeFile.Write(In(ShopFile), DocumentJson.Write(sheet.Good.Shop));
    }

    /// <inheritdoc/>
    public void Dispose() => _lock?.Dispose();

    private string In(string file) => System.IO.Path.Combine(Path, file);

    private T? TryRead<T>(Func<T> read, string file, ref string? trouble)
        where T : class
    {
        try
        {
            return File.Exists(In(file)) ? read() : null;
        }
        catch (BadInputException e)
        {
            string kept = SetAside(file);
            trouble ??= $"The saved {file} cannot be used ({e.Message.TrimEnd('.')}); it was kept as {kept}.";
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            trouble ??= $"The saved {file} cannot be opened; it was left as it is.";
            return null;
        }
    }

    private string SetAside(string file)
    {
        string name = System.IO.Path.GetFileNameWithoutExtension(file);
        string kept = Enumerable.Range(1, int.MaxValue).Select(i => $"{name}-unread-{i}.json").First(k => !File.Exists(In(k)));
        File.Move(In(file), In(kept));
        return kept;
    }
}
