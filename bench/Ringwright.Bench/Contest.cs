using System.Diagnostics;
using System.Globalization;

namespace Ringwright.Bench;

/// <summary>One way to do the job.</summary>
/// <param name="Name">What is run.</param>
/// <param name="Ms">Runs it once and gives its wall time, ms; null when it cannot be run on this machine.</param>
/// <param name="Note">A remark for the table.</param>
internal sealed record Way(string Name, Func<double?> Ms, string Note = "")
{
    /// <summary>Promised: at most this many ms.</summary>
    public double? MostMs { get; init; }

    /// <summary>Promised: at least this many times the first way's time.</summary>
    public double? LeastRatio { get; init; }

    internal static Way Of(string name, Action work, string note = "") => new(name, () => Stopclock.Once(work), note);

    /// <summary>Work too short for one reading of the clock: the mean over <paramref name="times"/> runs.</summary>
    internal static Way Short(string name, int times, Action work, string note = "") => new(name, () => Stopclock.Mean(times, work), note);

    /// <summary>The remark, and the promises with whether they were kept.</summary>
    internal string Remark(double? ms, double? ratio)
    {
        List<string> parts = Note.Length == 0 ? [] : [Note];
        if (MostMs is double most) parts.Add(string.Create(CultureInfo.InvariantCulture, $"mark: under {most} ms, {Verdict(ms < most)}"));
        if (LeastRatio is double least) parts.Add(string.Create(CultureInfo.InvariantCulture, $"mark: at least {least:#,0.#}, {Verdict(ratio >= least)}"));
        return string.Join("; ", parts);
    }

    /// <summary>As the page counts it.</summary>
    internal static string Verdict(bool met) => met ? "met" : "missed";
}

/// <summary>
/// Runs several ways in turn, round after round, so that whatever else the machine does meets all of them alike, and
/// writes a Markdown table: median of the ratios to the first way within a round, and times for orientation, the median
/// and the fastest. A promised time is held against the fastest, which a busy machine spoils least.
/// </summary>
internal static class Contest
{
    // The first rounds let the compiler reach its last tier, which it puts off while it has new methods to compile.
    private const int WarmUpRounds = 3;
    private const int WarmUpMs = 2000;
    private const int Rounds = 9;

    internal static void Write(TextWriter output, IReadOnlyList<Way> ways)
    {
        WarmUp(ways);
        double?[][] rounds = [.. Enumerable.Range(0, Rounds).Select(_ => Round(ways))];
        output.WriteLine("| way | ratio to the first | ms | fastest | note |");
        output.WriteLine("|---|---:|---:|---:|---|");
        for (int way = 0; way < ways.Count; way++)
        {
            double? ratio = Median(rounds.Select(round => round[way] / round[0]));
            double? ms = Median(rounds.Select(round => round[way]));
            double? fastest = rounds.Min(round => round[way]);
            output.WriteLine($"| {ways[way].Name} | {Text(ratio, "0.00")} | {Ms(ms)} | {Ms(fastest)} | {ways[way].Remark(fastest, ratio)} |");
        }
    }

    private static void WarmUp(IReadOnlyList<Way> ways)
    {
        var watch = Stopwatch.StartNew();
        for (int round = 0; round < WarmUpRounds || watch.ElapsedMilliseconds < WarmUpMs; round++) Round(ways);
    }

    private static double?[] Round(IReadOnlyList<Way> ways) => [.. ways.Select(way => way.Ms())];

    private static double? Median(IEnumerable<double?> values)
    {
        double[] known = [.. values.OfType<double>()];
        return known.Length == 0 ? null : Stopclock.MedianOf(known);
    }

    private static string Ms(double? ms) => Text(ms, ms < 10 ? "0.000" : "0.0");

    private static string Text(double? value, string format) => value?.ToString(format, CultureInfo.InvariantCulture) ?? "not run";
}
