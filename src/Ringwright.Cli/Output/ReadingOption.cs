using System.Globalization;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;

namespace Ringwright.Cli.Output;

/// <summary>What is seen on a dry ring, as <c>--read</c> tells it.</summary>
internal static class ReadingOption
{
    public const string Name = "--read";

    /// <summary>Every reading; bare lengths are in the given unit.</summary>
    public static FitObservation[] Read(IEnumerable<string> texts, LengthUnit unit) =>
        [.. texts.Select((text, i) => ReadingText.Read(text, string.Create(CultureInfo.InvariantCulture, $"{Name}, reading {i + 1}"), unit))];
}
