using Ringwright.Core.Geometry;

namespace Ringwright.Paper.Drawings;

/// <summary>One step along a contour.</summary>
public abstract record Segment
{
    private Segment()
    {
    }

    /// <summary>A straight line to <paramref name="End"/>, mm.</summary>
    public sealed record Line(Vector2D End) : Segment;

    /// <summary>
    /// A circular arc around <paramref name="Centre"/> (mm) from where the contour is, through <paramref name="Sweep"/>
    /// radians, positive clockwise as seen (from +x to +y, y downwards); at most a half turn.
    /// </summary>
    public sealed record Arc(Vector2D Centre, double Sweep) : Segment;
}

/// <summary>A chain of segments, mm.</summary>
/// <param name="Start">Where it begins.</param>
/// <param name="Segments">Its steps.</param>
/// <param name="Closed">Whether it runs back to its start.</param>
public sealed record Contour(Vector2D Start, IReadOnlyList<Segment> Segments, bool Closed);

/// <summary>
/// A shape on the paper: one or more contours, mm, y downwards. Filled by the even-odd rule, so that a contour inside
/// another is a hole.
/// </summary>
public sealed record Outline(IReadOnlyList<Contour> Contours)
{
    /// <summary>A straight line.</summary>
    public static Outline Line(Vector2D from, Vector2D to) => Polyline([from, to]);

    /// <summary>An open chain of straight lines.</summary>
    public static Outline Polyline(IReadOnlyList<Vector2D> points) => new([Chain(points, closed: false)]);

    /// <summary>A closed polygon.</summary>
    public static Outline Polygon(IReadOnlyList<Vector2D> points) => new([Chain(points, closed: true)]);

    /// <summary>A rectangle.</summary>
    public static Outline Rectangle(Box box) => Polygon(
        [box.TopLeft, new(box.Right, box.Y), new(box.Right, box.Bottom), new(box.X, box.Bottom)]);

    /// <summary>A circle.</summary>
    /// <param name="centre">Centre, mm.</param>
    /// <param name="radius">Radius, mm.</param>
    public static Outline Circle(Vector2D centre, double radius) =>
        new([new(centre + new Vector2D(radius, 0), [new Segment.Arc(centre, Math.PI), new Segment.Arc(centre, Math.PI)], true)]);

    /// <summary>An arc of a circle.</summary>
    /// <param name="centre">Centre, mm.</param>
    /// <param name="radius">Radius, mm.</param>
    /// <param name="from">Angle of its start, radians from +x, clockwise as seen.</param>
    /// <param name="sweep">Angle it covers, radians, positive clockwise as seen.</param>
    public static Outline Arc(Vector2D centre, double radius, double from, double sweep)
    {
        int parts = Math.Max(1, (int)Math.Ceiling(Math.Abs(sweep) / Math.PI));
        Segment[] segments = [.. Enumerable.Repeat(new Segment.Arc(centre, sweep / parts), parts)];
        return new([new(centre + Vector2D.Polar(radius, from), segments, Closed: false)]);
    }

    /// <summary>The shapes as one, drawn with one pen; inner contours become holes.</summary>
    public static Outline Join(IEnumerable<Outline> outlines) => new([.. outlines.SelectMany(o => o.Contours)]);

    /// <summary>Where an arc that starts at <paramref name="start"/> ends, mm.</summary>
    public static Vector2D EndOf(Vector2D start, Segment segment) => segment switch
    {
        Segment.Line line => line.End,
        Segment.Arc arc => arc.Centre + (start - arc.Centre).Rotated(arc.Sweep),
        _ => throw new ArgumentOutOfRangeException(nameof(segment)),
    };

    /// <summary>Each contour as points, arcs divided so that no chord is more than 0.01 mm off its arc.</summary>
    public IEnumerable<IReadOnlyList<Vector2D>> Flattened() => Contours.Select(Flatten);

    private static Contour Chain(IReadOnlyList<Vector2D> points, bool closed) =>
        new(points[0], [.. points.Skip(1).Select(p => new Segment.Line(p))], closed);

    private static IReadOnlyList<Vector2D> Flatten(Contour contour)
    {
        List<Vector2D> points = [contour.Start];
        foreach (Segment segment in contour.Segments)
        {
            Vector2D start = points[^1];
            if (segment is Segment.Arc arc)
                points.AddRange(Inside(start, arc));
            points.Add(EndOf(start, segment));
        }

        return points;
    }

    private static IEnumerable<Vector2D> Inside(Vector2D start, Segment.Arc arc)
    {
        const double Sagitta = 0.01;
        double radius = (start - arc.Centre).Length;
        double step = 2 * Math.Acos(Math.Max(0, 1 - (Sagitta / Math.Max(radius, Sagitta))));
        int parts = Math.Max(1, (int)Math.Ceiling(Math.Abs(arc.Sweep) / step));
        return Enumerable.Range(1, parts - 1)
            .Select(i => arc.Centre + (start - arc.Centre).Rotated(arc.Sweep * i / parts));
    }
}
