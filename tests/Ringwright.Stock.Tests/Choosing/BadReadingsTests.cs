using Ringwright.Core;
using Ringwright.Core.Fitting;
using Ringwright.Stock.Choosing;

namespace Ringwright.Stock.Tests.Choosing;

public class BadReadingsTests
{
    private static readonly WedgeChoiceInput Good = Readings.Make(6, 2, 1, ["maple", "walnut"]);

    private static string Refusal(WedgeChoiceInput input) =>
        Assert.Throws<BadInputException>(() => new WedgeChooser().Choose(input, cancel: TestContext.Current.CancellationToken)).Message;

    private static WedgeChoiceInput WithThird(Func<CaliperReading, CaliperReading> change) =>
        Good with { Wedges = [.. Good.Wedges.Select((w, i) => i == 2 ? change(w) : w)] };

    [Fact]
    public void Each_bad_reading_is_told_with_the_number_of_its_wedge()
    {
        Assert.Equal("wedge 3: a rim reading of NaN mm cannot be; a length above 0 mm can.", Refusal(WithThird(w => w with { Rim = double.NaN })));
        Assert.Equal("wedge 3: a tip reading of 0 mm cannot be; a length above 0 mm can.", Refusal(WithThird(w => w with { Tip = 0 })));
        Assert.Equal("wedge 3: a rim reading of -2 mm cannot be; a length above 0 mm can.", Refusal(WithThird(w => w with { Rim = -2 })));
        Assert.Equal("wedge 3: a depth of Infinity mm cannot be; a length above 0 mm can.", Refusal(WithThird(w => w with { Depth = double.PositiveInfinity })));
        Assert.Equal("wedge 3: the tip of 5 mm is not narrower than the rim of 4 mm; the rim is the wider end.", Refusal(WithThird(w => w with { Rim = 4, Tip = 5 })));
        Assert.Equal("wedge 3: its wood is not said; a name such as maple is needed.", Refusal(WithThird(w => w with { Wood = " " })));
        Assert.Equal("wedge 7: this number is on more than one wedge; each wedge needs its own.", Refusal(WithThird(w => w with { Number = 7 })));
    }

    [Fact]
    public void Wedges_of_a_wood_that_are_missing_are_counted() =>
        Assert.Equal(
            "pattern: 3 places want walnut and only 2 wedges are (2, 4) of it; 1 more of walnut or another pattern is needed.",
            Refusal(Good with { Wedges = [.. Good.Wedges.Select(w => w.Number > 4 ? w with { Wood = "maple" } : w)] }));

    [Fact]
    public void Rings_that_cannot_be_are_told()
    {
        Assert.Equal("wedges: 8 are fewer than the ring's 12 places; at least 12 are needed.", Refusal(Good with { Places = 12, Pattern = [] }));
        Assert.Equal("places: 7 wedges do not make two equal halves; an even number does.", Refusal(Good with { Places = 7, Pattern = [], Closing = Closing.Halves }));
        Assert.Equal("pattern: its 2 woods do not repeat evenly in 7 places; a length that divides 7 is needed.", Refusal(Good with { Places = 7 }));
        Assert.Equal("places: a ring of 2 wedges cannot be chosen; 3 to 120 can.", Refusal(Good with { Places = 2 }));
        Assert.Equal("radius: a radius of 0 mm cannot be; a length above 0 mm can.", Refusal(Good with { Radius = 0 }));
        Assert.Equal("depth: a depth of NaN mm cannot be; a length above 0 mm can.", Refusal(Good with { Depth = double.NaN }));
        Assert.Equal("caliper sd: -1 mm cannot be; 0 mm or more can.", Refusal(Good with { CaliperSd = -1 }));
    }

    [Fact]
    public void Woods_are_the_same_in_upper_and_lower_case()
    {
        var choice = new WedgeChooser().Choose(Good with { Pattern = ["Maple", "WALNUT"] }, cancel: TestContext.Current.CancellationToken);
        Assert.All(choice.Ring, p => Assert.Equal(p.Place % 2 == 1 ? "maple" : "walnut", p.Wedge.Wood));
    }

    [Fact]
    public void A_wedge_has_its_own_depth_or_the_common_one()
    {
        var wedge = new CaliperReading(1, "ash", 5, 1);
        Assert.Equal(2 * Math.Atan(0.2), wedge.Angle(10), 12);
        Assert.Equal(2 * Math.Atan(0.25), (wedge with { Depth = 8 }).Angle(10), 12);
    }

    // The first-order spread against differences of the angle itself.
    [Fact]
    public void The_spread_of_an_angle_is_the_spread_of_its_readings()
    {
        var wedge = new CaliperReading(1, "ash", 5, 1);
        double byRim = ((wedge with { Rim = 5.0001 }).Angle(10) - wedge.Angle(10)) / 0.0001;
        double byTip = ((wedge with { Tip = 1.0001 }).Angle(10) - wedge.Angle(10)) / 0.0001;
        Assert.Equal(0.01 * Math.Sqrt(byRim * byRim + byTip * byTip), wedge.AngleSd(10, 0.01), 7);
    }
}
