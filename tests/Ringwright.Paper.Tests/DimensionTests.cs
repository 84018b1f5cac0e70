using Ringwright.Core.Geometry;
using Ringwright.Paper.Dimensions;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Tests;

public class DimensionTests
{
    [Theory]
    [InlineData(10, 50, 60, 50, 0)] // to the right: read from below
    [InlineData(60, 50, 10, 50, 0)] // to the left: not upside down
    [InlineData(50, 60, 50, 10, -90)] // up: read from the right
    [InlineData(50, 10, 50, 60, -90)] // down: read from the right
    public void A_value_is_read_from_below_or_from_the_right(double ax, double ay, double bx, double by, double degrees)
    {
        Mark.Text value = Value(new Drawing(100, 100).Dimension(new(ax, ay), new(bx, by), 8, "50"));
        Assert.Equal(degrees, value.Angle * 180 / Math.PI, 1e-9);
    }

    [Fact]
    public void The_line_lies_left_of_the_way_from_first_to_second_point_and_right_of_it_with_a_negative_offset()
    {
        Assert.True(Value(new Drawing(100, 100).Dimension(new(10, 50), new(60, 50), 8, "50")).At.Y < 50 - 8);
        Assert.InRange(Value(new Drawing(100, 100).Dimension(new(10, 50), new(60, 50), -8, "50")).At.Y, 50, 50 + 8);
    }

    [Fact]
    public void A_value_without_room_goes_beyond_the_second_point()
    {
        Box box = new Drawing(100, 100).Dimension(new(10, 50), new(12, 50), 8, "1 63/64\"").TextBoxes.Single().Box;
        Assert.True(box.X > 12);
    }

    [Theory]
    [InlineData(30, 15)]
    [InlineData(20, -90)]
    [InlineData(60, 5)]
    public void The_arc_of_an_angle_has_its_radius_and_the_value_stands_clear_outside(double radius, double degrees)
    {
        Vector2D apex = new(100, 100);
        double sweep = degrees * Math.PI / 180;
        Drawing drawing = new Drawing(200, 200).AngleDimension(apex, radius, from: 1, sweep, $"{degrees}°", edge: 0);
        Segment.Arc[] arcs = [.. drawing.Marks.OfType<Mark.Stroke>().SelectMany(s => s.Outline.Contours)
            .SelectMany(c => c.Segments).OfType<Segment.Arc>()];
        Assert.All(arcs, arc => Assert.Equal(apex, arc.Centre));
        Assert.True(Math.Abs(arcs.Sum(arc => arc.Sweep)) >= Math.Abs(sweep) - 1e-12);
        Mark.Text value = Value(drawing);
        Assert.Equal(0, value.Angle);
        Assert.True((value.At - apex).Length > radius + 1);
    }

    [Fact]
    public void A_note_stands_on_the_side_away_from_its_target_and_radius_and_diameter_say_what_they_are()
    {
        Assert.True(Only(new Drawing(99, 99).Note(new(50, 50), new(70, 40), "up")).Box.X > 70);
        Assert.True(Only(new Drawing(99, 99).Note(new(50, 50), new(30, 40), "up", LeaderEnd.Dot)).Box.Right < 30);
        Assert.Equal("R 12.7", Only(new Drawing(99, 99).RadiusDimension(new(50, 50), 12.7, 0.5, "12.7")).Text);
        Assert.Equal("Ø 25.4", Only(new Drawing(99, 99).DiameterDimension(new(50, 50), 12.7, 0.5, "25.4")).Text);
    }

    [Theory]
    [InlineData(-7, 40)]
    [InlineData(7, 3)]
    public void An_upright_distance_has_its_value_level_on_the_side_away_from_its_points(double offset, double length)
    {
        Drawing drawing = new Drawing(100, 100).UprightDimension(new(50, 30), new(50, 30 + length), offset, "≈ 2 in\n(2.001)");
        Mark.Text[] lines = [.. drawing.Marks.OfType<Mark.Text>()];
        Assert.Equal(2, lines.Length);
        Assert.All(lines, line => Assert.Equal(0, line.Angle));
        Assert.All(lines, line => Assert.True(offset < 0 ? line.Bounds.Right < 50 + offset : line.Bounds.X > 50 + offset));
        Assert.Equal(30 + (length / 2), lines.Average(line => line.At.Y), 1e-9);
    }

    private static (string Text, Box Box) Only(Drawing drawing) => drawing.TextBoxes.Single();

    private static Mark.Text Value(Drawing drawing) => drawing.Marks.OfType<Mark.Text>().Single();
}
