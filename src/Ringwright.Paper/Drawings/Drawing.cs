using Ringwright.Core.Geometry;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Drawings;

/// <summary>
/// Marks on a piece of paper, in the order they are drawn. Millimetres; the origin is the top left corner, x runs right,
/// y runs down, angles run clockwise as seen. Written by <c>PdfWriter</c>, <c>SvgWriter</c> and <c>PngWriter</c>.
/// Not safe to change from two threads.
/// </summary>
/// <param name="width">Width of the paper, mm.</param>
/// <param name="height">Height of the paper, mm.</param>
public sealed class Drawing(double width, double height)
{
    private readonly List<Mark> _marks = [];

    /// <summary>Width of the paper, mm.</summary>
    public double Width { get; } = width;

    /// <summary>Height of the paper, mm.</summary>
    public double Height { get; } = height;

    /// <summary>What has been drawn so far.</summary>
    public IReadOnlyList<Mark> Marks => _marks;

    /// <summary>Every line of text with the box it takes on this paper, mm, those of placed drawings too.</summary>
    public IEnumerable<(string Text, Box Box)> TextBoxes => _marks.SelectMany(BoxesOf);

    /// <summary>Draws a line along a shape.</summary>
    public Drawing Stroke(Outline outline, Pen pen) => Add(new Mark.Stroke(outline, pen));

    /// <summary>Draws a straight line.</summary>
    public Drawing Line(Vector2D from, Vector2D to, Pen pen) => Stroke(Outline.Line(from, to), pen);

    /// <summary>Fills a shape.</summary>
    public Drawing Fill(Outline outline, Colour colour) => Add(new Mark.Fill(outline, colour));

    /// <summary>Fills a shape with the lines of a hatch.</summary>
    /// <param name="outline">The shape.</param>
    /// <param name="hatch">The pattern.</param>
    /// <param name="pen">The line; fine when absent.</param>
    public Drawing Hatch(Outline outline, Hatch hatch, Pen? pen = null)
    {
        Outline lines = Hatching.Lines(outline, hatch);
        return lines.Contours.Count == 0 ? this : Stroke(lines, pen ?? Pens.Fine);
    }

    /// <summary>Writes one line of text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="at">Where its anchor stands, mm.</param>
    /// <param name="style">How it is set.</param>
    /// <param name="anchor">Which point of the text that is.</param>
    /// <param name="angle">Turned around the anchor, radians clockwise as seen.</param>
    public Drawing Text(string text, Vector2D at, TextStyle style, Anchor anchor = default, double angle = 0) =>
        Text(Typesetter.Set(text, style), at, anchor, angle);

    /// <summary>Writes one line of text that has been set already.</summary>
    public Drawing Text(TextLine line, Vector2D at, Anchor anchor = default, double angle = 0)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.Text.Length == 0 ? this : Add(new Mark.Text(line, at, anchor, angle));
    }

    /// <summary>Writes lines under each other.</summary>
    /// <param name="lines">Lines of one style.</param>
    /// <param name="at">Where the anchor of the first line stands, mm.</param>
    /// <param name="anchor">Which point of each line stands above the next.</param>
    public Drawing Text(IReadOnlyList<TextLine> lines, Vector2D at, Anchor anchor)
    {
        ArgumentNullException.ThrowIfNull(lines);
        for (int i = 0; i < lines.Count; i++)
            Text(lines[i], at + new Vector2D(0, i * lines[i].Style.Leading), anchor);
        return this;
    }

    /// <summary>Puts another drawing on this one.</summary>
    /// <param name="child">The drawing; what is added to it later shows here too.</param>
    /// <param name="at">Where its top left corner goes, mm.</param>
    /// <param name="scaleX">Stretch across.</param>
    /// <param name="scaleY">Stretch down.</param>
    public Drawing Place(Drawing child, Vector2D at, double scaleX = 1, double scaleY = 1) =>
        Add(new Mark.Placed(child, at, scaleX, scaleY));

    /// <summary>Puts another drawing on this one, as a layer of files that have layers.</summary>
    /// <param name="name">Name of the layer: letters, digits and dashes.</param>
    /// <param name="child">The drawing; what is added to it later shows here too.</param>
    /// <param name="at">Where its top left corner goes, mm.</param>
    public Drawing Layer(string name, Drawing child, Vector2D at) => Add(new Mark.Placed(child, at, 1, 1) { Layer = name });

    private static IEnumerable<(string Text, Box Box)> BoxesOf(Mark mark) => mark switch
    {
        Mark.Text text => [(text.Line.Text, text.Bounds)],
        Mark.Placed placed => placed.Child.TextBoxes.Select(inner => (inner.Text, placed.ToParent(inner.Box))),
        _ => [],
    };

    private Drawing Add(Mark mark)
    {
        _marks.Add(mark);
        return this;
    }
}
