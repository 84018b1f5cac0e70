using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Fitting;

/// <summary>The jobs at the saw that a planned ring asks for, with the errors of a shop.</summary>
public static class RingJobs
{
    // Left on the first offcut's tip, mm, so that the whole end is sawn even when the first cut seats badly.
    private const double OffcutTip = 0.5;

    /// <summary>One board of the plan as it will be sawn.</summary>
    /// <param name="plan">The ring's plan.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="length">The board's length, mm.</param>
    /// <param name="wedges">Wedges wanted from it.</param>
    /// <param name="seed">Seed of its draws.</param>
    /// <param name="fences">True error of the first and second fence, rad; (0, 0) when they stand as set.</param>
    /// <param name="causes">Which errors there are.</param>
    public static SawJob Job(RingPlan plan, Shop shop, double length, int wedges, ulong seed, (double First, double Second) fences, ErrorCause causes)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(shop);
        RefuseStaves(plan);
        bool sander = shop.Sled.Kind == SledKind.DiscSander;
        WedgeGeometry sawn = plan.Strip.Wedge;
        double removal = shop.Sanding.PerFace.Millimetres;
        var setup = new SawSetup(Jig(shop.Sled.Kind, sawn.HalfAngle, sander ? (0, 0) : fences), sander ? plan.Glued.RimEdge : sawn.RimEdge, shop.Saw.Kerf.Millimetres)
        {
            BladeLean = causes.HasFlag(ErrorCause.Lean) ? shop.Saw.Lean.Radians : 0,
            SquaringTrim = shop.Saw.EndTrim.Millimetres,
            FirstOffcutTip = OffcutTip,
            HoldingLength = shop.Saw.HoldingLength.Millimetres,
        };
        return new(new BoardBlank(length, sawn.Depth, plan["board-thickness"].Value), setup, wedges)
        {
            Variation = VariationOf(shop, causes),
            Sander = sander ? SanderOf(sawn.HalfAngle, fences.First, removal, shop, causes) : null,
            Sanding = sander ? Sawing.Sanding.None : Sawing.Sanding.Both(new(removal, removal)),
            Seed = seed,
        };
    }

    /// <summary>
    /// The ring's wedges in their places, sawn with the errors of the shop: each wood from its own boards, in the order they fall.
    /// </summary>
    public static ImmutableArray<SawnWedge> Saw(RingPlan plan, Shop shop, ulong seed, ErrorCause causes)
    {
        ArgumentNullException.ThrowIfNull(plan);
        RefuseStaves(plan);
        (double, double) fences = FenceErrors(shop, seed, causes);
        int perBoard = Math.Max(1, plan.Strip.WedgesIn(shop.Boards.Length.Millimetres));
        var piles = plan.Woods.Select((wood, w) => new Queue<SawnWedge>(Pile(plan, shop, wood.Needed, perBoard, seed + (1000UL * (ulong)(w + 1)), fences, causes))).ToArray();
        var names = plan.Woods.Select((wood, w) => (wood.Wood, w)).ToDictionary(p => p.Wood, p => p.w, StringComparer.OrdinalIgnoreCase);
        // Segments of a laminated board all come from the one pile, whatever woods show on them.
        return [.. Enumerable.Range(0, plan.Ring.Around).Select(i => piles[names.GetValueOrDefault(plan.Ring.WoodOf(i))].Dequeue())];
    }

    /// <summary>A sawn wedge as it lies in the dry fit.</summary>
    /// <param name="wedge">The wedge.</param>
    /// <param name="thickness">The board's thickness, mm.</param>
    public static FitWedge Lay(SawnWedge wedge, double thickness)
    {
        ArgumentNullException.ThrowIfNull(wedge);
        ConvexPolygon bottom = wedge.Section(0);
        return new(bottom, wedge.Section(thickness));
    }

    /// <summary>The true errors of both fences in one ring, rad: drawn once, the same for all its boards.</summary>
    public static (double First, double Second) FenceErrors(Shop shop, ulong seed, ErrorCause causes)
    {
        ArgumentNullException.ThrowIfNull(shop);
        if (!causes.HasFlag(ErrorCause.Setting)) return (0, 0);
        var draws = new Draws(seed);
        double sd = shop.Hands.SettingSd.Radians;
        double first = draws.Normal(Draws.Source.Setting, 1, 0, sd);
        return (first, ClosingBudget.Fences(shop.Sled.Kind) == 2 ? draws.Normal(Draws.Source.Setting, 2, 0, sd) : first);
    }

    private static void RefuseStaves(RingPlan plan)
    {
        if (plan.Stave is not null)
            throw new BadInputException($"ring {plan.Ring.Name}", "staves are not simulated at the saw", "their plan gives the chance to close in closed form");
    }

    private static IEnumerable<SawnWedge> Pile(RingPlan plan, Shop shop, int needed, int perBoard, ulong seed, (double, double) fences, ErrorCause causes)
    {
        for (int board = 0; needed > 0; board++)
        {
            int wedges = Math.Min(needed, perBoard);
            // A little longer than the plan's board: a stop that errs must not run the simulated board short.
            double length = plan.Strip.LengthFor(wedges) + (2 * OffcutTip) + (wedges * 0.5) + plan.Strip.Pitch;
            SawRun run = SawSimulator.Run(Job(plan, shop, length, wedges, seed + (ulong)board, fences, causes));
            if (run.Wedges.Length < wedges) throw new BadInputException($"ring {plan.Ring.Name}", run.Explanation.TrimEnd('.'), "a wider stop or smaller errors are needed");
            foreach (SawnWedge wedge in run.Wedges) yield return wedge;
            needed -= wedges;
        }
    }

    private static Jig Jig(SledKind kind, double mitre, (double First, double Second) errors) => kind == SledKind.TwoFences
        ? new TwoFenceSled(new(mitre, errors.First), new(mitre, errors.Second))
        : new FlippedMitre(new(mitre, errors.First));

    private static Variation VariationOf(Shop shop, ErrorCause causes) => new()
    {
        SeatingMean = causes.HasFlag(ErrorCause.Bias) ? shop.Hands.AngleBias.Radians : 0,
        SeatingDeviation = causes.HasFlag(ErrorCause.CutToCut) ? shop.Hands.AngleSd.Radians : 0,
        StopDeviation = causes.HasFlag(ErrorCause.Stop) ? shop.Hands.StopSd.Millimetres : 0,
        KerfDeviation = causes.HasFlag(ErrorCause.Kerf) ? shop.Saw.KerfSd.Millimetres : 0,
        SandingUnevenness = causes.HasFlag(ErrorCause.Sanding) ? shop.Sanding.Unevenness.Millimetres : 0,
    };

    // Faces are trued by themselves, so what the rough saw did wrong is sanded away as long as the oversize covers it.
    private static DiscSander SanderOf(double mitre, double error, double oversize, Shop shop, ErrorCause causes) => new(new Fence(mitre, error), oversize)
    {
        SeatingMean = causes.HasFlag(ErrorCause.Bias) ? shop.Hands.AngleBias.Radians : 0,
        SeatingDeviation = causes.HasFlag(ErrorCause.CutToCut) ? shop.Hands.AngleSd.Radians : 0,
        SizeDeviation = causes.HasFlag(ErrorCause.Stop) ? shop.Hands.StopSd.Millimetres : 0,
    };
}
