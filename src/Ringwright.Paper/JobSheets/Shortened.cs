using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.JobSheets;

/// <summary>Names as long as a user likes, cut with a mark where even small print has no room for them.</summary>
internal static class Shortened
{
    private const string Mark = "…";

    /// <summary>One line, as large as fits, in small print and cut where it must be.</summary>
    public static TextLine OneLine(string text, TextStyle style, double width)
    {
        TextStyle least = style with { Height = TypeScale.Note.Height };
        string fitting = To(text, s => Typesetter.WidthOf(s, least) <= width);
        return Wrapping.OneLine(fitting, style, width, TypeScale.Note.Height);
    }

    /// <summary>The text, or the longest beginning of it that passes with the mark behind it.</summary>
    public static string To(string text, Func<string, bool> fits)
    {
        string cut = text;
        for (int length = text.Length - 1; length > 0 && !fits(cut); length--)
            cut = text[..length].TrimEnd() + Mark;
        return cut;
    }
}
