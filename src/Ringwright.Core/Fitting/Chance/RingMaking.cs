namespace Ringwright.Core.Fitting;

/// <summary>Everything that decides how the angles of a ring's wedges scatter.</summary>
/// <param name="Runs">Number of wedges and how they share cuts.</param>
/// <param name="Cut">Error of one cut or sanded face.</param>
/// <param name="Setting">Error of setting the fences, common to all cuts of the ring; null when they are exact.</param>
/// <param name="GaugeLimit">
/// Largest error of a wedge's angle, radians, that a go/no-go check lets through; a wedge beyond it is refused and the
/// next one takes its place. Null when every wedge is used. Only the simulation covers this case.
/// </param>
public sealed record RingMaking(CutRuns Runs, CutError Cut, FenceSetting? Setting = null, double? GaugeLimit = null)
{
    /// <summary>Mean closing error E = 2 pi - sum of wedge angles, radians: minus two faces per wedge times the mean error.</summary>
    public double MeanClosingError => -2.0 * Runs.Wedges * Cut.Mean;

    /// <summary>
    /// Variance of the closing error, radians squared: (4 N - 2 runs) sigma^2 + N^2 (variance of a wedge from setting).
    /// Exact for any distribution of the cut error with that variance; a <see cref="GaugeLimit"/> is not counted in.
    /// </summary>
    public double ClosingVariance => Runs.VarianceFactor * Cut.Variance + SettingVariance;

    /// <summary>The share of <see cref="ClosingVariance"/> that comes from setting the fences, radians squared.</summary>
    public double SettingVariance => (double)Runs.Wedges * Runs.Wedges * (Setting?.WedgeVariance ?? 0);

    internal void Validate()
    {
        Runs.Validate();
        Cut.Validate();
        Setting?.Validate();
        if (GaugeLimit is { } limit)
            ChanceInput.Positive("limit of the wedge gauge", limit);
    }
}
