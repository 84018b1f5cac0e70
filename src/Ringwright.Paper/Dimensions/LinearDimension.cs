using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Dimensions;

/// <summary>Dimensions between two points, after ISO 129: fine lines, filled arrowheads, the value above an unbroken line.</summary>
public static class LinearDimension
{
    private const double ExtensionGap = 0.8;  // from the point to its extension line
    private const double ExtensionOver = 1.6; // beyond the dimension line
    private const double TextGap = 0.9;       // between line and letters

    /// <summary>
    /// Draws the distance from one point to another. Seen from <paramref name="from"/> towards <paramref name="to"/> the line
    /// lies <paramref name="offset"/> mm to the left (negative: to the right); the value is read from below or from the right.
    /// Where there is no room between the extension lines, arrows and value go outside, beyond <paramref name="to"/>.
    /// </summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="from">First point, mm.</param>
    /// <param name="to">Second point, mm.</param>
    /// <param name="offset">Distance of the dimension line from the points, mm.</param>
    /// <param name="value">The value as it is to be read.</param>
    /// <param name="style">Lettering; <see cref="TypeScale.Dimension"/> when absent.</param>
    public static Drawing Dimension(
        this Drawing drawing, Vector2D from, Vector2D to, double offset, string value, TextStyle? style = null)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        TextLine line = Typesetter.Set(value, style ?? TypeScale.Dimension);
        double length = (to - from).Length;
        Vector2D along = length > 0 ? (1 / length) * (to - from) : new(1, 0);
        Vector2D aside = Math.Sign(offset) * new Vector2D(along.Y, -along.X);
        Vector2D a = from + (Math.Abs(offset) * aside), b = to + (Math.Abs(offset) * aside);
        Extension(drawing, from, a, aside, offset);
        Extension(drawing, to, b, aside, offset);
        if (length >= line.Width + 2 || length >= (2 * Arrows.Length) + line.Width)
            Inside(drawing, a, b, along, line);
        else
            Outside(drawing, a, b, along, line, length);
        return drawing;
    }

    /// <summary>
    /// Draws an upright distance with its value level beside the line, on the side away from the points: for values too long
    /// to stand along a short line.
    /// </summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="from">First point, mm.</param>
    /// <param name="to">Second point, above or below the first, mm.</param>
    /// <param name="offset">Distance of the dimension line from the points, mm; negative to the left of them.</param>
    /// <param name="value">The value; line ends make lines.</param>
    public static Drawing UprightDimension(this Drawing drawing, Vector2D from, Vector2D to, double offset, string value)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        Vector2D aside = new(Math.Sign(offset), 0), along = new(0, to.Y >= from.Y ? 1 : -1);
        Vector2D a = new(from.X + offset, from.Y), b = new(from.X + offset, to.Y);
        Extension(drawing, from, a, aside, offset);
        Extension(drawing, to, b, aside, offset);
        bool inside = (b - a).Length >= 3 * Arrows.Length;
        Vector2D tail = inside ? Vector2D.Zero : 2 * Arrows.Length * along;
        drawing.Line(a - tail, b + tail, Pens.Fine);
        Arrows.Head(drawing, a, inside ? -along : along);
        Arrows.Head(drawing, b, inside ? along : -along);
        IReadOnlyList<TextLine> lines = Wrapping.Lines(value, TypeScale.Dimension, double.PositiveInfinity);
        double up = (lines.Count - 1) * TypeScale.Dimension.Leading / 2;
        Vector2D middle = (0.5 * (a + b)) + ((ExtensionOver + TextGap) * aside) - new Vector2D(0, up);
        return drawing.Text(lines, middle, offset < 0 ? Anchor.MiddleRight : Anchor.MiddleLeft);
    }

    private static void Extension(Drawing drawing, Vector2D point, Vector2D end, Vector2D aside, double offset)
    {
        if (Math.Abs(offset) > ExtensionGap)
            drawing.Line(point + (ExtensionGap * aside), end + (ExtensionOver * aside), Pens.Fine);
    }

    private static void Inside(Drawing drawing, Vector2D a, Vector2D b, Vector2D along, TextLine line)
    {
        drawing.Line(a, b, Pens.Fine);
        Arrows.Head(drawing, a, -1 * along);
        Arrows.Head(drawing, b, along);
        Value(drawing, 0.5 * (a + b), along, line);
    }

    private static void Outside(Drawing drawing, Vector2D a, Vector2D b, Vector2D along, TextLine line, double length)
    {
        const double Tail = 2 * Arrows.Length;
        double beyond = Tail + line.Width + 1;
        drawing.Line(a - (Tail * along), b + (beyond * along), Pens.Fine);
        Arrows.Head(drawing, a, along);
        Arrows.Head(drawing, b, -1 * along);
        Value(drawing, a + ((length + Tail + (line.Width / 2)) * along), along, line);
    }

    // Turned so that it is read from below or from the right (ISO 129), above its line.
    private static void Value(Drawing drawing, Vector2D middle, Vector2D along, TextLine line)
    {
        const double Level = 1e-9;
        bool backwards = along.X < -Level || (Math.Abs(along.X) <= Level && along.Y > 0);
        Vector2D reading = backwards ? -1 * along : along;
        Vector2D up = new(reading.Y, -reading.X);
        double angle = Math.Atan2(reading.Y, reading.X);
        drawing.Text(line, middle + (TextGap * up), Anchor.Centre, angle);
    }
}
