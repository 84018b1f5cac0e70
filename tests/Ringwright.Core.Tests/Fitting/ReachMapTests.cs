using CsCheck;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Tests.Fitting;

public class ReachMapTests
{
    // Common practice, no source: 12 to 36 segments in discs of 12 to 25 mm are made; a rim edge of 1/16 in (36 at 19 mm) is near
    // the limit of what is sanded by hand.
    [Theory]
    [InlineData(12, 12)]
    [InlineData(18, 25.4)]
    [InlineData(24, 19)]
    [InlineData(36, 19)]
    [InlineData(36, 25)]
    public void What_is_commonly_made_is_within_reach(int segments, double diameter) =>
        Assert.Equal(ReachStop.None, ReachMap.Cell(Shop.Starting, segments, diameter).Stop);

    [Theory]
    [InlineData(72, 12, ReachStop.SandedAway, 0.3)]
    [InlineData(48, 12, ReachStop.TooSmallToHold, 0.02)]
    public void Too_small_is_told_with_its_first_reason(int segments, double diameter, ReachStop stop, double sanding)
    {
        Shop shop = Shop.Starting with { Sanding = Shop.Starting.Sanding with { PerFace = Length.FromMillimetres(sanding) } };
        Assert.Equal(stop, ReachMap.Cell(shop, segments, diameter).Stop);
    }

    [Fact]
    public void Every_cell_has_numbers_and_a_sentence()
    {
        ReachMap map = ReachMap.Of(Shop.Starting, [.. Enumerable.Range(3, 40)], [.. Enumerable.Range(1, 60).Select(d => 5.0 * d)]);
        Assert.Equal(2400, map.Cells.Length);
        Assert.All(map.Cells, c =>
        {
            Assert.True(double.IsFinite(c.RimEdge + c.SawnTip + c.HoldingSize + c.Required + c.Achieved + c.Chance + c.Dust));
            Assert.InRange(c.Chance, 0, 1);
            Assert.NotEmpty(ReachMap.Say(c, map.Shop).In(MeasureStyle.Millimetres));
        });
        Assert.Equal((12, 30.0), (map[9, 5].Segments, map[9, 5].Diameter));
    }

    [Fact]
    public void A_larger_disc_of_as_many_segments_is_never_harder_to_hold() =>
        Gen.Select(Gen.Int[6, 60], Gen.Double[8, 100]).Sample((n, d) =>
        {
            ReachCell small = ReachMap.Cell(Shop.Starting, n, d);
            ReachCell large = ReachMap.Cell(Shop.Starting, n, d * 1.2);
            return large.RimEdge > small.RimEdge && large.Dust < small.Dust && large.HoldingSize > small.HoldingSize;
        });

    // Sanding, not sawing, limits how small one can go (common practice, no source): at equal relative size the spread from uneven
    // sanding grows as the face shrinks while the spread of the saw does not.
    [Fact]
    public void Small_faces_are_turned_more_by_sanding() =>
        Assert.True(ReachMap.Cell(Shop.Starting, 24, 12).Achieved > 1.2 * ReachMap.Cell(Shop.Starting, 24, 120).Achieved);

    [Fact]
    public void Better_hands_reach_further()
    {
        Shop rough = Shop.Starting with { Hands = new() { AngleSd = Angle.FromDegrees(0.6), SettingSd = Angle.FromDegrees(0.3) } };
        Assert.Equal(ReachStop.ProbablyGapes, ReachMap.Cell(rough, 12, 40).Stop);
        Assert.Equal(ReachStop.None, ReachMap.Cell(Shop.Starting, 12, 40).Stop);
    }

    [Theory]
    [InlineData(2, 20.0)]
    [InlineData(24, -1.0)]
    [InlineData(24, double.NaN)]
    public void Refuses_sizes_that_cannot_be(int segments, double diameter) =>
        Assert.Throws<BadInputException>(() => ReachMap.Of(Shop.Starting, [segments], [diameter]));
}
