using CsCheck;
using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Tests;

public class HatchingTests
{
    private static readonly Gen<double> Coordinate = Gen.Double[-40, 40];

    [Fact]
    public void Lines_lie_inside_a_triangle_and_cover_its_area() =>
        Gen.Select(Coordinate, Coordinate, Coordinate, Coordinate, Coordinate, Coordinate, Gen.Double[0, 3.2]).Sample(
            (ax, ay, bx, by, cx, cy, angle) =>
            {
                Vector2D a = new(ax, ay), b = new(bx, by), c = new(cx, cy);
                const double Spacing = 0.05;
                IReadOnlyList<(Vector2D From, Vector2D To)> lines = Lines(Outline.Polygon([a, b, c]), new("h", [new(angle, Spacing)]));
                Assert.All(lines, line => Assert.True(Inside(line.From, a, b, c) && Inside(line.To, a, b, c)));
                // Cavalieri: total length times spacing is the area, within a line's width along the edge.
                double area = Math.Abs((b - a).Cross(c - a)) / 2;
                double edge = (b - a).Length + (c - b).Length + (a - c).Length;
                Assert.Equal(area, Spacing * lines.Sum(line => (line.To - line.From).Length), Spacing * edge);
            },
            iter: 50);

    [Fact]
    public void A_hole_stays_empty()
    {
        Outline ring = Outline.Join([Outline.Circle(new(50, 50), 30), Outline.Circle(new(50, 50), 10)]);
        IReadOnlyList<(Vector2D From, Vector2D To)> lines = Lines(ring, Hatch.Of(1));
        Assert.NotEmpty(lines);
        Assert.All(lines, line => Assert.True((0.5 * (line.From + line.To) - new Vector2D(50, 50)).Length >= 10 - 0.02));
    }

    [Fact]
    public void Dashes_have_their_length_and_each_pattern_its_own_look()
    {
        Outline square = Outline.Rectangle(new(0, 0, 20, 20));
        Hatch dashed = Hatch.All.Single(h => h.Name == "dashed");
        Assert.All(Lines(square, dashed), line => Assert.True((line.To - line.From).Length <= dashed.Lines[0].Dash + 1e-9));
        Assert.Empty(Lines(square, Hatch.Plain));
        string[] looks = [.. Hatch.All.Select(h => string.Join(';', Lines(square, h)))];
        Assert.Equal(looks.Length, looks.Distinct().Count());
        Assert.Same(Hatch.All[1], Hatch.Of(1 + Hatch.All.Count));
    }

    private static IReadOnlyList<(Vector2D From, Vector2D To)> Lines(Outline outline, Hatch hatch) =>
    [
        .. new Drawing(100, 100).Hatch(outline, hatch).Marks.OfType<Mark.Stroke>().SelectMany(stroke => stroke.Outline.Contours)
            .Select(contour => (contour.Start, ((Segment.Line)contour.Segments[0]).End)),
    ];

    private static bool Inside(Vector2D p, Vector2D a, Vector2D b, Vector2D c)
    {
        const double Slack = 1e-6;
        double[] sides = [(b - a).Cross(p - a), (c - b).Cross(p - b), (a - c).Cross(p - c)];
        return sides.All(s => s >= -Slack) || sides.All(s => s <= Slack);
    }
}
