using CsCheck;
using Ringwright.Core.Gauges;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Tests.Gauges;

public class GaugeTests
{
    private const string Everything = "ABCDEFGHIJKLMNOPQRSTUVWXYZ 0123456789 .-°/,:+()";

    [Fact]
    public void Any_wedge_gauge_has_its_angle_fits_the_bed_and_is_a_closed_solid_of_its_volume() =>
        Gen.Select(Gen.Int[3, 360], Gen.Double[60, 400]).Sample((n, bed) => Holds(GaugeShape.Wedge(2 * Math.PI / n, "Ring: wedge gauge", $"Ring {n} {360.0 / n:0.###}°", bed), 2 * Math.PI / n, bed));

    [Fact]
    public void Any_fence_block_has_its_angle_fits_the_bed_and_is_a_closed_solid_of_its_volume() =>
        Gen.Select(Gen.Double[0.2, 80], Gen.Double[60, 400], Gen.Double[20, 1200]).Sample((degrees, bed, reach) =>
        {
            double angle = double.DegreesToRadians(degrees);
            Holds(GaugeShape.Block(angle, "Ring: fence block", $"Ring {degrees:0.###}°", reach, bed), angle, bed);
        });

    [Fact]
    public void The_end_of_a_block_is_square_to_its_edge()
    {
        var corners = GaugeShape.Block(double.DegreesToRadians(11.25), "", "11.25°", 300).Outline.Vertices;
        Assert.Equal(0, (corners[1] - corners[0]).Dot(corners[3] - corners[0]), 1e-12);
        Assert.Equal(0, (corners[1] - corners[0]).Dot(corners[2] - corners[1]), 1e-12);
        Assert.Equal(180, corners[1].X); // the rule's distance is longer than the bed
    }

    [Fact]
    public void Every_letter_is_written_without_cells_that_touch_at_a_corner_alone()
    {
        bool[,] cut = PanelLetters.Of(PanelLetters.Plain(Everything));
        for (int x = 0; x + 1 < cut.GetLength(0); x++)
            for (int y = 0; y + 1 < cut.GetLength(1); y++)
                Assert.False(cut[x, y] == cut[x + 1, y + 1] && cut[x + 1, y] == cut[x, y + 1] && cut[x, y] != cut[x + 1, y]);
        foreach (char letter in Everything.Where(c => c != ' '))
            Assert.Contains(PanelLetters.Of(letter.ToString()).Cast<bool>(), c => c);
        // No two letters look alike.
        string[] shapes = [.. Everything.Where(c => c != ' ').Select(c => string.Concat(PanelLetters.Of(c.ToString()).Cast<bool>().Select(b => b ? '#' : '.')))];
        Assert.Equal(shapes.Length, shapes.Distinct().Count());
    }

    [Fact]
    public void A_long_name_is_shortened_from_its_front_and_the_angle_stays()
    {
        GaugeSolid solid = GaugeSolid.Of(GaugeShape.Wedge(double.DegreesToRadians(120), "", "The great ring of my grandmother’s house 120°"));
        Assert.EndsWith("120°", solid.Written, StringComparison.Ordinal);
        Assert.True(solid.Written.Length < 15);
        Closed(solid);
    }

    [Fact]
    public void Text_of_other_scripts_becomes_dashes() => Assert.Equal("-A-B-", PanelLetters.Plain("環a環b🌳"));

    [Theory]
    [InlineData(0)]
    [InlineData(180)]
    [InlineData(double.NaN)]
    public void Angles_that_no_plate_has_are_refused(double degrees) =>
        Assert.Throws<BadInputException>(() => GaugeShape.Wedge(double.DegreesToRadians(degrees), "", "x"));

    [Theory]
    [InlineData(10)]
    [InlineData(double.PositiveInfinity)]
    public void Beds_that_cannot_be_are_refused(double bed) => Assert.Throws<BadInputException>(() => GaugeShape.Block(0.2, "", "x", 300, bed));

    private static void Holds(GaugeShape shape, double angle, double bed)
    {
        // The faces of the outline, measured anew.
        Assert.Equal(angle, shape.Measured(), 1e-9);
        Assert.Equal(angle, shape.InSinglePrecision, 2e-6); // half a unit in the last place of 400 mm, over the shortest face
        Assert.All(shape.Outline.Vertices, v => Assert.InRange(Math.Max(Math.Abs(v.X), 2 * Math.Abs(v.Y - (shape.Outline.Vertices.Max(o => o.Y) + shape.Outline.Vertices.Min(o => o.Y)) / 2)), 0, bed + 1e-9));
        var solid = GaugeSolid.Of(shape);
        Closed(solid);
        Assert.Equal(solid.ShapeVolume, solid.Volume, 1e-9 * solid.ShapeVolume);
        Assert.NotEmpty(solid.Written);
    }

    // Every edge is run through once in each direction, and no triangle is a line.
    private static void Closed(GaugeSolid solid)
    {
        HashSet<(int, int)> edges = [];
        for (int i = 0; i < solid.Triangles.Length; i += 3)
        {
            (int a, int b, int c) = (solid.Triangles[i], solid.Triangles[i + 1], solid.Triangles[i + 2]);
            Vector3D normal = (solid.Points[b] - solid.Points[a]).Cross(solid.Points[c] - solid.Points[a]);
            Assert.True(normal.Length > 1e-9);
            foreach ((int, int) edge in new[] { (a, b), (b, c), (c, a) }) Assert.True(edges.Add(edge), $"edge {edge} comes twice");
        }

        Assert.All(edges, edge => Assert.Contains((edge.Item2, edge.Item1), edges));
        Assert.Equal(solid.Points.Length, solid.Triangles.Distinct().Count());
        Assert.Equal(solid.Points.Length, solid.Points.Distinct().Count());
    }
}
