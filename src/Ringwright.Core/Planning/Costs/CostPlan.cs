using System.Collections.Immutable;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>One kind of work and how long it takes.</summary>
/// <param name="Name">Short name for files, such as <c>sawing</c>.</param>
/// <param name="Label">Name for people.</param>
/// <param name="What">What it counts, with the rate.</param>
/// <param name="Minutes">How long.</param>
/// <param name="Source">Where the rate is from.</param>
public sealed record WorkTime(string Name, string Label, Sentence What, Estimate Minutes, string Source);

/// <summary>Wood to buy.</summary>
/// <param name="Wood">The wood.</param>
/// <param name="Volume">Rough wood, mm³.</param>
/// <param name="Price">What it costs; null when its price is not told.</param>
public sealed record WoodBill(string Wood, Estimate Volume, Estimate? Price);

/// <summary>Time and money of a piece, with ranges.</summary>
/// <param name="Times">The kinds of work, in the order of the work.</param>
/// <param name="Woods">The wood of each kind.</param>
/// <param name="Supplies">Glue, abrasives, finish; null when not told.</param>
/// <param name="Labour">Worth of the time; null when an hour's worth is not told.</param>
/// <param name="Cost">All that is told together; null when nothing is.</param>
/// <param name="Price">The cost with the markup; null without one.</param>
/// <param name="Missing">What is not in it, one sentence each.</param>
public sealed record CostPlan(
    ImmutableArray<WorkTime> Times, ImmutableArray<WoodBill> Woods, double? Supplies, Estimate? Labour, Estimate? Cost, Estimate? Price, ImmutableArray<Sentence> Missing)
{
    /// <summary>All work together.</summary>
    public Estimate Minutes => Estimate.Sum(Times.Select(t => t.Minutes));

    /// <summary>Time and money of a plan. Pure: same input, same numbers.</summary>
    public static CostPlan Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<WorkTime> times = [.. WorkTimes.Of(plan)];
        Money money = plan.Shop.Money ?? new();
        ImmutableArray<WoodBill> woods = [.. WoodBills.Of(plan, money)];
        Estimate? labour = money.Hour is double hour ? Estimate.Sum(times.Select(t => t.Minutes)) * (hour / 60) : null;
        Estimate[] parts = [.. woods.Select(w => w.Price).Append(labour).Append(money.Supplies is double s ? Estimate.Exactly(s) : null).OfType<Estimate>()];
        Estimate? cost = parts.Length == 0 ? null : Estimate.Sum(parts);
        return new(times, woods, money.Supplies, labour, cost, cost is Estimate known && money.Markup is double markup ? known * (1 + markup) : null, [.. Lacking(woods, money, parts.Length > 0)]);
    }

    private static IEnumerable<Sentence> Lacking(ImmutableArray<WoodBill> woods, Money money, bool anything)
    {
        if (!anything)
        {
            yield return Sentence.Of("No prices are known: tell the shop what woods, an hour and supplies cost (money.woods, money.hour, money.supplies), and the cost of the piece is told too.");
            yield break;
        }

        foreach (WoodBill wood in woods.Where(w => w.Price is null)) yield return Sentence.Of($"{Sentence.Escape(wood.Wood)} has no price in the shop; its wood is not in the cost.");
        if (money.Hour is null) yield return Sentence.Of("The work is not in the cost: the shop does not tell what an hour is worth (money.hour).");
    }
}
