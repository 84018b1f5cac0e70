using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Dimensions;

/// <summary>The angle between two directions.</summary>
public static class AngularDimension
{
    private const double TextGap = 1.2;
    private const double Over = 1.6; // of the extension lines beyond the arc

    /// <summary>
    /// Draws an arc of <paramref name="radius"/> mm around <paramref name="apex"/> with arrowheads and the value, level,
    /// outside its middle. Where the arc is short the arrows come from outside.
    /// </summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="apex">Where the two directions meet, mm.</param>
    /// <param name="radius">Radius of the arc, mm.</param>
    /// <param name="from">First direction, radians from +x, clockwise as seen.</param>
    /// <param name="sweep">Angle from the first to the second direction, radians, positive clockwise as seen.</param>
    /// <param name="value">The value as it is to be read.</param>
    /// <param name="edge">How far from the apex the drawn edges end towards the arc, mm: extension lines start there.</param>
    /// <param name="style">Lettering; <see cref="TypeScale.Dimension"/> when absent.</param>
    public static Drawing AngleDimension(
        this Drawing drawing, Vector2D apex, double radius, double from, double sweep, string value, double edge, TextStyle? style = null)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        Extension(drawing, apex, edge, radius, from);
        Extension(drawing, apex, edge, radius, from + sweep);
        bool inside = radius * Math.Abs(sweep) > 3 * Arrows.Length;
        double tail = inside ? 0 : Math.Sign(sweep) * 2 * Arrows.Length / radius;
        drawing.Stroke(Outline.Arc(apex, radius, from - tail, sweep + (2 * tail)), Pens.Fine);
        Head(drawing, apex, radius, from, inside ? -sweep : sweep);
        Head(drawing, apex, radius, from + sweep, inside ? sweep : -sweep);
        Value(drawing, apex, radius, from + (sweep / 2), Typesetter.Set(value, style ?? TypeScale.Dimension));
        return drawing;
    }

    private static void Extension(Drawing drawing, Vector2D apex, double edge, double radius, double angle)
    {
        const double Gap = 0.8;
        int side = Math.Sign(radius - edge);
        if (Math.Abs(radius - edge) > Gap)
            drawing.Line(At(edge + (side * Gap)), At(radius + (side * Over)), Pens.Fine);

        Vector2D At(double distance) => apex + Vector2D.Polar(distance, angle);
    }

    // The head lies on the chord over its own length, so that it follows the arc.
    private static void Head(Drawing drawing, Vector2D apex, double radius, double angle, double towards)
    {
        Vector2D tip = apex + Vector2D.Polar(radius, angle);
        Vector2D foot = apex + Vector2D.Polar(radius, angle - (Math.Sign(towards) * Arrows.Length / radius));
        Arrows.Head(drawing, tip, (1 / (tip - foot).Length) * (tip - foot));
    }

    // The level box of the text touches a circle TextGap outside the arc.
    private static void Value(Drawing drawing, Vector2D apex, double radius, double angle, TextLine line)
    {
        Vector2D outwards = Vector2D.AtAngle(angle);
        double reach = (Math.Abs(outwards.X) * line.Width / 2) + (Math.Abs(outwards.Y) * line.Style.Height / 2);
        drawing.Text(line, apex + ((radius + TextGap + reach) * outwards), Anchor.Middle);
    }
}
