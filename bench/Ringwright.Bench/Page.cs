using System.Globalization;
using System.Runtime.InteropServices;
using System.Text.RegularExpressions;

namespace Ringwright.Bench;

/// <summary>Benchmarks as Markdown, and the page that holds all of them.</summary>
internal static partial class Page
{
    private const string Command = "dotnet run -c Release --project bench/Ringwright.Bench -- page docs/performance.md";

    /// <summary>The whole page: what was promised and kept, then every benchmark.</summary>
    internal static void Write(TextWriter output)
    {
        using StringWriter measured = new() { NewLine = "\n" };
        Write(measured, Benches.All);
        string text = measured.ToString();
        int met = Met().Count(text), missed = Missed().Count(text);
        output.WriteLine("# How fast it is");
        output.WriteLine();
        output.WriteLine($"Written by `{Command}`. Each job runs beside its peers, in turn, round after round in one run: read the ratios, for times belong to one machine and what else it did. *Mark* is what was promised. The power says how time grows: 1 means twice the size takes twice as long.");
        output.WriteLine();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Measured with .NET {Environment.Version} on {Environment.ProcessorCount} cores, {RuntimeInformation.ProcessArchitecture}. Marks met: {met}; missed: {missed}."));
        output.WriteLine();
        output.Write(text);
        output.WriteLine("The viewer and the page in the browser are measured beside the running app: `node bench/viewer/run.mjs ADDRESS`.");
    }

    /// <summary>Runs benchmarks one after the other.</summary>
    internal static void Write(TextWriter output, IReadOnlyList<IBench> benches)
    {
        foreach (IBench bench in benches)
        {
            Console.Error.WriteLine($"{bench.Name} …");
            output.WriteLine($"## {bench.Name}: {bench.Title}");
            output.WriteLine();
            bench.Run(output);
            output.WriteLine();
        }
    }

    [GeneratedRegex(@"\bmet\b(?! and)")]
    private static partial Regex Met();

    [GeneratedRegex(@"\bmissed\b")]
    private static partial Regex Missed();
}
