using Ringwright.Core.Geometry;

namespace Ringwright.Paper.Drawings;

/// <summary>
/// How a shape in the workshop's axes (mm, y upwards, angles counter-clockwise) lies on the paper (mm, y downwards, angles
/// clockwise as seen): scaled, turned and moved. Letters and lines keep their size; only positions are scaled.
/// </summary>
/// <param name="Origin">Where the shape's origin lies on the paper, mm.</param>
/// <param name="Scale">Paper over workshop: 1 for true scale, 0.5 for 1:2.</param>
/// <param name="Turn">Turned counter-clockwise as seen, radians.</param>
public readonly record struct Placement(Vector2D Origin, double Scale = 1, double Turn = 0)
{
    /// <summary>A point of the shape on the paper, mm.</summary>
    public Vector2D Point(Vector2D shape)
    {
        Vector2D turned = Scale * shape.Rotated(Turn);
        return Origin + new Vector2D(turned.X, -turned.Y);
    }

    /// <summary>Points of the shape on the paper, mm.</summary>
    public IReadOnlyList<Vector2D> Points(IEnumerable<Vector2D> shape) => [.. shape.Select(Point)];

    /// <summary>A direction of the shape on the paper, radians clockwise as seen.</summary>
    public double Angle(double shape) => -(shape + Turn);

    /// <summary>A polygon of the shape on the paper.</summary>
    public Outline Polygon(IEnumerable<Vector2D> shape) => Outline.Polygon(Points(shape));

    /// <summary>A circle of the shape on the paper.</summary>
    /// <param name="centre">Centre, mm.</param>
    /// <param name="radius">Radius, mm.</param>
    public Outline Circle(Vector2D centre, double radius) => Outline.Circle(Point(centre), Scale * radius);
}
