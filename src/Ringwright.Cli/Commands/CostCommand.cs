using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright cost FILE</c>: how long the piece takes, how much wood to buy, what it costs, with ranges.</summary>
internal sealed class CostCommand(IAnsiConsole console) : Command<AnswerSettings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "cost",
        "How long the piece takes, how much wood to buy and what it costs, with ranges.",
        "cost examples/feature-bowl.json --shop examples/small-shop.json");

    public override int Execute(CommandContext context, AnswerSettings settings, CancellationToken cancellationToken)
    {
        Plan plan = settings.Plan();
        var cost = CostPlan.Of(plan);
        if (settings.Json) CostJson.Write(console, plan, cost);
        else Print(plan, cost, settings.Style(plan.Piece.Units));
        return ExitCode.Done;
    }

    private void Print(Plan plan, CostPlan cost, MeasureStyle style)
    {
        Money? money = plan.Shop.Money;
        string price = cost.Price is Estimate asked ? $"; price {CostWords.Amount(asked, money)}" : "";
        console.WriteLine($"{plan.Piece.Name}: {CostWords.Time(cost.Minutes)} of work" + (cost.Cost is Estimate all ? $", cost {CostWords.Amount(all, money)}{price}." : "."));
        console.WriteLine("In brackets where the true value lies four times in five.");
        AlignedText.Heading(console, "Time");
        AlignedText.Write(console, cost.Times.Select(t => new[] { t.Label, CostWords.Time(t.Minutes), t.What.In(style), t.Source }));
        AlignedText.Heading(console, "Rough wood to buy");
        AlignedText.Write(console, cost.Woods.Select(w => new[] { w.Wood, CostWords.Wood(w.Volume, style), w.Price is Estimate p ? CostWords.Amount(p, money) : "no price" }));
        if (cost.Labour is not null || cost.Supplies is not null)
        {
            AlignedText.Heading(console, "Besides");
            if (cost.Labour is Estimate labour) console.WriteLine($"  work  {CostWords.Amount(labour, money)}");
            if (cost.Supplies is double supplies) console.WriteLine($"  supplies  {CostWords.Amount(Estimate.Exactly(supplies), money)}");
        }

        foreach (Sentence missing in cost.Missing) console.WriteLine(missing.In(style));
    }
}
