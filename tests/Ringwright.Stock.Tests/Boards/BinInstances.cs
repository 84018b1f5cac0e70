using System.Globalization;
using Ringwright.Stock.Boards;

namespace Ringwright.Stock.Tests.Boards;

/// <summary>Instances of the literature; sources stand in each line of bin-instances.csv.</summary>
internal static class BinInstances
{
    public sealed record Instance(string Name, int? Optimum, bool IsCertified, StripProblem Problem);

    public static IReadOnlyList<Instance> All { get; } =
    [
        .. File.ReadLines(Path.Combine(SolutionFolder.Path, "tests/Ringwright.Stock.Tests/Boards/bin-instances.csv")).Where(l => !l.StartsWith('#')).Skip(1).Select(Read),
    ];

    private static Instance Read(string line)
    {
        string[] fields = line.Split(',');
        int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
        StripItem[] items = [.. fields[4].Split(' ').Select(s => s.Split('x')).Select(s => new StripItem(Number(s[0]), Number(s[1])))];
        return new(fields[0], fields[1].Length == 0 ? null : Number(fields[1]), fields[2] == "certified", new([.. items], [new(Number(fields[3]), 1)]));
    }
}
