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

    /// <summary>The kinds that have a shape.</summary>
    public static IEnumerable<string> Names => PieceStart.All.Select(s => s.Name);

    /// <summary>The piece; null when <paramref name="kind"/> is none of <see cref="Names"/>.</summary>
    public static Piece? Of(string kind, NewCommand.Settings settings, LengthUnit unit, Shop shop)
    {
        if (PieceStart.All.FirstOrDefault(s => s.Name == kind) is not PieceStart usual) return null;
        Length Size(string option, string? text, Length otherwise) => text is null ? otherwise : TypedText.Length(option, text, unit, Lengths);
        Shape shape = StartingShapes.Of(usual.Kind, Size("--diameter", settings.Diameter, usual.Diameter), Size("--height", settings.Height, usual.Height));
        string heights = settings.Heights ?? string.Join(", ", usual.Heights.Select(h => Length.FromMillimetres(h).Written));
        StackRequest request = StackOptions.Request(shape, unit, heights, settings.Segments ?? usual.Segments, settings.RimEdge, null, TypedText.Woods(settings.Woods));
        return usual.Make(settings.Name ?? Path.GetFileNameWithoutExtension(settings.File), unit, request, shop);
    }
}
