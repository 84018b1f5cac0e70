using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Costs;

/// <summary>How long the piece on the bench takes and what it costs, with ranges, and the shop's values behind them.</summary>
public partial class CostPage
{
    /// <summary>Its address.</summary>
    public const string Address = "/cost";

    private Plan? _of;
    private CostPlan _cost = null!;

    private CostPlan Cost
    {
        get
        {
            if (!ReferenceEquals(_of, Sheet.Good)) (_of, _cost) = (Sheet.Good, CostPlan.Of(Sheet.Good));
            return _cost;
        }
    }

    private Money? Money => Sheet.Good.Shop.Money;

    private WoodMeasure PerOf(string wood) => CostLenses.PriceOf(Sheet.Good.Shop, wood)?.Per ?? WoodMeasure.Litre;

    private void Sell(string wood, WoodMeasure per) => Bench.Change(w => w.WithShop(s => CostLenses.WithPrice(s, wood, p => p is null ? null : p with { Per = per })));
}
