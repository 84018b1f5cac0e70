using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Tests.Fitting;

public class ClosingBudgetTests
{
    private static readonly WedgeGeometry Disc = new(36, 12.7, 0);

    // 36 independent faces of sd 0.05°: P(|sum| < 0.2256°) = 0.54790, with bias 0.005° 0.47217 (MathNet and numpy peers agree).
    // 18 wedges trued on the sander have 36 independent faces.
    [Theory]
    [InlineData(0, 0.54790)]
    [InlineData(0.005, 0.47217)]
    public void Agrees_with_the_published_peers_for_independent_faces(double biasDegrees, double chance)
    {
        var glued = new WedgeGeometry(18, 10, 0);
        Shop shop = Shop.Starting with
        {
            Sled = new() { Kind = SledKind.DiscSander },
            Sanding = new() { Unevenness = Length.FromMillimetres(0) },
            Hands = new() { AngleSd = Angle.FromDegrees(0.05), AngleBias = Angle.FromDegrees(biasDegrees), SettingSd = Angle.FromDegrees(0) },
            Wanted = new() { JointGap = Length.FromMillimetres(glued.OuterCorner * 0.2256 * Math.PI / 180) },
        };
        Assert.Equal(chance, ClosingBudget.Of(glued, 1, shop).Chance, 6e-5);
    }

    [Fact]
    public void Agrees_with_the_closed_form_of_the_chain()
    {
        Shop shop = Shop.Starting;
        ClosingBudget budget = ClosingBudget.Of(Disc, 2, shop);
        var making = new RingMaking(new CutRuns(36, 2), new CutError(0, shop.Hands.AngleSd.Radians), new FenceSetting(shop.Hands.SettingSd.Radians, 2));
        Assert.Equal(making.ClosingVariance, budget.FromCuts + budget.FromSetting, 1e-15);
    }

    [Fact]
    public void A_corrected_fence_leaves_only_what_scatters()
    {
        ClosingBudget budget = ClosingBudget.Of(Disc, 1, Shop.Starting);
        Assert.Equal(budget.FromCuts + budget.FromSanding, budget.Corrected.Variance);
        Assert.True(budget.Corrected.Chance > budget.Chance);
    }

    [Fact]
    public void Without_any_error_it_closes_for_sure()
    {
        Shop perfect = Shop.Starting with { Hands = new() { AngleSd = default, SettingSd = default }, Sanding = new() { Unevenness = default } };
        Assert.Equal(1, ClosingBudget.Of(Disc, 1, perfect).Chance);
    }
}
