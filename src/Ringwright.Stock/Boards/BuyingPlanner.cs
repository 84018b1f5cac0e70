using System.Collections.Immutable;
using Ringwright.Core;
using Ringwright.Core.Boards;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Timber;

namespace Ringwright.Stock.Boards;

/// <summary>
/// What to buy for a plan from boards of the shop's length: the fewest strips of each width, then, where boards have a width, the
/// fewest boards that give these strips.
/// </summary>
/// <param name="optimiser">Finds the cuttings.</param>
public sealed class BuyingPlanner(IStripOptimiser optimiser)
{
    // Parts of a mm in which lengths are counted; what pieces take is rounded up.
    private const double Parts = 1000;

    /// <summary>The list for <paramref name="plan"/>.</summary>
    /// <exception cref="BadInputException">The shop's boards are too short or too narrow for a piece.</exception>
    public BuyingList Plan(Plan plan, BoardRules? rules = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<StripDemand> demands = StripDemands.Of(plan);
        var request = new CuttingRequest(new Rack { Name = "nothing", Boards = [] }, demands, rules ?? BoardRules.Of(plan.Shop), SpeciesTable.For(plan.Shop));
        return new(demands, [.. demands.Select(d => request.WoodOf(d.Wood)).Distinct().SelectMany(wood => Of(new RackSpace(request, wood), plan.Shop, cancel))]);
    }

    private IEnumerable<WoodToBuy> Of(RackSpace space, Shop shop, CancellationToken cancel) =>
        space.Classes.GroupBy(c => Math.Round(c.Thickness, 2)).OrderByDescending(g => g.Key).Select(g =>
        {
            StripsToBuy[] strips = [.. g.OrderByDescending(c => c.Width).Select(c => Strips(space, c, shop.Boards.Length.Millimetres, cancel))];
            double thickness = g.Max(c => c.Thickness), all = strips.Sum(s => s.Count * (s.Width + space.Rules.Kerf)) - space.Rules.Kerf + space.Rules.EdgeTrim;
            var wood = new WoodToBuy(space.Demand(g.First().Demands[0]).Wood, thickness, Math.Ceiling(2 * (thickness + space.Rules.Milling)) / 2, shop.Boards.Length.Millimetres, [.. strips], Math.Ceiling(all));
            return shop.Boards.Width is { Millimetres: double width } ? wood with { BoardWidth = width, Boards = Boards(space, g.First(), strips, width, cancel) } : wood;
        });

    private StripsToBuy Strips(RackSpace space, StripClass of, double length, CancellationToken cancel)
    {
        double room = length - space.Rules.StripLoss;
        foreach (int d in of.Demands)
            if (space.Demand(d).CountIn(room) < 1)
                throw new BadInputException($"ring {space.Demand(d).Ring}", $"a board of {Math.Round(length, 1)} mm yields no {space.Demand(d).Called(1)}", $"boards of at least {Math.Ceiling(space.Rules.StripLoss + space.Demand(d).LengthFor(1))} mm are needed");
        if (of.Demands is [int only]) return Alone(space, of, only, room);
        StripSolution solved = optimiser.Solve(
            new([.. of.Demands.Select(d => new StripItem(Up(space.Demand(d).Pitch), space.Demand(d).ToSaw) { Start = Up(space.Demand(d).Start) })], [new(Down(room), 1)]), null, cancel);
        return new(of.Width, [.. solved.Patterns.Select(p => new StripsAlike([.. p.Counts.Select((n, i) => new PieceRun(of.Demands[i], n)).Where(r => r.Count > 0)], p.Times))], new(solved.Cost, solved.Bound));
    }

    private static StripsToBuy Alone(RackSpace space, StripClass of, int d, double room)
    {
        int each = space.Demand(d).CountIn(room), all = space.Demand(d).ToSaw;
        (int full, int rest) = int.DivRem(all, each);
        StripsAlike[] alike = [new([new(d, each)], full), new([new(d, rest)], 1)];
        int count = full + (rest > 0 ? 1 : 0);
        return new(of.Width, [.. alike.Where(a => a.Times > 0 && a.Runs[0].Count > 0)], new(count, count));
    }

    private CuttingProof Boards(RackSpace space, StripClass widest, StripsToBuy[] strips, double width, CancellationToken cancel)
    {
        double across = space.Rules.Across(width);
        double most = strips.Max(s => s.Width);
        if (most + space.Rules.Kerf > across + 1e-9)
            throw new BadInputException($"ring {space.Demand(widest.Demands[0]).Ring}", $"its strips are {Math.Round(most, 1)} mm wide, and a board of {Math.Round(width, 1)} mm gives {Math.Round(across - space.Rules.Kerf, 1)} mm once an edge is straight",
                "wider boards are needed");
        StripSolution solved = optimiser.Solve(new([.. strips.Select(s => new StripItem(Up(s.Width + space.Rules.Kerf), s.Count))], [new(Down(across), 1)]), null, cancel);
        return new(solved.Cost, solved.Bound);
    }

    private static long Up(double mm) => (long)Math.Ceiling((mm * Parts) - 1e-3);

    private static long Down(double mm) => (long)Math.Floor((mm * Parts) + 1e-3);
}
