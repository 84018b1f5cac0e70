using CsCheck;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Tests.Planning;

/// <summary>What a plan says of its spares is what it computed, for a loss taken as it stands and for a learned one.</summary>
public class SpareFiguresTests
{
    private const double Loss = 0.08;

    private static RingPlan Plan(double? worth) => Planner.Plan(
        new()
        {
            Name = "Test",
            Rings = [new WedgeDisc { Name = "Disc", Segments = 18, Diameter = AnyPiece.Mm(60), Thickness = AnyPiece.Mm(20), Tip = AnyPiece.Mm(0.5), Bore = AnyPiece.Mm(8), Woods = ["oak"] }],
        },
        Shop.Starting with { Hands = new() { Loss = Loss, LossWorth = worth } }).Rings[0];

    [Fact]
    public void Every_printed_search_finds_its_number() =>
        Gen.Select(AnyPiece.Piece, AnyPiece.Shop).Sample((piece, shop) =>
            Planner.Plan(piece, shop).Rings[0].Figures.Where(f => f.Name.EndsWith("/to-saw", StringComparison.Ordinal)).All(f =>
                FormulaReader.Search(f.Why.Formula, f.Why.Inputs.ToDictionary(i => i.Symbol, i => i.Value)) == (int)f.Value));

    [Theory]
    [InlineData(null, "least m with P(Binomial(m, 1 − l) ≥ n) ≥ C", "n l C")]
    [InlineData(60.0, "least m with P(BetaBinomial(m, (1 − l)·w, l·w) ≥ n) ≥ C", "n l w C")]
    public void The_law_that_was_used_is_the_one_printed(double? worth, string formula, string symbols)
    {
        Why why = Plan(worth)["oak/to-saw"].Why;
        Assert.Equal(formula, why.Formula);
        Assert.Equal(symbols.Split(' '), why.Inputs.Select(i => i.Symbol));
    }

    /// <summary>The learned law is a binomial whose loss is drawn from a Beta: integrated numerically over the loss.</summary>
    [Theory]
    [InlineData(20.0)]
    [InlineData(60.0)]
    [InlineData(400.0)]
    public void Usual_spares_with_a_learned_loss_agree_with_the_mixture_of_binomials(double worth)
    {
        double mixture = GaussLegendreRule.Integrate(
            loss => Beta.PDF(Loss * worth, (1 - Loss) * worth, loss) * (1 - Binomial.CDF(1 - loss, 20, 17)), 0, 1, 1024);
        Assert.Equal(mixture, Plan(worth)["oak/usual-enough"].Value, 1e-6);
    }

    [Fact]
    public void A_learned_loss_asks_for_more_and_the_note_says_why()
    {
        (RingPlan stands, RingPlan learned) = (Plan(null), Plan(20));
        Assert.True(learned["oak/to-saw"].Value > stands["oak/to-saw"].Value);
        Assert.True(learned["oak/usual-enough"].Value < stands["oak/usual-enough"].Value);
        Assert.Contains("a record worth 20 wedges", Note(learned), StringComparison.Ordinal);
        Assert.DoesNotContain("record", Note(stands), StringComparison.Ordinal);
        Assert.Contains(MeasureStyle.Millimetres.Print(learned["oak/usual-enough"].Value, Quantity.Share), Note(learned), StringComparison.Ordinal);
    }

    /// <summary>A loss of nothing is certain, so nothing needs to be learned about it.</summary>
    [Fact]
    public void No_loss_needs_no_spares_however_it_was_learned() =>
        Assert.Equal(18, WedgeLoss.Of(new() { Loss = 0, LossWorth = 30 }).ToSaw(18, 0.99));

    private static string Note(RingPlan plan) =>
        plan.Findings.Single(f => f.Sentence.Template.Contains("usual", StringComparison.Ordinal)).Sentence.In(MeasureStyle.Millimetres);
}
