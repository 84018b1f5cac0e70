using System.Globalization;

namespace Ringwright.Bench;

/// <summary>One way to do the job.</summary>
/// <param name="Name">What is run.</param>
/// <param name="Ms">Runs it once and gives its wall time, ms; null when it cannot be run on this machine.</param>
/// <param name="Note">A remark for the table.</param>
internal sealed record Way(string Name, Func<double?> Ms, string Note = "")
{
    internal static Way Of(string name, Action work, string note = "") => new(name, () => Stopclock.Once(work), note);
}

/// <summary>
/// Runs several ways in turn, round after round, so that whatever else the machine does meets all of them alike, and
/// writes a Markdown table: median of the ratios to the first way within a round, and median times for orientation.
/// </summary>
internal static class Contest
{
    // The first rounds let the compiler reach its last tier.
    private const int WarmUpRounds = 3;
    private const int Rounds = 9;

    internal static void Write(TextWriter output, IReadOnlyList<Way> ways)
    {
        double?[][] rounds = [.. Enumerable.Range(0, WarmUpRounds + Rounds).Select(_ => Round(ways)).Skip(WarmUpRounds)];
        output.WriteLine("| way | ratio to the first | ms | note |");
        output.WriteLine("|---|---:|---:|---|");
        for (int way = 0; way < ways.Count; way++)
        {
            string ratio = Median(rounds.Select(round => round[way] / round[0]), "0.00");
            string ms = Median(rounds.Select(round => round[way]), "0.0");
            output.WriteLine($"| {ways[way].Name} | {ratio} | {ms} | {ways[way].Note} |");
        }
    }

    private static double?[] Round(IReadOnlyList<Way> ways) => [.. ways.Select(way => way.Ms())];

    private static string Median(IEnumerable<double?> values, string format)
    {
        double[] known = [.. values.OfType<double>()];
        return known.Length == 0 ? "not run" : Stopclock.MedianOf(known).ToString(format, CultureInfo.InvariantCulture);
    }
}
