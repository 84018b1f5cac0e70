using System.Text;

namespace Ringwright.Paper.Lettering;

/// <summary>Collects the runs of one line from left to right.</summary>
internal sealed class LineBuilder(TextStyle style)
{
    private readonly FontFace _face = FontFace.Of(style.Weight);
    private readonly List<TextRun> _runs = [];
    private double _x;

    /// <summary>Adds characters of one size.</summary>
    /// <param name="text">The characters.</param>
    /// <param name="size">Size over the size of the line.</param>
    /// <param name="rise">Baseline above that of the line, over the height of a capital of the line.</param>
    /// <param name="width">Advance of each character over the em, where it is not the typeface's.</param>
    public void Add(string text, double size = 1, double rise = 0, double? width = null)
    {
        if (text.Length == 0)
            return;
        double em = size * style.Em;
        List<double> offsets = [];
        double x = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            double natural = _face.Advance(rune.Value);
            double cell = width ?? Cell(rune, natural);
            offsets.Add(x + (em * (cell - natural) / 2));
            x += em * cell;
        }

        _runs.Add(new(text, em, _x, rise * style.Height, offsets, x));
        _x += x;
    }

    /// <summary>The finished line.</summary>
    public TextLine Line() => new(string.Concat(_runs.Select(run => run.Text)), style, _runs, _x);

    private double Cell(Rune rune, double natural) =>
        style.Tabular && Rune.IsDigit(rune) && rune.IsAscii ? _face.DigitWidth : natural;
}
