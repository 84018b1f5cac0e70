using System.Collections.Immutable;
using Ringwright.Core.Patterns;
using Ringwright.Core.Patterns.Pictures;
using Ringwright.Core.Patterns.Reports;
using Ringwright.Core.Timber;

namespace Ringwright.Core.Tests.Patterns;

public class PictureTests
{
    private static readonly PictureOptions AllWoods = new() { Woods = [.. Wood.All.Select(w => w.Name)], Background = "ash" };
    private static readonly PixelPicture MapleLeftWalnutRight = Pictures.Of(8, 4, (x, _) => Pictures.Swatch(x < 4 ? "maple" : "walnut"));

    [Fact]
    public void A_flat_picture_in_a_wood_s_colour_is_that_wood_everywhere() => Assert.All(Wood.All, wood =>
    {
        PixelPicture flat = Pictures.Of(5, 5, (_, _) => Pictures.Swatch(wood.Name));
        PicturedPattern result = Stretched(flat, Text.Of(12, 18, 24), AllWoods);
        // Two woods of the table may share a swatch.
        WoodCount only = Assert.Single(result.Counts.InAll);
        Assert.Equal((wood.Hex, 54), (Wood.Named(only.Wood).Hex, only.Pieces));
        Assert.Equal(0, result.MeanDifference, 1e-4);
    });

    // The right half of the picture goes counter-clockwise from its middle, which is a joint here: ring turned half a segment.
    [Fact]
    public void Halves_land_on_their_halves()
    {
        Lattice lattice = new([new(12, 0.5, 40, 10), new(8, 0.5, 60, 20)]);
        PicturedPattern result = Stretched(MapleLeftWalnutRight, lattice, AllWoods);
        Assert.Equal("wwwwmmmm\nwwwwwwmmmmmm", Text.Draw(result.Rows));
        Assert.All(result.Counts.PerRing, ring => Assert.Equal(ring[0].Pieces, ring[1].Pieces));
    }

    [Fact]
    public void From_inside_the_halves_change_sides()
    {
        PictureOptions inside = AllWoods with { Placement = new() { Sizing = PictureSizing.Stretch, FromInside = true } };
        PicturedPattern result = PictureReducer.Reduce(MapleLeftWalnutRight, new([new(12, 0.5, 40, 10)]), inside);
        Assert.Equal("mmmmmmwwwwww", Text.Draw(result.Rows));
    }

    [Fact]
    public void The_top_of_the_picture_is_on_the_top_ring()
    {
        PixelPicture picture = Pictures.Of(2, 6, (_, y) => Pictures.Swatch(y < 3 ? "holly" : "ebony"));
        Assert.Equal("hhh\nhhh\neee\neee", Text.Draw(Stretched(picture, Text.Even(4, 3), AllWoods).Rows));
    }

    [Fact]
    public void Where_it_is_transparent_there_is_background()
    {
        PixelPicture hole = Pictures.Of(4, 1, (x, _) => (Pictures.Swatch("walnut"), (byte)(x == 2 ? 0 : 255)));
        PicturedPattern result = Stretched(hole, new([new(4, 0.5, 40, 10)]), AllWoods with { Woods = ["walnut"], Background = "padauk" });
        Assert.Equal("pwww", Text.Draw(result.Rows));
    }

    // Mean radius 50, a quarter turn: 78.5 mm wide; 80 mm high. A square picture is 78.5 mm as a whole, 80 mm when it covers.
    [Theory]
    [InlineData(PictureSizing.Whole, 2)]
    [InlineData(PictureSizing.Around, 2)]
    [InlineData(PictureSizing.Cover, 2)]
    public void A_picture_stays_within_its_angle(PictureSizing sizing, int segments)
    {
        PixelPicture square = Pictures.Of(3, 3, (_, _) => Pictures.Swatch("walnut"));
        PictureOptions options = AllWoods with { Woods = ["walnut"], Background = "maple", Placement = new() { Sizing = sizing, Angle = Math.PI / 2, Middle = Math.PI / 2 } };
        PicturedPattern result = PictureReducer.Reduce(square, new(Enumerable.Repeat(new LatticeRing(8, 0.5, 50, 10), 8)), options);
        Assert.All(result.Rows, row => Assert.Equal("mwwmmmmm"[..8], Text.Draw([row])));
        Assert.All(result.Counts.PerRing, ring => Assert.Contains(new WoodCount("walnut", segments), ring));
    }

