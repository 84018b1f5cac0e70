using Ringwright.Core.Patterns;
using Ringwright.Core.Patterns.Combinators;
using Ringwright.Core.Patterns.Generators;
using Ringwright.Core.Patterns.Reports;

namespace Ringwright.Core.Tests.Patterns;

public class ReportTests
{
    [Fact]
    public void Pieces_are_counted_per_ring_and_in_all()
    {
        var counts = WoodCounts.Of(new Repeat(["maple", "Maple", "walnut"]).On(Text.Of(6, 4)));
        Assert.Equal([new("maple", 7), new("walnut", 3)], counts.InAll);
        Assert.Equal([new("maple", 4), new("walnut", 2)], counts.PerRing[0]);
        Assert.Equal([new("maple", 3), new("walnut", 1)], counts.PerRing[1]);
    }

    // Ring 1 is maple; ring 2 alternates wenge and ebony over it; ring 3 is maple again.
    [Fact]
    public void The_weakest_neighbours_come_first_with_their_ring()
    {
        Lattice lattice = Text.Even(3, 6);
        var rows = new Banded(new Layers(["maple"]), new Repeat(["wenge", "ebony"]), 2, 2).On(lattice);
        var pairs = NeighbourContrast.Of(lattice, rows);
        Assert.Equal(3, pairs.Length);
        Assert.Equal(("ebony", "wenge", 2, 6), (pairs[0].Contrast.First, pairs[0].Contrast.Second, pairs[0].Ring, pairs[0].Joints));
        Assert.Contains("hard to tell apart", pairs[0].Sentence, StringComparison.Ordinal);
        Assert.Equal([6, 6], pairs.Skip(1).Select(p => p.Joints));
        Assert.All(pairs.Skip(1), p => Assert.Equal(1, p.Ring));
    }

    // Brick-laid, each segment lies on two.
    [Fact]
    public void Turned_rings_touch_twice_as_many()
    {
        Lattice lattice = Text.BrickLaid(2, 6);
        Assert.Equal(12, Assert.Single(NeighbourContrast.Of(lattice, new Layers(["maple", "walnut"]).On(lattice))).Joints);
    }

    [Fact]
    public void Numbers_that_make_no_pattern_are_told()
    {
        Refused("diamonds, width: 40 is out of range; give 1 to 12.", new Diamonds(40, 2, "oak", "ash"));
        Refused("band: rings 2 to 9 cannot be found among 3; count from the bottom, from 1 to 3, the lower one first.", new Banded(new Layers(["oak"]), new Layers(["ash"]), 2, 9));
        Refused("repeat: no wood is named; name at least one.", new Rotated(new Repeat([]), 1));
        Refused("spiral: a wood has no name; write its name, such as \"maple\".", new Spiral(["oak", ""], 1));
        Refused("zigzag, period: 0 segments is out of range; give 1 to 12 segments.", new Zigzag(["oak"], 2, 0));
        Refused("drawn pattern, row 4: there are 4 rows for 3 rings; take rows away or add rings.", new Drawn([["oak"], ["oak"], ["oak"], ["oak"]]));
        Refused("spiral, step: NaN segments is out of range; give -12 to 12 segments.", new Spiral(["oak"], double.NaN));
        Assert.Equal("ring 2: 2 segments cannot make a ring; 3 to 360 can.", Assert.Throws<BadInputException>(() => Text.Of(12, 2)).Message);
        Assert.Throws<BadInputException>(() => new Lattice([]));

        static void Refused(string sentence, Pattern pattern) => Assert.Equal(sentence, Assert.Throws<BadInputException>(() => pattern.On(Text.Even(3, 12))).Message);
    }
}
