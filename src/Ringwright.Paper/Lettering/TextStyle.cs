using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Lettering;

/// <summary>How a text is set.</summary>
/// <param name="Height">Height of a capital letter, mm: the nominal size of technical lettering (ISO 3098-1).</param>
/// <param name="Weight">How heavy the letters are.</param>
/// <param name="Colour">The ink.</param>
/// <param name="Tabular">Every digit takes the same width, so that figures stand under each other.</param>
/// <param name="Fractions">A fraction written 3/8 is set with a raised numerator and a small denominator.</param>
public sealed record TextStyle(
    double Height,
    FontWeight Weight = FontWeight.Regular,
    Colour Colour = default,
    bool Tabular = false,
    bool Fractions = false)
{
    /// <summary>Size of the em, mm.</summary>
    public double Em => Height / FontFace.CapHeightPerEm;

    /// <summary>How far letters such as g reach below the baseline, mm.</summary>
    public double Descent => 0.30 * Height;

    /// <summary>Distance from baseline to baseline, mm.</summary>
    public double Leading => 1.9 * Height;
}
