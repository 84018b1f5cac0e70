using System.Text;
using System.Text.RegularExpressions;

namespace Ringwright.Paper.Lettering;

/// <summary>Turns a text into a measured line. Sets what the typeface gives; does no kerning.</summary>
public static partial class Typesetter
{
    /// <summary>The slash of a set fraction.</summary>
    public const char FractionSlash = '\u2044';

    // Proportions of a set fraction, over the size of the line.
    private const double SmallFigure = 0.64;
    private const double NumeratorRise = 1 - SmallFigure;
    private const double ThinSpaceEm = 0.12;

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

    /// <summary>Whether every character of the text is in the typeface.</summary>
    public static bool CanShow(string text, FontWeight weight = FontWeight.Regular) =>
        Clean(text).EnumerateRunes().All(rune => FontFace.Of(weight).Has(rune.Value));

    private static void AddFraction(LineBuilder line, Match match)
    {
        if (match.Groups["space"].Length > 0)
            line.Add(" ", width: ThinSpaceEm);
        line.Add(match.Groups["over"].Value, SmallFigure, NumeratorRise);
        line.Add(FractionSlash.ToString());
        line.Add(match.Groups["under"].Value, SmallFigure);
    }

    private static string Clean(string text)
    {
        StringBuilder clean = new(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
            clean.Append(Rune.IsControl(rune) ? " " : rune.ToString());
        return clean.ToString();
    }

    [GeneratedRegex(@"(?<space>(?<=\d) )?(?<![\d./])(?<over>\d{1,3})/(?<under>\d{1,3})(?![\d./])")]
    private static partial Regex Fraction();
}
