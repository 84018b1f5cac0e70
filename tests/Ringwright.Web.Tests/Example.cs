using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Tests;

/// <summary>The example piece that the app starts with.</summary>
internal static class Example
{
    public static string Json { get; } = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "examples", "two-wood-disc.json"));

    public static Piece Piece => DocumentJson.ReadPiece(Json);

    public static Sheet Sheet => Sheet.Of(Piece, Shop.Starting);

    public static Workbench Bench => new(Sheet);

    /// <summary>The example pieces that come with the app, each with the name of its file.</summary>
    public static IEnumerable<string> Files => Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "examples"), "*.json").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal);

    /// <summary>A bench with one of them on it.</summary>
    public static Workbench BenchWith(string file) => new(Web.Bench.Sheet.Of(DocumentJson.ReadPiece(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "examples", file))), Shop.Starting));
}
