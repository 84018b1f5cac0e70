using System.Globalization;
using Ringwright.Core.Geometry;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures;

namespace Ringwright.Paper.JobSheets;

/// <summary>
/// Swatch (its greys where the picture has greys, both where thin spacers have them), letter and name of each wood, beside each other as
/// far as there is room.
/// </summary>
internal sealed class WoodLegend(WoodKey key, bool shaded = false, IReadOnlyDictionary<string, bool>? thin = null) : IBlock
{
    /// <summary>How many woods it shows; further ones are counted.</summary>
    public const int Most = 8;

    private const double Swatch = 7, SwatchHeight = 3.6, Row = 6.2, Gap = 6;

    /// <summary>Pieces of each wood, told instead of its letter: for a whole piece, whose rings have letters of their own.</summary>
    public IReadOnlyDictionary<string, int>? Pieces { get; init; }

    /// <summary>Whether the picture has tints.</summary>
    public bool Coloured { get; init; }

    public double HeightAt(double width) => Row * (Places(width).Select(p => p.Row).DefaultIfEmpty(0).Max() + 1) - (Row - SwatchHeight);

    public void Draw(Drawing drawing, Box box)
    {
        foreach ((WoodEntry? wood, TextLine text, double x, int row) in Places(box.Width))
        {
            Vector2D at = box.TopLeft + new Vector2D(x, row * Row);
            double indent = 0;
            if (wood is not null)
            {
                Outline swatch = Outline.Rectangle(new(at.X, at.Y, Swatch, SwatchHeight));
                bool both = false, spacer = thin is not null && thin.TryGetValue(wood.Wood, out both);
                if (Coloured) drawing.Fill(swatch, wood.Tint);
                else if (shaded || (spacer && !both)) drawing.Fill(swatch, wood.Shade);
                if (!shaded && (!spacer || both)) drawing.Hatch(swatch, wood.Hatch);
                if (both) drawing.Fill(Outline.Rectangle(new(at.X + (Swatch / 2), at.Y, Swatch / 2, SwatchHeight)), wood.Shade);
                drawing.Stroke(swatch, Pens.Fine);
                indent = Swatch + 1.6;
            }

            drawing.Text(text, at + new Vector2D(indent, SwatchHeight / 2), Anchor.MiddleLeft);
        }
    }

    private IEnumerable<(WoodEntry? Wood, TextLine Text, double X, int Row)> Places(double width)
    {
        double x = 0;
        int row = 0;
        foreach ((WoodEntry? wood, string text) in Entries())
        {
            double indent = wood is null ? 0 : Swatch + 1.6;
            TextLine line = Shortened.OneLine(text, TypeScale.Body, width - indent);
            if (x > 0 && x + indent + line.Width > width) (x, row) = (0, row + 1);
            yield return (wood, line, x, row);
            x += indent + line.Width + Gap;
        }
    }

    private IEnumerable<(WoodEntry? Wood, string Text)> Entries()
    {
        foreach (WoodEntry wood in key.Entries.Take(Most)) yield return (wood, Text(wood));
        if (key.Entries.Count > Most) yield return (null, $"and {key.Entries.Count - Most} more{(Pieces is null ? ", by letter in the wood table" : " woods")}");
    }

    private string Text(WoodEntry wood) => Pieces is null
        ? $"{wood.Letter} {wood.Wood}"
        : string.Create(CultureInfo.InvariantCulture, $"{wood.Wood}, {Pieces[wood.Wood]:N0} {(Pieces[wood.Wood] == 1 ? "piece" : "pieces")}");
}
