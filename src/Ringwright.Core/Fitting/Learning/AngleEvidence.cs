namespace Ringwright.Core.Fitting;

/// <summary>
/// All that measured angles say about the bias m and variance v of a cut: sums for readings y = x m + noise of
/// variance v f with known x and f, made independent first. Sums add, so the order of records cannot matter.
/// </summary>
/// <param name="Wedges">Wedges behind the readings.</param>
/// <param name="Readings">Independent readings; each teaches the scatter as much as one cut would.</param>
/// <param name="Information">Sum of x^2 / f: what the readings are worth for the bias, in cuts.</param>
/// <param name="Score">Sum of x y / f, radians.</param>
/// <param name="Square">Sum of y^2 / f, radians squared.</param>
public readonly record struct AngleEvidence(int Wedges, int Readings, double Information, double Score, double Square)
{
    /// <summary>Adds the evidence of other measurements.</summary>
    public static AngleEvidence operator +(AngleEvidence a, AngleEvidence b) => new(
        a.Wedges + b.Wedges,
        a.Readings + b.Readings,
        a.Information + b.Information,
        a.Score + b.Score,
        a.Square + b.Square);

    /// <summary>The evidence of one record; its fences were set once.</summary>
    /// <param name="record">Wedge errors and closing errors, radians.</param>
    /// <param name="fenceVarianceRatio">
    /// Variance of the mean error from setting the fences afresh over the variance of one cut, see <see cref="AnglePrior"/>.
    /// </param>
    internal static AngleEvidence Of(RunRecord record, double fenceVarianceRatio)
    {
        AngleEvidence sum = default;
        foreach (IReadOnlyList<double> run in record.WedgeErrors)
            sum += OfRun(run);
        foreach (RingClosure closure in record.Closures)
            sum += OfClosure(closure);
        return sum.WithCommonError(fenceVarianceRatio);
    }

    /// <summary>
    /// Wedges of a run share cuts: error i is e(i) + e(i+1), of mean 2 m, variance 2 v and covariance v with its
    /// neighbour (a moving average of order one). The innovations of that series are independent: u(1) = y(1),
    /// u(i) = y(i) - (i - 1)/i u(i - 1), of variance v (i + 1)/i (Cholesky factor of the tridiagonal matrix 1, 2, 1);
    /// the mean is carried through the same recursion.
    /// </summary>
    private static AngleEvidence OfRun(IReadOnlyList<double> errors)
    {
        AngleEvidence sum = default;
        double reading = 0;
        double slope = 0;
        for (int i = 1; i <= errors.Count; i++)
        {
            double carried = (i - 1.0) / i;
            reading = errors[i - 1] - carried * reading;
            slope = 2 - carried * slope;
            sum += OfReading(reading, slope, (i + 1.0) / i, wedges: 1);
        }

        return sum;
    }

    /// <summary>-E is the sum of the wedge errors: mean 2 N m, variance (4 N - 2 runs) v.</summary>
    private static AngleEvidence OfClosure(RingClosure closure) =>
        OfReading(-closure.ClosingError, 2.0 * closure.Runs.Wedges, closure.Runs.VarianceFactor, closure.Runs.Wedges);

    private static AngleEvidence OfReading(double y, double x, double f, int wedges) =>
        new(wedges, 1, x * x / f, x * y / f, y * y / f);

    /// <summary>
    /// An error of variance r v common to all readings of the record, integrated out (Sherman and Morrison's formula
    /// for V + r v x x'): with sums k, s, q the record keeps k/(1 + r k), s/(1 + r k), q - r s^2/(1 + r k).
    /// </summary>
    private AngleEvidence WithCommonError(double r)
    {
        double shrink = 1 + r * Information;
        return this with
        {
            Information = Information / shrink,
            Score = Score / shrink,
            Square = Square - r * Score * Score / shrink,
        };
    }
}
