using Ringwright.Core.Patterns.Generators;

namespace Ringwright.Core.Tests.Patterns;

/// <summary>Small cases that a person can check by eye; how they are written: <see cref="Text"/>. m maple, w walnut, p padauk.</summary>
public class GeneratorTests
{
    [Fact]
    public void Repeat_starts_anew_on_each_ring() => Text.Shows(
        """
        mwpmwpmwp
        mwpmwp
        """,
        new Repeat(["maple", "walnut", "padauk"]), Text.Of(6, 9));

    [Fact]
    public void Repeat_on_columns_stands_above_itself_on_rings_of_other_counts() => Text.Shows(
        """
        mwwmmwwmmwwm
        mwmwmw
        """,
        new Repeat(["maple", "walnut"], Columns: 6), Text.Of(6, 12));

    [Fact]
    public void Layers_go_up() => Text.Shows(
        """
        mmm
        www
        www
        mmm
        """,
        new Layers(["maple", "walnut", "walnut"]), Text.Even(4, 3));

    [Fact]
    public void Checker_has_fields() => Text.Shows(
        """
        mmwwmmww
        wwmmwwmm
        wwmmwwmm
        mmwwmmww
        mmwwmmww
        """,
        new Checker("maple", "walnut", Wide: 2, High: 2), Text.Even(5, 8));

    [Fact]
    public void Spiral_moves_on_by_whole_segments() => Text.Shows(
        """
        mmwmmw
        wmmwmm
        mwmmwm
        mmwmmw
        """,
        new Spiral(["maple", "maple", "walnut"], Step: -1), Text.Even(4, 6));

    // Half a segment on brick-laid rings: each ring already stands half a segment on, so its sequence starts at its own first
    // segment on rings 1 and 2, one segment later on rings 3 and 4.
    [Fact]
    public void Spiral_by_half_segments_runs_on_over_brick_laid_rings() => Text.Shows(
        """
        pmwpmw
        pmwpmw
        mwpmwp
        mwpmwp
        """,
        new Spiral(["maple", "walnut", "padauk"], Step: 0.5), Text.BrickLaid(4, 6));

    // 60° a ring on 6 columns is one column; on the ring of 12 a segment over two columns takes the further one.
    [Fact]
    public void Spiral_by_degrees_goes_over_changing_counts() => Text.Shows(
        """
        mmmwwmmmmwwm
        mwmmwm
        wmmwmm
        """,
        Spiral.ByDegrees(["walnut", "maple", "maple"], 60, 6), Text.Of(6, 6, 12));

    [Fact]
    public void Diamonds_of_odd_size_end_in_points() => Text.Shows(
        """
        mmwmmmmwmm
        mwpwmmwpwm
        wpppwwpppw
        mwpwmmwpwm
        mmwmmmmwmm
        """,
        new Diamonds(5, 5, "padauk", "maple", "walnut"), Text.Even(5, 10));

    [Fact]
    public void Diamonds_of_even_size_end_in_pairs() => Text.Shows(
        """
        mppm
        pppp
        pppp
        mppm
        """,
        new Diamonds(4, 4, "padauk", "maple"), Text.Even(4, 4));

    // On brick-laid rings the middles lie half a column over: three segments are as wide as the diamond there, then one.
    [Fact]
    public void Diamonds_on_brick_laid_rings_follow_the_real_places() => Text.Shows(
        """
        mpmm
        pppp
        pppm
        mppm
        """,
        new Diamonds(4, 4, "padauk", "maple"), Text.BrickLaid(4, 4));

    [Fact]
    public void Zigzag_bands_repeat_upwards() => Text.Shows(
        """
        wmwmwmwm
        mwmwmwmw
        wmwmwmwm
        mwmwmwmw
        """,
        new Zigzag(["maple", "walnut"], Rise: 2, Period: 4), Text.Even(4, 8));

    [Fact]
    public void A_single_zigzag_lies_on_its_background() => Text.Shows(
        """
        mmmpmmmmmpmm
        mmpppmmmpppm
        mppmppmppmpp
        ppmmmpppmmmp
        pmmmmmpmmmmm
        """,
        new Zigzag(["padauk"], Rise: 3, Period: 6, BandHeight: 2, Background: "maple"), Text.Even(5, 12));

    [Fact]
    public void What_is_drawn_is_filled_by_angle_on_other_counts() => Text.Shows(
        """
        mwwppppwwm
        mwpwp
        """,
        new Drawn([["maple", "walnut", "padauk", "walnut", "padauk"], ["maple", "walnut", "padauk", "padauk", "walnut"]]), Text.Of(5, 10));

    [Fact]
    public void A_jump_at_the_start_is_said()
    {
        string doubt = Assert.Single(new Repeat(["maple", "walnut", "padauk"]).Doubts(Text.Of(6, 8, 8)));
        Assert.Equal("Ring 2: 8 segments do not divide evenly by 3 woods: where the pattern meets its start it jumps.", doubt);
        Assert.Contains("2.4 diamonds", Assert.Single(new Diamonds(5, 3, "padauk", "maple").Doubts(Text.Even(3, 12))), StringComparison.Ordinal);
        Assert.Empty(new Diamonds(5, 3, "padauk", "maple").Doubts(Text.Even(3, 20)));
    }

    [Fact]
    public void A_ring_too_coarse_for_the_pattern_is_said()
    {
        string doubt = Assert.Single(new Spiral(["maple", "walnut"], 1).Doubts(Text.Of(12, 24, 24)));
        Assert.Equal("Ring 1: its 12 segments show only 12 of the pattern's 24 columns.", doubt);
    }

    [Fact]
    public void Each_describes_itself()
    {
        Assert.Equal("maple and walnut in turn around each ring.", new Repeat(["maple", "walnut"]).Describe());
        Assert.Equal("A spiral of maple, walnut and padauk, each ring 0.5 segments (7.5°) further clockwise, counted on 24 columns around.", new Spiral(["maple", "walnut", "padauk"], -0.5, 24).Describe());
        Assert.Equal("Diamonds of padauk bordered with walnut on maple, 5 segments wide and 1 ring high.", new Diamonds(5, 1, "padauk", "maple", "walnut").Describe());
    }
}
