namespace Ringwright.Core.Boards;

/// <summary>What the pieces of a demand are called.</summary>
public enum StripPiece
{
    /// <summary>Wedges, sawn at the mitre to alternate sides.</summary>
    Wedge,

    /// <summary>Blanks that staves are sawn from, crosscut.</summary>
    StaveBlank,

    /// <summary>Strips for a laminated board, crosscut.</summary>
    LaminationStrip,

    /// <summary>Spacers between segments, crosscut.</summary>
    Spacer,

    /// <summary>Blanks that a solid layer is glued or sawn from, crosscut.</summary>
    LayerBlank,
}

/// <summary>
/// Pieces that come from strips of one wood, thickness and width, all with their grain along the strip. A strip gives n of them when
/// it is as long as what every strip loses (<see cref="BoardRules.StripLoss"/>), <see cref="Start"/> and n times <see cref="Pitch"/>.
/// Lengths in mm.
/// </summary>
/// <param name="Ring">The ring they are for.</param>
/// <param name="Wood">Their wood, as the ring names it.</param>
/// <param name="Piece">What they are.</param>
/// <param name="Thickness">Thickness the strip is planed to.</param>
/// <param name="Width">Width the strip is ripped to.</param>
/// <param name="Needed">How many the ring needs.</param>
/// <param name="ToSaw">How many to saw, spares included.</param>
/// <param name="Start">Strip lost where they begin: of wedges the first angled cut and the slants, w · tan(a) + k / cos(a). Below 0 where the rest may be sawn too.</param>
/// <param name="Pitch">Strip that each takes, kerf included.</param>
public sealed record StripDemand(string Ring, string Wood, StripPiece Piece, double Thickness, double Width, int Needed, int ToSaw, double Start, double Pitch)
{
    /// <summary>Length of one crosscut piece; of wedges half way across, (Lo + Li)/2 as sawn.</summary>
    public required double MeanLength { get; init; }

    /// <summary>Strip that <paramref name="count"/> of them take, without what every strip loses.</summary>
    public double LengthFor(int count) => count == 0 ? 0 : Start + (count * Pitch);

    /// <summary>How many come from <paramref name="length"/> mm of strip beyond what every strip loses. A hair (1e-9 mm) is forgiven.</summary>
    public int CountIn(double length) => Math.Max(0, (int)Math.Floor((length - Start + 1e-9) / Pitch));

    /// <summary>Whether both come from strips ripped and planed alike, to a hundredth of a millimetre.</summary>
    public bool SharesStrip(StripDemand other)
    {
        ArgumentNullException.ThrowIfNull(other);
        // The blank of a layer takes the rest that other strips must leave.
        if (Piece == StripPiece.LayerBlank || other.Piece == StripPiece.LayerBlank) return this == other;
        return Math.Abs(Width - other.Width) < 0.01 && Math.Abs(Thickness - other.Thickness) < 0.01 && string.Equals(Wood, other.Wood, StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>What <paramref name="count"/> of them are called: wedge or wedges.</summary>
    public string Called(int count) => Words(Piece, count == 1);

    private static string Words(StripPiece piece, bool one) => (piece, one) switch
    {
        (StripPiece.Wedge, true) => "wedge",
        (StripPiece.Wedge, false) => "wedges",
        (StripPiece.StaveBlank, true) => "stave blank",
        (StripPiece.StaveBlank, false) => "stave blanks",
        (StripPiece.LaminationStrip, true) => "strip for laminating",
        (StripPiece.LaminationStrip, false) => "strips for laminating",
        (StripPiece.Spacer, true) => "spacer",
        (StripPiece.Spacer, false) => "spacers",
        (_, true) => "blank for the layer",
        _ => "blanks for the layer",
    };
}
