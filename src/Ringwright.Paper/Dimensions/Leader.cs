using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Dimensions;

/// <summary>What a leader points with.</summary>
public enum LeaderEnd
{
    /// <summary>An arrow, at an edge.</summary>
    Arrow,

    /// <summary>A dot, inside a surface.</summary>
    Dot,
}

/// <summary>Notes with a line to the thing they speak of, radii and diameters.</summary>
public static class Leader
{
    private const double Landing = 3;
    private const double TextGap = 1;
    private const double DotRadius = 0.55;

    /// <summary>Draws a line from a thing to a knee, a short level landing and the note behind it.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="target">What it points at, mm.</param>
    /// <param name="knee">Where the line turns level, mm. The note stands on the side away from the target.</param>
    /// <param name="note">The text; line ends make lines.</param>
    /// <param name="end">Arrow or dot.</param>
    /// <param name="style">Lettering; <see cref="TypeScale.Dimension"/> when absent.</param>
    public static Drawing Note(
        this Drawing drawing, Vector2D target, Vector2D knee, string note, LeaderEnd end = LeaderEnd.Arrow, TextStyle? style = null)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        int side = knee.X >= target.X ? 1 : -1;
        Vector2D landing = knee + new Vector2D(side * Landing, 0);
        drawing.Stroke(Outline.Polyline([target, knee, landing]), Pens.Fine);
        if (end == LeaderEnd.Dot)
            drawing.Fill(Outline.Circle(target, DotRadius), Colour.Black);
        else
            Arrows.Head(drawing, target, Unit(target - knee));

        IReadOnlyList<TextLine> lines = Wrapping.Lines(note, style ?? TypeScale.Dimension, double.PositiveInfinity);
        return drawing.Text(lines, landing + new Vector2D(side * TextGap, 0), side > 0 ? Anchor.MiddleLeft : Anchor.MiddleRight);
    }

    /// <summary>Draws a radius: an arrow from the centre's side to the circle and the value behind it.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="centre">Centre of the circle, mm.</param>
    /// <param name="radius">Radius as drawn, mm.</param>
    /// <param name="angle">Where on the circle, radians from +x, clockwise as seen.</param>
    /// <param name="value">The value, written after an R.</param>
    /// <param name="reach">How far outside the circle the knee is, mm.</param>
    public static Drawing RadiusDimension(
        this Drawing drawing, Vector2D centre, double radius, double angle, string value, double reach = 8) =>
        RoundDimension(drawing, centre, radius, angle, $"R {value}", reach);

    /// <summary>Draws a diameter: an arrow to the circle and the value, written after an Ø.</summary>
    /// <inheritdoc cref="RadiusDimension"/>
    public static Drawing DiameterDimension(
        this Drawing drawing, Vector2D centre, double radius, double angle, string value, double reach = 8) =>
        RoundDimension(drawing, centre, radius, angle, $"Ø {value}", reach);

    private static Drawing RoundDimension(
        Drawing drawing, Vector2D centre, double radius, double angle, string note, double reach)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        return drawing.Note(centre + Vector2D.Polar(radius, angle), centre + Vector2D.Polar(radius + reach, angle), note);
    }

    private static Vector2D Unit(Vector2D vector) => vector.Length > 0 ? (1 / vector.Length) * vector : new(1, 0);
}
