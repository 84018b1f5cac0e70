using Ringwright.Cli.Output;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Profiles;

namespace Ringwright.Cli.Commands;

/// <summary>A whole piece to start from: a shape of its kind and the stack found for it.</summary>
internal static class ShapeStart
{
    private const string Lengths = "lengths are written like 19 mm or 3/4 in";

    private static readonly Dictionary<string, (PieceKind Kind, string Diameter, string Height, string Heights)> Kinds = new()
    {
        ["bowl"] = (PieceKind.Bowl, "180 mm", "80 mm", "18 mm"),
        ["vase"] = (PieceKind.Vase, "120 mm", "220 mm", "18 mm"),
        ["platter"] = (PieceKind.Platter, "260 mm", "32 mm", "18 mm, 12 mm"),
        ["box"] = (PieceKind.Box, "80 mm", "70 mm", "18 mm"),
        ["spindle"] = (PieceKind.Spindle, "40 mm", "150 mm", "20 mm"),
        ["pen-barrel"] = (PieceKind.PenBarrel, "13 mm", "57 mm", "12 mm"),
    };

    /// <summary>The kinds that have a shape.</summary>
    public static IEnumerable<string> Names => Kinds.Keys;

    /// <summary>The piece; null when <paramref name="kind"/> is none of <see cref="Names"/>.</summary>
    public static Piece? Of(string kind, NewCommand.Settings settings, LengthUnit unit, Shop shop)
    {
        if (!Kinds.TryGetValue(kind, out var usual)) return null;
        Length diameter = TypedText.Length("--diameter", settings.Diameter ?? usual.Diameter, unit, Lengths);
        Length height = TypedText.Length("--height", settings.Height ?? usual.Height, unit, Lengths);
        Shape shape = StartingShapes.Of(usual.Kind, diameter, height);
        StackSuggestion stack = StackFinder.Find(
            StackOptions.Request(shape, unit, settings.Heights ?? usual.Heights, settings.Segments ?? (usual.Kind is PieceKind.PenBarrel or PieceKind.Spindle ? 12 : null), settings.RimEdge, null, TypedText.Woods(settings.Woods)), shop);
        return new() { Name = settings.Name ?? Path.GetFileNameWithoutExtension(settings.File), Units = unit, Kind = usual.Kind, Shape = shape, Rings = stack.Rings };
    }
}
