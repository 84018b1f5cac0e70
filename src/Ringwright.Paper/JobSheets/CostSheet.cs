using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>How long the piece takes and what it costs, with ranges and a blank for what it really took.</summary>
internal static class CostSheet
{
    private const string Name = "Time and cost";
    private const int RowsTogether = 15;

    public static void Add(Packet packet, Plan plan, CostPlan cost, MeasureStyle style)
    {
        Money? money = plan.Shop.Money;
        string all = cost.Cost is Estimate known ? $", cost {CostWords.Amount(known, money)}" : "", price = cost.Price is Estimate asked ? $"; price {CostWords.Amount(asked, money)}" : "";
        packet.Flow(Name, "–",
        [
            new Column(3, new Paragraph($"Work: {CostWords.Time(cost.Minutes)}{all}{price}", TypeScale.Title), new Paragraph("In brackets where the true value lies four times in five. Write down what it took: the record makes the next estimate better.", RingJob.Words)),
            .. SheetTables.Divided("Time", cost.Times.Select(t => new[] { t.Label, CostWords.Time(t.Minutes), t.What.In(style), "" }), Times, RowsTogether),
            .. SheetTables.Divided("Rough wood to buy", cost.Woods.Select(w => new[] { w.Wood, CostWords.Wood(w.Volume, style), w.Price is Estimate p ? CostWords.Amount(p, money) : "–", "" }), Woods, RowsTogether),
            .. Besides(cost, money),
            .. cost.Missing.IsEmpty ? Array.Empty<IBlock>() : [new Section("Not in it", new ListBlock(ListMark.Dot, [.. cost.Missing.Select(m => m.In(style))], RingJob.Words))],
        ]);
    }

    private static IEnumerable<IBlock> Besides(CostPlan cost, Money? money)
    {
        string[] lines =
        [
            .. cost.Labour is Estimate labour ? new[] { $"Work: {CostWords.Amount(labour, money)}" } : [],
            .. cost.Supplies is double supplies ? new[] { $"Glue, abrasives, finish: {CostWords.Amount(Estimate.Exactly(supplies), money)}" } : [],
        ];
        if (lines.Length > 0) yield return new Section("Besides", new ListBlock(ListMark.Dot, lines, RingJob.Words));
    }

    private static Table Times(string[][] rows) => new([new("Work"), new("Takes"), new("Counted"), new("Took")], rows);

    private static Table Woods(string[][] rows) => new([new("Wood"), new("Rough"), new("Costs"), new("Paid")], rows);
}
