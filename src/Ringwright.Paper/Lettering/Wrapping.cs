namespace Ringwright.Paper.Lettering;

/// <summary>Breaks text into lines and finds the size at which it fits.</summary>
public static class Wrapping
{
    private const double Rounding = 1e-9; // mm; a column may be just as wide as its text, added up in another order

    /// <summary>
    /// Breaks a text at spaces into lines no wider than <paramref name="width"/> mm; a word that is wider alone is broken
    /// between characters. A line end in the text starts a new line.
    /// </summary>
    public static IReadOnlyList<TextLine> Lines(string text, TextStyle style, double width)
    {
        ArgumentNullException.ThrowIfNull(text);
        List<TextLine> lines = [];
        foreach (string paragraph in text.ReplaceLineEndings("\n").Split('\n'))
            AddParagraph(lines, paragraph, style, width);
        return lines;
    }

    /// <summary>One line, at the largest size of the scale that fits.</summary>
    /// <param name="text">The text.</param>
    /// <param name="style">The wanted style.</param>
    /// <param name="width">Room, mm.</param>
    /// <param name="least">The smallest height allowed, mm.</param>
    /// <exception cref="LayoutException">It does not fit at the smallest height.</exception>
    public static TextLine OneLine(string text, TextStyle style, double width, double least) =>
        TypeScale.Down(style, least).Select(s => Typesetter.Set(text, s)).FirstOrDefault(line => line.Width <= width)
            ?? throw new LayoutException(text, width, null, least);

    /// <summary>Lines in a box: the wanted size in one line, else smaller in one line, else wrapped at the largest size that fits.</summary>
    /// <param name="text">The text.</param>
    /// <param name="style">The wanted style.</param>
    /// <param name="width">Room across, mm.</param>
    /// <param name="height">Room down, mm.</param>
    /// <param name="least">The smallest height of capitals allowed, mm.</param>
    /// <exception cref="LayoutException">It does not fit even wrapped at the smallest height.</exception>
    public static IReadOnlyList<TextLine> InBox(string text, TextStyle style, double width, double height, double least)
    {
        foreach (TextStyle smaller in TypeScale.Down(style, least))
        {
            IReadOnlyList<TextLine> lines = Lines(text, smaller, width);
            if (HeightOf(lines) <= height && !BreaksWord(text, lines))
                return lines;
        }

        IReadOnlyList<TextLine> smallest = Lines(text, style with { Height = least }, width);
        return HeightOf(smallest) <= height ? smallest : throw new LayoutException(text, width, height, least);
    }

    /// <summary>Height of lines from the top of the first capitals to the lowest descender, mm.</summary>
    public static double HeightOf(IReadOnlyList<TextLine> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        if (lines.Count == 0)
            return 0;
        TextStyle style = lines[0].Style;
        return style.Height + ((lines.Count - 1) * style.Leading) + style.Descent;
    }

    private static bool BreaksWord(string text, IReadOnlyList<TextLine> lines) =>
        lines.Sum(line => Words(line.Text).Length) != Words(text).Length;

    private static string[] Words(string text) =>
        text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    private static void AddParagraph(List<TextLine> lines, string paragraph, TextStyle style, double width)
    {
        // No kerning, and no fraction goes over a space: a line is as wide as its words and the spaces between them.
        double space = WidthOf(" "), used = 0;
        string line = "";
        foreach (string word in paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            double longer = line.Length == 0 ? WidthOf(word) : used + space + WidthOf(word);
            if (longer <= width + Rounding)
            {
                line = line.Length == 0 ? word : $"{line} {word}";
                used = longer;
                continue;
            }

            if (line.Length > 0)
                lines.Add(Typesetter.Set(line, style));
            line = BreakWord(word);
            used = WidthOf(line);
        }

        lines.Add(Typesetter.Set(line, style));

        double WidthOf(string text) => Typesetter.WidthOf(text, style);

        bool Fits(string text) => WidthOf(text) <= width;

        // Puts full lines of a word that is too wide into the result and gives back its rest.
        string BreakWord(string word)
        {
            while (!Fits(word) && word.Length > 1)
            {
                int take = Enumerable.Range(1, word.Length - 1).TakeWhile(n => Fits(word[..n])).DefaultIfEmpty(1).Last();
                lines.Add(Typesetter.Set(word[..take], style));
                word = word[take..];
            }

            return word;
        }
    }
}
