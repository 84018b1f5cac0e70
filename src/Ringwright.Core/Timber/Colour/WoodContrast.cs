using System.Globalization;

namespace Ringwright.Core.Timber.Colour;

/// <summary>
/// How well two woods keep apart to the eye, by CIEDE2000 between their swatches. The swatches are rough, so the words are
/// too. Colours within one species commonly differ by 5 to 10 (from memory, no single source), so two woods that
/// are closer than that depend on the boards at hand.
/// </summary>
/// <param name="First">One wood's name.</param>
/// <param name="Second">The other's.</param>
/// <param name="Difference">ΔE00 between their swatches.</param>
public sealed record WoodContrast(string First, string Second, double Difference)
{
    /// <summary>Below this two woods are hard to tell apart: as much as boards of one species may differ.</summary>
    public const double LeastSafe = 10;

    /// <summary>From this on two woods are clearly apart.</summary>
    public const double Clear = 20;

    /// <summary>The contrast of two woods by name; an unknown name gets the colour <see cref="Wood.Named"/> gives it.</summary>
    public static WoodContrast ContrastOf(string first, string second) =>
        new(first, second, ColourDifference.Between(Wood.Named(first).Lab, Wood.Named(second).Lab));

    /// <summary>Whether the two are hard to tell apart.</summary>
    public bool IsWeak => Difference < LeastSafe;

    /// <summary>What it means, for example "walnut and wenge are hard to tell apart (colour difference 9, from rough swatches)".</summary>
    public string Sentence
    {
        get
        {
            string verdict = Difference < LeastSafe ? "are hard to tell apart" : Difference < Clear ? "can be told apart" : "are clearly apart";
            return string.Create(CultureInfo.InvariantCulture, $"{First} and {Second} {verdict} (colour difference {Difference:0}, from rough swatches)");
        }
    }
}
