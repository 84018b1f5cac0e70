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

    public static Workbench Bench => new(Sheet, Json);
}
