using System.Globalization;
using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Blocks;

/// <summary>What stands before each item of a list.</summary>
public enum ListMark
{
    /// <summary>A dot.</summary>
    Dot,

    /// <summary>Its number, for steps in an order.</summary>
    Number,

    /// <summary>An empty square to tick off.</summary>
    Tick,

    /// <summary>A warning triangle, for cautions.</summary>
    Caution,
}

/// <summary>Items under each other, each with a mark before it.</summary>
/// <param name="mark">The mark.</param>
/// <param name="items">The texts.</param>
/// <param name="style">How they are set; <see cref="TypeScale.Body"/> when absent.</param>
public sealed class ListBlock(ListMark mark, IReadOnlyList<string> items, TextStyle? style = null) : IDivisible
{
    private const double ItemGap = 2.8;

    private readonly TextStyle _style = style ?? TypeScale.Body;
    private int _before; // items of the same list on sheets before this one

    private double Indent => mark == ListMark.Number
        ? Math.Max(2.4 * _style.Height, Typesetter.WidthOf(Numeral(_before + items.Count), NumeralStyle) + NumeralGap)
        : 2.4 * _style.Height;

    private double NumeralGap => 0.9 * _style.Height;

    private TextStyle NumeralStyle => _style with { Weight = FontWeight.SemiBold, Tabular = true };

    /// <inheritdoc/>
    public double HeightAt(double width) =>
        items.Sum(item => HeightOf(item, width)) + (ItemGap * Math.Max(0, items.Count - 1));

    /// <inheritdoc/>
    public void Draw(Drawing drawing, Box box)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        double y = box.Y;
        for (int i = 0; i < items.Count; i++)
        {
            DrawMark(drawing, new(box.X, y), _before + i + 1);
            drawing.Text(Lines(items[i], box.Width), new(box.X + Indent, y), Anchor.TopLeft);
            y += HeightOf(items[i], box.Width) + ItemGap;
        }
    }

    /// <inheritdoc/>
    public (IBlock Head, IBlock Tail)? Divide(double width, double height)
    {
        int fits = 0;
        for (double left = height + ItemGap; fits < items.Count && (left -= HeightOf(items[fits], width) + ItemGap) >= 0;) fits++;
        return fits == 0 || fits == items.Count ? null : (Part(0..fits, _before), Part(fits.., _before + fits));
    }

    private ListBlock Part(Range part, int before) => new(mark, [.. items.Take(part)], _style) { _before = before };

    private IReadOnlyList<TextLine> Lines(string item, double width) => Wrapping.Lines(item, _style, width - Indent);

    private double HeightOf(string item, double width) => Wrapping.HeightOf(Lines(item, width));

    private void DrawMark(Drawing drawing, Vector2D at, int number)
    {
        double h = _style.Height;
        switch (mark)
        {
            case ListMark.Dot:
                drawing.Fill(Outline.Circle(at + new Vector2D(h / 2, h / 2), 0.2 * h), Colour.Black);
                break;
            case ListMark.Number:
                drawing.Text(Numeral(number), at + new Vector2D(Indent - NumeralGap, 0), NumeralStyle, Anchor.TopRight);
                break;
            case ListMark.Tick:
                drawing.Stroke(Outline.Rectangle(new(at.X + 0.1, at.Y - (0.1 * h), 1.2 * h, 1.2 * h)), Pens.Fine);
                break;
            case ListMark.Caution:
                Triangle(drawing, at, h);
                break;
        }
    }

    private static string Numeral(int number) => number.ToString(CultureInfo.InvariantCulture);

    // The shape of a general warning sign (ISO 7010 W001): triangle and exclamation mark, in outline.
    private static void Triangle(Drawing drawing, Vector2D at, double h)
    {
        Vector2D top = at + new Vector2D(0.75 * h, -0.2 * h);
        Vector2D foot = at + new Vector2D(0, 1.1 * h);
        drawing.Stroke(Outline.Polygon([top, foot + new Vector2D(1.5 * h, 0), foot]), Pens.Fine);
        drawing.Line(top + new Vector2D(0, 0.42 * h), top + new Vector2D(0, 0.85 * h), new Pen(0.12 * h));
        drawing.Fill(Outline.Circle(top + new Vector2D(0, 1.06 * h), 0.08 * h), Colour.Black);
    }
}
