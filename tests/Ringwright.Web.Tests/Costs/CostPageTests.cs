using System.Net;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench;
using Ringwright.Web.Bench.Fields;
using Ringwright.Web.Costs;

namespace Ringwright.Web.Tests.Costs;

/// <summary>Time and cost as the app shows them: the plan's own, as ranges.</summary>
public class CostPageTests(RunningApp app) : IClassFixture<RunningApp>
{
    [Fact]
    public async Task Time_wood_and_what_is_missing_are_shown_then_cost_and_price_once_they_are_told()
    {
        Workbench bench = app.Service<Workbench>();
        bench.Put(Example.BenchWith("feature-bowl.json").Now);
        var cost = CostPlan.Of(bench.Now.Good);
        string html = await Page();
        foreach (WorkTime time in cost.Times) Assert.Contains($"{CostWords.OneTime(time.Minutes.Low)} to {CostWords.OneTime(time.Minutes.High)}", html, StringComparison.Ordinal);
        foreach (WoodBill wood in cost.Woods) Assert.Contains(CostWords.Wood(wood.Volume, bench.Now.Style).Split(" (")[0], html, StringComparison.Ordinal);
        Assert.Contains($"{CostWords.OneTime(cost.Minutes.Low)} to {CostWords.OneTime(cost.Minutes.High)}", html, StringComparison.Ordinal);
        Assert.Contains("No prices are known", html, StringComparison.Ordinal);
        Assert.DoesNotContain("Cost, about", html, StringComparison.Ordinal);

        Type("money.hour", "30");
        Type("money.currency", "€");
        Type("money.markup", "20 %");
        foreach (string wood in CostLenses.WoodsOf(bench.Now.Work)) Type($"money.woods, {wood}, price", "9");
        cost = CostPlan.Of(bench.Now.Good);
        Assert.Equal(1.2 * cost.Cost!.Value.Likely, cost.Price!.Value.Likely, 9);
        html = await Page();
        foreach (Estimate amount in (Estimate[])[cost.Cost.Value, cost.Price.Value]) Assert.Contains($"{CostWords.OneAmount(amount.Low)} to {CostWords.OneAmount(amount.High)}", html, StringComparison.Ordinal);
        Assert.Contains("€", html, StringComparison.Ordinal);
        Assert.DoesNotContain("has no price", html, StringComparison.Ordinal);

        void Type(string address, string text) => bench.Type(LensBook.Find(bench.Now.Work, address)!, text);
        async Task<string> Page() => WebUtility.HtmlDecode(await app.Client.GetStringAsync(CostPage.Address, TestContext.Current.CancellationToken));
    }

    [Fact]
    public void A_price_for_a_board_foot_counts_as_one()
    {
        Workbench bench = Example.Bench;
        bench.Change(w => w.WithShop(s => CostLenses.WithPrice(s, "maple", _ => new() { Wood = "maple", Price = 10 })));
        double litre = CostPlan.Of(bench.Now.Good).Cost!.Value.Likely;
        bench.Change(w => w.WithShop(s => CostLenses.WithPrice(s, "maple", p => p! with { Per = WoodMeasure.BoardFoot })));
        // 1 board foot is 144 in³ = 2.359737 dm³ (exact from 1 in = 25.4 mm).
        Assert.Equal(litre / 2.359737, CostPlan.Of(bench.Now.Good).Cost!.Value.Likely, 4);
    }
}
