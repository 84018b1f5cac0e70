using System.Globalization;

namespace Ringwright.Bench;

/// <summary>How the cost of a job grows with its size: a table, and the power fitted to it.</summary>
internal static class Growth
{
    private const int Runs = 7;

    /// <summary>Measures each size, the fastest of several runs, and writes table and power.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="what">What is counted, such as "segments".</param>
    /// <param name="sizes">At least three sizes.</param>
    /// <param name="job">Prepares the job of a size; what it returns is timed.</param>
    /// <returns>The sizes with their ms.</returns>
    internal static IReadOnlyList<(double Size, double Ms)> Write(TextWriter output, string what, IReadOnlyList<int> sizes, Func<int, Action> job)
    {
        List<(double Size, double Ms)> seen = [.. sizes.Select(size => ((double)size, Fastest(job(size))))];
        output.WriteLine($"| {what} | ms (fastest) |");
        output.WriteLine("|---:|---:|");
        foreach ((double size, double ms) in seen) output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {size:N0} | {ms:0.###} |"));
        output.WriteLine();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Time grows with the power {Exponent(seen):0.00} of the {what}."));
        return seen;
    }

    /// <summary>The power of <c>X</c> that <c>Y</c> grows with: slope of the least-squares line through the logarithms.</summary>
    internal static double Exponent(IEnumerable<(double X, double Y)> points)
    {
        (double[] x, double[] y) = ([.. points.Select(p => Math.Log(p.X))], [.. points.Select(p => Math.Log(p.Y))]);
        return MathNet.Numerics.Fit.Line(x, y).B;
    }

    // The first run lets the compiler see the job; a short one is repeated until the clock can read it.
    private static double Fastest(Action work)
    {
        double first = Stopclock.Once(work);
        int times = first < 1 ? 20 : 1;
        return Enumerable.Range(0, Runs).Min(_ => Stopclock.Mean(times, work));
    }
}
