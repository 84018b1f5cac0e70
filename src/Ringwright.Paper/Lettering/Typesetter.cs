using System.Text;
using System.Text.RegularExpressions;

namespace Ringwright.Paper.Lettering;

/// <summary>Turns a text into a measured line. Sets what the typeface gives; does no kerning.</summary>
public static partial class Typesetter
{
    /// <summary>The slash of a set fraction.</summary>
    public const char FractionSlash = '\u2044';

    // Proportions of a set fraction, over the size of the line.
    private const double SmallFigure = 0.7;
    private const double NumeratorRise = 1 - SmallFigure;
    private const double SlashAir = 0.05; // em on either side: the slash of the face is made for narrower figures

    /// <summary>Sets one line.</summary>
    /// <param name="text">Any text; line ends and other control characters become spaces.</param>
    /// <param name="style">How it is set.</param>
    public static TextLine Set(string text, TextStyle style)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(style);
        LineBuilder line = new(style);
        string clean = Clean(text);
        int done = 0;
        foreach (Match match in style.Fractions ? Fraction().Matches(clean) : Enumerable.Empty<Match>())
        {
            line.Add(clean[done..match.Index]);
            AddFraction(line, match);
            done = match.Index + match.Length;
        }

        line.Add(clean[done..]);
        return line.Line();
    }

    /// <summary>How wide a text is when it is set, mm: the same as that of <see cref="Set"/>, without the line.</summary>
    /// <param name="text">Any text.</param>
    /// <param name="style">How it would be set.</param>
    public static double WidthOf(string text, TextStyle style)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(style);
        if (style.Fractions && text.Contains('/', StringComparison.Ordinal)) return Set(text, style).Width;
        FontFace face = FontFace.Of(style.Weight);
        double em = style.Em, width = 0;
        foreach (Rune rune in text.EnumerateRunes()) width += em * face.Advance(Clean(rune), style.Tabular);
        return width;
    }

    /// <summary>Whether every character of the text is in the typeface.</summary>
    public static bool CanShow(string text, FontWeight weight = FontWeight.Regular) =>
        Clean(text).EnumerateRunes().All(rune => FontFace.Of(weight).Has(rune.Value));

    private static void AddFraction(LineBuilder line, Match match)
    {
        line.AddPart(match.Groups["over"].Value, SmallFigure, NumeratorRise);
        line.AddPart(FractionSlash.ToString(), size: 1, rise: 0, SlashAir);
        line.AddPart(match.Groups["under"].Value, SmallFigure, rise: 0);
    }

    /// <summary>The text with a space for everything that is no character, so that every kind of file can hold it.</summary>
    internal static string Clean(string text)
    {
        StringBuilder clean = new(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
            clean.Append(Clean(rune).ToString());
        return clean.ToString();
    }

    private static Rune Clean(Rune rune) => Rune.IsControl(rune) || rune.Value is 0xFFFE or 0xFFFF ? new(' ') : rune;

    [GeneratedRegex(@"(?<![\d./])(?<over>\d{1,3})/(?<under>\d{1,3})(?![\d./])")]
    private static partial Regex Fraction();
}
