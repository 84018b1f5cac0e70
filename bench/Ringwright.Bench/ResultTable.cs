using System.Globalization;

namespace Ringwright.Bench;

/// <summary>A Markdown table of times, each with its ratio to ours: above 1, that way takes that much longer.</summary>
internal sealed class ResultTable(string ours, double oursMs)
{
    private readonly List<(string Way, double? Ms, string Note)> _rows = [(ours, oursMs, "")];

    internal void Add(string way, double? ms, string note = "") => _rows.Add((way, ms, note));

    internal void Write(TextWriter output)
    {
        output.WriteLine("| way | ratio to ours | ms | note |");
        output.WriteLine("|---|---:|---:|---|");
        foreach ((string way, double? ms, string note) in _rows)
            output.WriteLine($"| {way} | {Number(ms / oursMs, "0.00")} | {Number(ms, "0.0")} | {note} |");
    }

    private static string Number(double? value, string format) => value?.ToString(format, CultureInfo.InvariantCulture) ?? "not run";
}