    // 4 × 1 pixels once around radius 50: 314 mm wide, 78.5 mm high on 160 mm: rings 5 to 12 of 16 show it in the middle.
    [Theory]
    [InlineData(0, 5, 12)]
    [InlineData(-30, 2, 9)]
    public void Proportions_are_kept_at_the_mean_radius(double lift, int first, int last)
    {
        PixelPicture wide = Pictures.Of(4, 1, (_, _) => Pictures.Swatch("walnut"));
        PictureOptions options = AllWoods with { Woods = ["walnut"], Background = "maple", Placement = new() { Lift = lift } };
        PicturedPattern result = PictureReducer.Reduce(wide, Text.Even(16, 6), options);
        for (int ring = 1; ring <= 16; ring++)
            Assert.Equal(ring >= first && ring <= last ? "walnut" : "maple", result.Rows[ring - 1][0]);
    }

    [Fact]
    public void The_report_says_how_far_and_where()
    {
        PixelPicture picture = Pictures.Of(4, 1, (x, _) => Pictures.Swatch(x == 3 ? "padauk" : "walnut"));
        PicturedPattern result = Stretched(picture, new([new(4, 0.5, 40, 10), new(4, 0.5, 40, 30)]), AllWoods with { Woods = ["walnut"] });
        double padauk = Core.Timber.Colour.WoodContrast.ContrastOf("padauk", "walnut").Difference;
        Assert.Equal(padauk, result.WorstDifference, 1e-9);
        Assert.Equal(padauk / 4, result.MeanDifference, 1e-9);
        Assert.Equal((1, 2), (result.WorstRing, result.WorstSegment)); // columns from the left stand at segments 3, 4, 1, 2
    }

    [Fact]
    public void Fitted_tones_use_the_darkest_and_the_lightest_wood()
    {
        PixelPicture greys = Pictures.Of(12, 1, (x, _) => new((byte)(100 + (5 * x)), (byte)(100 + (5 * x)), (byte)(100 + (5 * x))));
        PictureOptions woods = AllWoods with { Woods = ["ebony", "walnut", "oak", "holly"] };
        string plain = Text.Draw(Stretched(greys, new([new(12, 0.5, 40, 10)]), woods).Rows);
        string fitted = Text.Draw(Stretched(greys, new([new(12, 0.5, 40, 10)]), woods with { FitTones = true }).Rows);
        Assert.DoesNotContain('e', plain);
        Assert.True(fitted.Contains('e', StringComparison.Ordinal) && fitted.Contains('h', StringComparison.Ordinal), fitted);
    }

    [Fact]
    public void Nonsense_is_told_in_a_sentence()
    {
        PixelPicture picture = Pictures.Of(2, 2, (_, _) => Pictures.Swatch("oak"));
        Assert.StartsWith("picture: no segment would show any of it", Refusal(AllWoods with { Placement = new() { Lift = 5000 } }), StringComparison.Ordinal);
        Assert.StartsWith("picture, angle: 400 ° is out of range", Refusal(AllWoods with { Placement = new() { Angle = 400 * Math.PI / 180 } }), StringComparison.Ordinal);
        Assert.StartsWith("picture, woods: no wood is named", Refusal(AllWoods with { Woods = [] }), StringComparison.Ordinal);
        Assert.StartsWith("picture, background: a wood has no name", Refusal(AllWoods with { Background = " " }), StringComparison.Ordinal);
        Assert.Throws<BadInputException>(() => new PixelPicture(2, 2, ImmutableArray.Create<byte>(1, 2, 3)));
        Assert.Throws<BadInputException>(() => new PixelPicture(0, 2, []));

        string Refusal(PictureOptions options) => Assert.Throws<BadInputException>(() => PictureReducer.Reduce(picture, Text.Even(3, 6), options)).Message;
    }

    private static PicturedPattern Stretched(PixelPicture picture, Lattice lattice, PictureOptions options) =>
        PictureReducer.Reduce(picture, lattice, options with { Placement = new() { Sizing = PictureSizing.Stretch } });
}
