using System.Text.RegularExpressions;

namespace Ringwright.Web.Bench;

/// <summary>A printed value taken apart for large print: what is read from a metre away, and the small print around it.</summary>
/// <param name="About">"≈ " when the fraction is not exact, otherwise empty.</param>
/// <param name="Figure">The number.</param>
/// <param name="Unit">Its unit, or empty.</param>
/// <param name="Note">The exact decimals beside a fraction, or empty.</param>
public sealed partial record BigValue(string About, string Figure, string Unit, string Note)
{
    /// <summary>Takes <paramref name="printed"/> apart.</summary>
    public static BigValue Of(string printed)
    {
        ArgumentNullException.ThrowIfNull(printed);
        Match match = Parts().Match(printed);
        return match.Success
            ? new(match.Groups["about"].Value, match.Groups["figure"].Value, match.Groups["unit"].Value, match.Groups["note"].Value)
            : new("", printed, "", "");
    }

    [GeneratedRegex(@"^(?<about>≈ )?(?<figure>.*?\S)(?: (?<unit>mm²|mm|in²|in|%))?(?: \((?<note>.*)\))?$")]
    private static partial Regex Parts();
}
