namespace Ringwright.Core.Timber;

/// <summary>Change of size with moisture. Along the grain it is taken as zero (0.1 to 0.2 percent from green to oven-dry).</summary>
public static class Movement
{
    /// <summary>Least moisture, percent, at which the coefficients C_R and C_T hold.</summary>
    public const double LeastForCoefficient = 6;

    /// <summary>Most moisture, percent, at which the coefficients C_R and C_T hold.</summary>
    public const double MostForCoefficient = 14;

    /// <summary>Moisture, percent, above which wood does not change its size: the fibres are saturated.</summary>
    public const double FibreSaturation = 30;

    /// <summary>ΔD = D·C·(MF − MI), in the unit of <paramref name="size"/>; for 6 to 14 percent. Wood Handbook FPL-GTR-190, eq. 13-2.</summary>
    public static double ByCoefficient(double size, double coefficient, double from, double to) => size * coefficient * (to - from);

    /// <summary>
    /// ΔD = D·(MF − MI)/(30/S − 30 + MI), in the unit of <paramref name="size"/>; neither moisture above 30 percent. Wood Handbook
    /// FPL-GTR-190, eq. 13-3.
    /// </summary>
    /// <param name="size">The size at moisture <paramref name="from"/>.</param>
    /// <param name="shrinkage">Shrinkage from green to oven-dry as a share.</param>
    /// <param name="from">Moisture before, percent.</param>
    /// <param name="to">Moisture after, percent.</param>
    public static double ByShrinkage(double size, double shrinkage, double from, double to) => size * (to - from) / ((30 / shrinkage) - 30 + from);

    /// <summary>
    /// Change for one percent of moisture as a share of the size: the coefficient within 6 to 14 percent; outside, the larger of it
    /// and the one that follows from the shrinkage, so that a wider range never seems to move less.
    /// </summary>
    /// <param name="change">C_R or C_T.</param>
    /// <param name="shrinkage">Shrinkage in the same direction as a share.</param>
    /// <param name="from">Moisture before, percent.</param>
    /// <param name="to">Moisture after, percent.</param>
    public static double PerPercent(double change, double shrinkage, double from, double to) => WithinCoefficient(from) && WithinCoefficient(to)
        ? change
        : Math.Max(change, 1 / ((30 / shrinkage) - 30 + Math.Min(from, FibreSaturation)));

    /// <summary>Strain across a board's width when its wood goes from one moisture to another, percent; nothing happens above 30.</summary>
    public static double AcrossWidth(Species species, GrainCut cut, double from, double to)
    {
        ArgumentNullException.ThrowIfNull(species);
        return PerPercent(species.WidthChange(cut).Value, species.WidthShrinkage(cut).Value, from, to) * (Math.Min(to, FibreSaturation) - Math.Min(from, FibreSaturation));
    }

    private static bool WithinCoefficient(double moisture) => moisture is >= LeastForCoefficient and <= MostForCoefficient;
}
