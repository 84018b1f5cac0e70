using System.Text;
using System.Text.RegularExpressions;

namespace Ringwright.Core;

/// <summary>Makes any text, whatever stands in a file or a field, fit to be read in one sentence.</summary>
public static partial class OneLine
{
    /// <summary>Most characters of a text that is quoted.</summary>
    public const int Longest = 60;

    /// <summary>
    /// The text on one line: a space for each control character and line break, � for half a character, and of what is quoted
    /// between “ and ” the first <see cref="Longest"/> characters.
    /// </summary>
    public static string Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return LongQuote().Replace(Clean(text), quote => $"“{Whole(quote.Groups[1].Value, Longest)}…”");
    }

    /// <summary>The same for a text of another program, which may be of any length: at most its first <paramref name="most"/> characters.</summary>
    public static string Of(string text, int most)
    {
        string line = Of(text);
        return line.Length <= most ? line : Whole(line, most) + "…";
    }

    /// <summary>Whether no character is halved: every surrogate has its other half.</summary>
    public static bool IsWhole(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        for (int i = 0; i < text.Length; i++)
            if (char.IsSurrogate(text[i]) && !(i + 1 < text.Length && char.IsSurrogatePair(text[i], text[++i]))) return false;
        return true;
    }

    /// <summary>The character at <paramref name="position"/>, whole, as it can be shown.</summary>
    internal static string At(string text, int position) =>
        Clean(Rune.TryGetRuneAt(text, position, out Rune rune) ? rune.ToString() : text[position].ToString());

    /// <summary>The beginning of a text, at most so many characters, none of them halved.</summary>
    internal static string Start(string text, int most) => Clean(Whole(text, most));

    private static string Whole(string text, int most) =>
        text.Length <= most ? text : text[..(char.IsHighSurrogate(text[most - 1]) ? most - 1 : most)];

    private static string Clean(string text)
    {
        if (!NeedsCleaning(text)) return text;
        var clean = new StringBuilder(text.Length);
        foreach (Rune rune in text.EnumerateRunes()) clean.Append(IsBreak(rune) ? " " : rune.ToString());
        return clean.ToString();
    }

    // Most texts need nothing.
    private static bool NeedsCleaning(string text)
    {
        foreach (char c in text)
            if (char.IsControl(c) || char.IsSurrogate(c) || c is '\u2028' or '\u2029') return true;
        return false;
    }

    private static bool IsBreak(Rune rune) => Rune.IsControl(rune) || rune.Value is 0x2028 or 0x2029;

    [GeneratedRegex("“([^”]{61,})”")]
    private static partial Regex LongQuote();
}
