using CsCheck;
using Ringwright.Core.Boards;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Tests.Planning.Costs;

public class CostPlanTests
{
    private static readonly Piece Bowl = DocumentJson.ReadPiece(File.ReadAllText(Path.Combine(SolutionFolder.Path, "examples", "feature-bowl.json")));

    private static readonly Gen<Estimate> AnyEstimate =
        from low in Gen.Double[0, 100]
        from up in Gen.Double[0, 50]
        from further in Gen.Double[0, 80]
        select new Estimate(low, low + up, low + up + further);

    [Fact]
    public void A_sum_is_as_likely_as_its_parts_and_narrower_than_the_worst_of_them_together() => AnyEstimate.Array[1, 12].Sample(parts =>
    {
        var sum = Estimate.Sum(parts);
        Assert.Equal(parts.Sum(p => p.Likely), sum.Likely, 1e-9);
        Assert.True(sum.High <= parts.Sum(p => p.High) + 1e-9 && sum.High - sum.Likely >= parts.Max(p => p.High - p.Likely) - 1e-9);
        Assert.True(sum.Low >= Math.Max(0, parts.Sum(p => p.Low)) - 1e-9);
    });

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1234, 1200)]
    [InlineData(0.0357, 0.036)]
    [InlineData(96.4, 96)]
    [InlineData(99.7, 100)]
    public void No_more_figures_are_told_than_are_known(double value, double told) => Assert.Equal(told, Estimate.Rounded(value), 1e-9);

    // Common practice, no source: hand sanding 72 tiny wedges takes over an hour.
    [Fact]
    public void Seventy_two_small_wedges_take_over_an_hour_to_sand()
    {
        Piece disc = new() { Name = "Disc", Rings = [new WedgeDisc { Name = "Disc", Segments = 72, Diameter = AnyPiece.Mm(60), Thickness = AnyPiece.Mm(20), Woods = ["maple"] }] };
        WorkTime sanding = CostPlan.Of(Planner.Plan(disc, Shop.Starting with { Boards = new() { Length = AnyPiece.Mm(2000) } })).Times.Single(t => t.Name == "sanding");
        Assert.Equal(72, sanding.Minutes.Likely, 1e-9);
        Assert.True(sanding.Minutes.Low < 60 && sanding.Minutes.High > 72);
    }

    [Fact]
    public void What_was_timed_is_surer_than_a_guess()
    {
        Shop timed = Shop.Starting with { Hands = Shop.Starting.Hands with { CutsWorth = 400, FacesWorth = 400 } };
        double Width(Shop shop, string name) => CostPlan.Of(Planner.Plan(Bowl, shop)).Times.Single(t => t.Name == name).Minutes is { } m ? m.High / m.Low : 0;
        Assert.True(Width(timed, "sawing") < 0.6 * Width(Shop.Starting, "sawing") + 0.4);
        Assert.True(Width(timed, "sanding") < Width(Shop.Starting, "sanding"));
    }

    // A board foot is 144 cubic inches (trade measure), so 12 of them are one cubic foot.
    [Fact]
    public void A_price_by_the_board_foot_is_the_same_as_by_the_litre()
    {
        CostPlan Priced(double price, WoodMeasure per) => CostPlan.Of(Planner.Plan(Bowl, Shop.Starting with { Money = new() { Woods = [new() { Wood = "cherry", Price = price, Per = per }] } }));
        double foot = Priced(12, WoodMeasure.BoardFoot).Cost!.Value.Likely, litre = Priced(12 / 2.359737216, WoodMeasure.Litre).Cost!.Value.Likely, cubic = Priced(1000 * 12 / 2.359737216, WoodMeasure.CubicMetre).Cost!.Value.Likely;
        Assert.Equal(foot, litre, 1e-9 * foot);
        Assert.Equal(foot, cubic, 1e-9 * foot);
        Assert.Equal(3, Priced(12, WoodMeasure.Litre).Missing.Count(m => m.In(MeasureStyle.Millimetres).Contains("has no price", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_wood_to_buy_is_more_than_what_is_glued() => Assert.All(
        CostPlan.Of(Planner.Plan(Bowl, Shop.Starting)).Woods,
        w => Assert.True(w.Volume.Low > StripDemands.Of(Planner.Plan(Bowl, Shop.Starting)).Where(d => d.Wood == w.Wood).Sum(d => d.Needed * d.MeanLength * d.Width * d.Thickness)));

    [Fact]
    public void Cost_and_price_add_up()
    {
        Shop shop = DocumentJson.ReadShop(File.ReadAllText(Path.Combine(SolutionFolder.Path, "examples", "small-shop.json")));
        CostPlan cost = CostPlan.Of(Planner.Plan(Bowl, shop));
        Assert.Empty(cost.Missing);
        Assert.Equal(cost.Minutes.Likely / 60 * shop.Money!.Hour!.Value, cost.Labour!.Value.Likely, 1e-9);
        Assert.Equal(cost.Labour.Value.Likely + cost.Supplies!.Value + cost.Woods.Sum(w => w.Price!.Value.Likely), cost.Cost!.Value.Likely, 1e-9);
        Assert.Equal(1.2 * cost.Cost.Value.Likely, cost.Price!.Value.Likely, 1e-9);
    }

    [Theory]
    [InlineData("\"pace\": { \"spread\": 0.5 }", "pace.spread")]
    [InlineData("\"money\": { \"hour\": -1 }", "money.hour")]
    [InlineData("\"money\": { \"woods\": [{ \"wood\": \"oak\", \"price\": 1 }, { \"wood\": \"Oak\", \"price\": 2 }] }", "money.woods, Oak")]
    [InlineData("\"money\": { \"woods\": [{ \"wood\": \"oak\", \"price\": 1, \"per\": \"stick\" }] }", "money.woods 1.per")]
    public void Prices_that_cannot_be_are_refused_with_their_field(string field, string where)
    {
        string json = $$"""{ "format": "ringwright/shop", "version": 1, "name": "Test", {{field}} }""";
        Assert.Contains(where, Assert.Throws<BadInputException>(() => DocumentJson.ReadShop(json)).Message, StringComparison.Ordinal);
    }
}
