using CsCheck;
using Ringwright.Core.Patterns;
using Ringwright.Core.Patterns.Combinators;
using Ringwright.Core.Patterns.Generators;

namespace Ringwright.Core.Tests.Patterns;

public class CombinatorTests
{
    private static readonly Repeat Three = new(["maple", "walnut", "padauk"]);

    [Fact]
    public void Rotated_goes_counter_clockwise() => Text.Shows("pmwpmw", new Rotated(Three, 1), Text.Even(1, 6));

    [Fact]
    public void Turned_by_degrees_takes_the_segment_at_the_angle() => Text.Shows("pmwpmw", new Turned(Three, 60), Text.Even(1, 6));

    [Fact]
    public void Shifted_moves_each_ring_further() => Text.Shows(
        """
        wpmwpm
        pmwpmw
        mwpmwp
        """,
        new Shifted(Three, 1), Text.Even(3, 6));

    [Fact]
    public void Raised_moves_up() => Text.Shows(
        """
        mmm
        www
        """,
        new Raised(new Layers(["maple", "walnut"]), 1), Text.Even(2, 3));

    [Fact]
    public void Reversed_mirrors_in_the_first_segment() => Text.Shows("mpwmpw", new Reversed(Three), Text.Even(1, 6));

    // Its first segment stands half a segment on: the mirror lies in a joint.
    [Fact]
    public void Reversed_on_a_turned_ring_mirrors_in_the_joint() =>
        Text.Shows("pwmpwm", new Reversed(Three), new Lattice([new(6, 0.5, 50, 10)]));

    [Fact]
    public void Upside_down_swaps_top_and_bottom() => Text.Shows(
        """
        mmm
        www
        ppp
        """,
        new UpsideDown(new Layers(["maple", "walnut", "padauk"])), Text.Even(3, 3));

    [Theory]
    [InlineData(2, 12, "mwpmpwmwpmpw")]
    [InlineData(2, 10, "mwppwmwppw")]
    [InlineData(3, 12, "mwpwmwpwmwpw")]
    public void Mirrored_goes_there_and_back(int times, int segments, string expected) => Text.Shows(expected, new Mirrored(Three, times), Text.Even(1, segments));

    [Fact]
    public void A_band_lies_over_its_rings_and_starts_at_its_own_bottom() => Text.Shows(
        """
        mmmm
        wpwp
        pwpw
        mmmm
        """,
        new Banded(new Layers(["maple"]), new Checker("padauk", "walnut"), 2, 3), Text.Even(4, 4));

    [Fact]
    public void A_band_upside_down_is_turned_within_itself() => Text.Shows(
        """
        mmm
        ppp
        www
        mmm
        """,
        new Banded(new Layers(["maple"]), new UpsideDown(new Layers(["padauk", "walnut"])), 2, 3), Text.Even(4, 3));

    [Fact]
    public void Every_cell_has_one_of_the_woods() => AnyCase.Sample(
        (pattern, lattice) =>
        {
            var rows = pattern.On(lattice);
            return rows.Length == lattice.Rings.Length
                && rows.Zip(lattice.Rings).All(x => x.First.Length == x.Second.Segments)
                && rows.All(r => r.All(w => w is "maple" or "walnut" or "padauk"));
        },
        iter: 500);

    [Fact]
    public void Rotating_adds_up_in_any_order() => Gen.Select(AnyPattern, AnyLattice, Gen.Int[-40, 40], Gen.Int[-40, 40]).Sample(t =>
    {
        (Pattern pattern, Lattice lattice, int a, int b) = t;
        string sum = Text.Draw(new Rotated(pattern, a + b), lattice);
        return sum == Text.Draw(new Rotated(new Rotated(pattern, a), b), lattice) && sum == Text.Draw(new Rotated(new Rotated(pattern, b), a), lattice);
    });

    [Fact]
    public void Mirrored_twice_is_the_same() => AnyCase.Sample((pattern, lattice) =>
        Text.Draw(new Reversed(new Reversed(pattern)), lattice) == Text.Draw(pattern, lattice)
        && Text.Draw(new UpsideDown(new UpsideDown(pattern)), lattice) == Text.Draw(pattern, lattice));

    [Fact]
    public void A_full_turn_changes_nothing() => AnyCase.Sample((pattern, lattice) =>
        Text.Draw(new Turned(pattern, 360), lattice) == Text.Draw(pattern, lattice));

    [Fact]
    public void What_was_drawn_is_drawn_again() => AnyCase.Sample((pattern, lattice) =>
        Text.Draw(new Drawn(pattern.On(lattice)), lattice) == Text.Draw(pattern, lattice));

    private static Gen<Lattice> AnyLattice => Gen.Select(Gen.Int[3, 36], Gen.Double[-2, 2], Gen.Int[0, 2].Select(q => q / 4.0), Gen.Bool,
        (n, free, common, isFree) => new LatticeRing(n, isFree ? free : common, 40, 8)).Array[1, 8].Select(rings => new Lattice(rings));

    // Widths stay within the three columns that every ring has.
    private static Gen<Pattern> AnyPattern => Gen.OneOf<Pattern>(
        Gen.Const<Pattern>(Three),
        Gen.Int[1, 40].Select(c => (Pattern)new Repeat(Three.Woods, c)),
        Gen.Const<Pattern>(new Layers(Three.Woods)),
        Gen.Int[1, 3].Select(w => (Pattern)new Checker("maple", "padauk", w)),
        Gen.Select(Gen.Double[-3, 3], Gen.Int[3, 40], (s, c) => (Pattern)new Spiral(Three.Woods, s, c)),
        Gen.Select(Gen.Int[1, 3], Gen.Int[1, 2], (w, h) => (Pattern)new Diamonds(w, h, "padauk", "maple", "walnut")),
        Gen.Select(Gen.Double[0, 5], Gen.Double[1, 3], Gen.Double[0.1, 3], (a, p, b) => (Pattern)new Zigzag(["maple", "walnut"], a, p, b, "padauk")),
        Gen.Int[1, 3].Select(t => (Pattern)new Mirrored(new Spiral(Three.Woods, 1), t)));

    private static Gen<(Pattern, Lattice)> AnyCase => Gen.Select(AnyPattern, AnyLattice);
}
