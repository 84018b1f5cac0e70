using CsCheck;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Tests.Planning;

public class TimberPlanTests
{
    private static readonly SegmentRing Ring = new()
    {
        Name = "Ring",
        Segments = 12,
        Diameter = AnyPiece.Mm(300),
        InnerDiameter = AnyPiece.Mm(260),
        Thickness = AnyPiece.Mm(20),
        Woods = ["maple", "walnut"],
    };

    private static Plan Plan(Ring ring, Shop? shop = null) => Planner.Plan(new() { Name = "Test", Rings = [ring] }, shop ?? Shop.Starting);

    private static string Told(Plan plan) => string.Join('\n', plan.Findings.Select(f => f.Sentence.In(MeasureStyle.Millimetres)));

    [Fact]
    public void Every_formula_of_the_piece_gives_its_figure() =>
        Gen.Select(AnyPiece.Piece, AnyPiece.Shop).Sample((piece, shop) =>
        {
            foreach (Figure figure in Planner.Plan(piece, shop).Figures.Where(f => f.Why.Evaluates))
            {
                double value = FormulaReader.Evaluate(figure.Why.Formula, figure.Why.Inputs.ToDictionary(i => i.Symbol, i => i.Value));
                Assert.True(Math.Abs(value - figure.Value) <= 1e-9 * Math.Max(1, Math.Abs(figure.Value)), $"{figure.Name} = {figure.Value}, but {figure.Why.Formula} = {value}");
            }
        });

    [Fact]
    public void The_rule_sets_the_speed_of_sound_work_and_weak_joints_that_of_others()
    {
        Plan sound = Plan(Ring), weak = Plan(Ring, Shop.Starting with { Joint = new() { Tension = 0.5 } });
        Assert.Equal(9000 / (300 / 25.4), Figure(sound, "speed-round").Value, 1e-9);
        Assert.StartsWith("The rim-speed rule sets it", Figure(sound, "speed-round").Why.Reason, StringComparison.Ordinal);
        Assert.Equal(Figure(weak, "speed-joints").Value, Figure(weak, "speed-round").Value);
        Assert.StartsWith("The joints set it", Figure(weak, "speed-round").Why.Reason, StringComparison.Ordinal);
        Assert.True(Figure(sound, "speed-blank").Value < Figure(sound, "speed-round").Value);
    }

    [Fact]
    public void An_even_ring_is_in_balance_and_an_uneven_one_is_not()
    {
        Figure[] even = Balance(Ring), uneven = Balance(Ring with { Woods = ["maple", .. Enumerable.Repeat("basswood", 11)] });
        double volume = Math.PI * ((150 * 150) - (130 * 130)) * 20;
        Assert.Equal(volume * 1120 * (0.63 + 0.55) / 2 * 1e-6, even[0].Value, 1e-6 * even[0].Value);
        Assert.InRange(even.Single(f => f.Name == "unbalance").Value, 0, 1e-6);
        // One segment heavier by its volume times the difference of density, at the centroid of its arc.
        double a = Math.PI / 12, centroid = 2 * Math.Sin(a) / (3 * a) * ((150.0 * 150 * 150) - (130.0 * 130 * 130)) / ((150.0 * 150) - (130.0 * 130));
        Assert.Equal(volume / 12 * 1120 * (0.63 - 0.37) * 1e-6 * centroid, uneven.Single(f => f.Name == "unbalance").Value, 1e-3);
    }

    [Fact]
    public void A_wood_nobody_knows_is_told() => Assert.Contains("moonwood is not in the table", Told(Plan(Ring with { Woods = ["moonwood"] })), StringComparison.Ordinal);

    [Fact]
    public void A_shop_s_own_wood_is_used() => Assert.DoesNotContain("not in the table",
        Told(Plan(Ring with { Woods = ["moonwood"] }, Shop.Starting with { Species = [new() { Name = "moonwood", Density = 700, ShrinkageRadial = 4, ShrinkageTangential = 8 }] })), StringComparison.Ordinal);

    [Fact]
    public void Wood_glued_wet_splits_the_ring_and_is_told_with_what_helps()
    {
        string told = Told(Plan(Ring, Shop.Starting with { Climate = new() { WoodMoisture = 18 } }));
        Assert.Contains(": too much", told, StringComparison.Ordinal);
        Assert.Contains("dryer wood, glued at", told, StringComparison.Ordinal);
    }

    [Fact]
    public void The_depth_changes_as_the_handbook_says()
    {
        RingPlan ring = Plan(Ring with { Woods = ["maple"] }, Shop.Starting with { Climate = new() { WoodMoisture = 10 } }).Rings[0];
        double to = 100 * ring["moisture-home"].Value;
        Assert.Equal(20 * 0.00353 * (to - 10), ring["depth-change"].Value, 1e-9);
        Assert.Equal(20 * 0.00165 * (to - 10), ring["height-change"].Value, 1e-9);
        Assert.Equal(12 * 0.00353 * (to - 10) * Math.Sin(Math.PI / 6), ring["opening-wish"].Value, 1e-12);
    }

    private static Figure[] Balance(Ring ring) => [.. Plan(ring).Figures.SkipWhile(f => f.Name != "mass")];

    private static Figure Figure(Plan plan, string name) => plan.Figures.Single(f => f.Name == name);
}
