using CsCheck;
using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Output;
using SkiaSharp;

namespace Ringwright.Paper.Tests;

public class DrawingTests
{
    [Fact]
    public void A_placement_turns_the_workshops_axes_onto_the_paper()
    {
        Placement place = new(new(100, 100), Scale: 2, Turn: Math.PI / 2);
        AssertNear(new(100, 80), place.Point(new(10, 0))); // +x of the workshop, turned to point up the paper
        AssertNear(new(80, 100), place.Point(new(0, 10)));
    }

    [Fact]
    public void Distances_and_directions_survive_placement() =>
        Gen.Select(Gen.Double[-50, 50], Gen.Double[-50, 50], Gen.Double[0.01, 10], Gen.Double[-7, 7], Gen.Double[-3, 3]).Sample(
            (x, y, scale, turn, angle) =>
            {
                Placement place = new(new(x, y), scale, turn);
                Vector2D from = new(y, x), to = from + Vector2D.AtAngle(angle);
                Vector2D drawn = place.Point(to) - place.Point(from);
                Assert.Equal(scale, drawn.Length, 1e-9);
                AssertNear(Vector2D.Polar(scale, place.Angle(angle)), drawn);
            });

    [Fact]
    public void An_arc_ends_where_it_should_and_its_points_lie_on_it()
    {
        Vector2D centre = new(40, 40);
        Outline arc = Outline.Arc(centre, 25, from: 0.3, sweep: -5);
        IReadOnlyList<Vector2D> points = arc.Flattened().Single();
        AssertNear(centre + Vector2D.Polar(25, 0.3 - 5), points[^1]);
        Assert.All(points, p => Assert.Equal(25, (p - centre).Length, 1e-9));
        Assert.All(points.Zip(points.Skip(1)), pair => Assert.True((0.5 * (pair.First + pair.Second) - centre).Length > 25 - 0.0101));
    }

    [Fact]
    public void Text_boxes_are_recorded_through_placed_drawings_and_turns()
    {
        Drawing child = new Drawing(50, 50).Text("H", new(10, 10), TypeScale.Title, Anchor.Left, -Math.PI / 2);
        Box box = new Drawing(100, 100).Place(child, new(20, 30), 2, 1).TextBoxes.Single().Box;
        Assert.Equal(20 + (2 * (10 - 5)), box.X, 1e-9); // turned a quarter: the top of the letter points left
        Assert.Equal(30 + 10, box.Bottom, 1e-9);
    }

    [Fact]
    public void A_picture_of_dots_shows_what_was_drawn()
    {
        using MemoryStream stream = new();
        PngWriter.Write(new Drawing(25.4, 50.8).Fill(Outline.Rectangle(new(0, 0, 12.7, 50.8)), Colour.Black), 100, stream);
        using SKBitmap bitmap = SKBitmap.Decode(stream.ToArray());
        Assert.Equal((100, 200), (bitmap.Width, bitmap.Height));
        Assert.Equal(SKColors.Black, bitmap.GetPixel(25, 100));
        Assert.Equal(SKColors.White, bitmap.GetPixel(75, 100));
        Assert.Throws<ArgumentOutOfRangeException>(() => PngWriter.Write(new Drawing(1e6, 10), 300, stream));
    }

    [Fact]
    public void Captions_are_dark_enough_to_read()
    {
        // WCAG 2.2, success criterion 1.4.6: contrast of at least 7 to 1; relative luminance as defined there.
        double level = Colour.Soft.Red / 255.0;
        double luminance = Math.Pow((level + 0.055) / 1.055, 2.4);
        Assert.True(1.05 / (luminance + 0.05) >= 7);
    }

    private static void AssertNear(Vector2D expected, Vector2D actual) =>
        Assert.True((expected - actual).Length < 1e-9, $"{expected} is not {actual}");
}
