using System.Globalization;

namespace Ringwright.Fuzz.Running;

/// <summary>Something wrong that was found.</summary>
/// <param name="Signature">Tells it from others.</param>
/// <param name="Case">The number of the case.</param>
/// <param name="What">What happened.</param>
/// <param name="Input">The simplest input found that shows it.</param>
public sealed record Finding(string Signature, int Case, string What, string Input)
{
    /// <summary>How many cases showed it.</summary>
    public int Times { get; set; } = 1;
}

/// <summary>What a run did.</summary>
public sealed record FuzzReport(string Kind, int Seed, int Cases, int Taken, TimeSpan Time, int SlowestCase, TimeSpan Slowest, IReadOnlyList<Finding> Findings, IReadOnlyList<KeyValuePair<string, int>> Refusals)
{
    /// <summary>One line.</summary>
    public string Line => string.Create(
        CultureInfo.InvariantCulture,
        $"{Kind}: {Cases:#,0} cases (seed {Seed}), {Taken:#,0} taken, {Cases - Taken:#,0} refused in one sentence, {Findings.Count} findings, {Time.TotalSeconds:0} s, slowest {Slowest.TotalMilliseconds:0} ms of the processor (case {SlowestCase})");
}
