using System.Text;

namespace Ringwright.Paper.Lettering;

/// <summary>Collects the runs of one line from left to right.</summary>
internal sealed class LineBuilder(TextStyle style)
{
    private readonly FontFace _face = FontFace.Of(style.Weight);
    private readonly List<TextRun> _runs = [];
    private double _x;

    /// <summary>Adds characters of the line's own size.</summary>
    public void Add(string text) => AddRun(text, size: 1, rise: 0, rune => _face.Advance(rune, style.Tabular));

    /// <summary>Adds a part of a fraction.</summary>
    /// <param name="text">The characters.</param>
    /// <param name="size">Size over the size of the line.</param>
    /// <param name="rise">Baseline above that of the line, over the height of a capital of the line.</param>
    /// <param name="air">Room on either side of each character over the em.</param>
    public void AddPart(string text, double size, double rise, double air = 0) =>
        AddRun(text, size, rise, rune => _face.Advance(rune.Value) + (2 * air));

    /// <summary>The finished line.</summary>
    public TextLine Line() => new(string.Concat(_runs.Select(run => run.Text)), style, _runs, _x);

    private void AddRun(string text, double size, double rise, Func<Rune, double> advance)
    {
        if (text.Length == 0)
            return;
        double em = size * style.Em;
        double[] offsets = new double[text.Length];
        int count = 0;
        double x = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            double cell = advance(rune);
            offsets[count++] = x + (em * (cell - _face.Advance(rune.Value)) / 2); // in the middle of its cell
            x += em * cell;
        }

        Array.Resize(ref offsets, count); // fewer than its UTF-16 units where it leaves the basic plane
        _runs.Add(new(text, em, _x, rise * style.Height, offsets, x));
        _x += x;
    }
}
