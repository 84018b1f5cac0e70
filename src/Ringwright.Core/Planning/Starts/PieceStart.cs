using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Profiles;

namespace Ringwright.Core.Planning;

/// <summary>A kind of piece to begin with: its usual sizes, and a piece of it. Sizes are common practice, no source.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Name">Its name, as commands take it.</param>
/// <param name="Diameter">Usual largest diameter.</param>
/// <param name="Height">Usual height.</param>
/// <param name="Heights">Finished ring heights that usual boards give, mm.</param>
/// <param name="Segments">Usual segments in every ring; null when larger rings get more.</param>
public sealed record PieceStart(PieceKind Kind, string Name, Length Diameter, Length Height, ImmutableArray<double> Heights, int? Segments = null)
{
    /// <summary>The kinds that have a shape.</summary>
    public static ImmutableArray<PieceStart> All { get; } =
    [
        new(PieceKind.Bowl, "bowl", Mm(180), Mm(80), [18]),
        new(PieceKind.Vase, "vase", Mm(120), Mm(220), [18]),
        new(PieceKind.Platter, "platter", Mm(260), Mm(32), [18, 12]),
        new(PieceKind.Box, "box", Mm(80), Mm(70), [18]),
        new(PieceKind.Spindle, "spindle", Mm(40), Mm(150), [20], 12),
        new(PieceKind.PenBarrel, "pen-barrel", Mm(13), Mm(57), [12], 12),
    ];

    /// <summary>The request for its rings.</summary>
    /// <exception cref="BadInputException">There is no starting shape of these sizes.</exception>
    public StackRequest Request(Length diameter, Length height, IEnumerable<string> woods) => new()
    {
        Shape = StartingShapes.Of(Kind, diameter, height),
        Heights = Heights,
        Segments = Segments,
        Woods = [.. woods],
    };

    /// <summary>A piece with the rings that are found for <paramref name="request"/>.</summary>
    /// <exception cref="BadInputException">The request cannot be met.</exception>
    public Piece Make(string name, LengthUnit unit, StackRequest request, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(request);
        return new() { Name = name, Units = unit, Kind = Kind, Shape = request.Shape, Rings = StackFinder.Find(request, shop).Rings };
    }

    private static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);
}
