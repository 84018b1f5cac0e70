namespace Ringwright.Core.Planning;

/// <summary>
/// The steps (difference of radius between the two faces) that a cut between two neighbours in a board may have, mm, and the
/// tilts they mean. Empty when <see cref="Least"/> is above <see cref="Most"/>.
/// </summary>
/// <param name="Thickness">Thickness of the board, T.</param>
/// <param name="Least">Least step.</param>
/// <param name="Most">Most step; below 0 when even an upright cut has no room.</param>
public readonly record struct TiltRange(double Thickness, double Least, double Most)
{
    /// <summary>Most tilt of a saw's table, radians. Common practice, no source: tables tilt to 45°.</summary>
    public const double TableTilt = Math.PI / 4;

    private const double Hair = 1e-9; // mm

    /// <summary>Least tilt, radians.</summary>
    public double LeastTilt => Math.Atan(Least / Thickness);

    /// <summary>Most tilt, radians.</summary>
    public double MostTilt => Math.Atan(Most / Thickness);

    /// <summary>Whether no tilt will do.</summary>
    public bool IsEmpty => Least > Most + Hair;

    /// <summary>The range of the cut between two rings, or inside the last one.</summary>
    /// <param name="outer">The ring outside the cut.</param>
    /// <param name="inner">The ring inside the cut; null for the middle that is left.</param>
    /// <param name="thickness">Thickness of the board, mm.</param>
    /// <param name="kerf">Kerf, normal to the blade, less than the thickness, mm.</param>
    internal static TiltRange Of(WantedFaces outer, WantedFaces? inner, double thickness, double kerf)
    {
        double wide = inner?.OuterWide ?? 0, narrow = inner?.OuterNarrow ?? 0;
        double least = inner is null ? 0 : LeastStep(wide - outer.InnerNarrow, thickness, kerf);
        double most = new[]
        {
            thickness * Math.Tan(TableTilt),
            WhereKerfIs(outer.InnerNarrow - narrow, thickness, kerf),
            WhereKerfIs(outer.InnerWide - wide, thickness, kerf),
            MostStep(outer.InnerWide - narrow, thickness, kerf),
        }.Min();
        return new(thickness, least, most);
    }

    // S − k·sqrt(1 + S²/T²) ≥ d: the wide face of the inner ring must clear the narrow face of the outer one, and the slot.
    private static double LeastStep(double d, double t, double k) => Math.Max(0, (d + (k * Root(d, t, k))) / (1 - (k * k / (t * t))));

    // S + k·sqrt(1 + S²/T²) ≤ x
    private static double MostStep(double x, double t, double k) => x < k ? -1 : (x - (k * Root(x, t, k))) / (1 - (k * k / (t * t)));

    // k·sqrt(1 + S²/T²) ≤ x
    private static double WhereKerfIs(double x, double t, double k) => x < k ? -1 : t * Math.Sqrt((x * x / (k * k)) - 1);

    private static double Root(double d, double t, double k) => Math.Sqrt(1 + (((d * d) - (k * k)) / (t * t)));
}
