using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;

namespace Ringwright.Web.Library;

/// <summary>An example piece.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Notes">What it shows.</param>
/// <param name="Json">Its file's text.</param>
public sealed record Example(string Name, string Notes, string Json);

/// <summary>The pieces that come with the app, read once.</summary>
public sealed class Examples
{
    private readonly Lazy<ImmutableArray<Example>> _all;

    /// <summary>Those in a folder, by name.</summary>
    public Examples(string folder) => _all = new(() => [.. Directory.EnumerateFiles(folder, "*.json").Select(File.ReadAllText).Where(IsPiece).Select(Read).OrderBy(e => e.Name, StringComparer.Ordinal)]);

    /// <summary>All of them.</summary>
    public ImmutableArray<Example> All => _all.Value;

    // A shop or a rack among them is no piece.
    private static bool IsPiece(string json) => json.Contains($"\"{Piece.FormatName}\"", StringComparison.Ordinal);

    private static Example Read(string json)
    {
        Piece piece = DocumentJson.ReadPiece(json);
        return new(piece.Name, piece.Notes ?? "", json);
    }
}
