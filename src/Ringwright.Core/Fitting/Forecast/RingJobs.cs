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
    internal const double OffcutTip = 0.5;

    /// <summary>One board of the plan as it will be sawn.</summary>
    /// <param name="plan">The ring's plan.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="length">The board's length, mm; for staves its width (see <see cref="BoardUsed"/>).</param>
    /// <param name="wedges">Wedges wanted from it; staves of one row.</param>
    /// <param name="seed">Seed of its draws.</param>
    /// <param name="fences">True error of the first and second fence, for staves of mitre and tilt, rad; (0, 0) when they stand as set.</param>
    /// <param name="causes">Which errors there are.</param>
    public static SawJob Job(RingPlan plan, Shop shop, double length, int wedges, ulong seed, (double First, double Second) fences, ErrorCause causes)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(shop);
        if (plan.Stave is { } stave) return StaveJobs.Job(plan, stave, shop, length, wedges, seed, fences, causes);
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
    /// The ring's wedges in their places, sawn with the errors of the shop: each wood of each batch from its own boards, in the
    /// order they fall. The fences are set once for each angle.
    /// </summary>
    public static ImmutableArray<SawnWedge> Saw(RingPlan plan, Shop shop, ulong seed, ErrorCause causes)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Batches.IsEmpty) throw plan.NoWedges();
        if (plan.Stave is { } stave) return StaveJobs.Saw(plan, stave, shop, seed, FenceErrors(plan, shop, seed, causes), causes);
        var places = new SortedDictionary<int, SawnWedge>();
        for (int b = 0; b < plan.Batches.Length; b++) SawBatch(plan, b, shop, seed, causes, places);
        return [.. places.Values];
    }

    /// <summary>
    /// The pieces of the dry ring in their places: its wedges as sawn, each with half of the spacers beside it (as wanted) held to
    /// each face, since a thin strip by itself would only slip about.
    /// </summary>
    /// <exception cref="BadInputException">The ring's segments stand apart, so there is no dry fit.</exception>
    public static ImmutableArray<FitWedge> Pieces(RingPlan plan, Shop shop, ulong seed, ErrorCause causes)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Ring is OpenRing)
            throw new BadInputException($"ring {plan.Ring.Name}", "open segments do not close, so there is no dry fit", "see the figure chance-even, or choose another ring");
        double thickness = plan["board-thickness"].Value;
        ImmutableArray<SawnWedge> sawn = Saw(plan, shop, seed, causes);
        if (plan.Stave is { } stave) return StaveJobs.Lay(sawn, stave);
        ImmutableArray<FitWedge> wedges = [.. sawn.Select(w => Lay(w, thickness))];
        return WithSpacers(plan, wedges);
    }

    /// <summary>The wedges of a ring in their order, each with half of the spacers beside it (as wanted) held to each face.</summary>
    internal static ImmutableArray<FitWedge> WithSpacers(RingPlan plan, ImmutableArray<FitWedge> wedges)
    {
        if (plan.Spacers.IsEmpty) return wedges;
        Dictionary<int, double> thicknesses = plan.Spacers.SelectMany(s => s.Places.Select(p => (p, s.Thickness))).ToDictionary();
        double[] behind = new double[wedges.Length];
        int wedge = -1; // the first piece of a ring is a wedge
        for (int place = 0; place < plan.Layout.Length; place++)
        {
            if (thicknesses.TryGetValue(place, out double t)) behind[wedge] += t;
            else wedge++;
        }

        return [.. wedges.Select((w, i) => Held(w, behind[(i + behind.Length - 1) % behind.Length] / 2, behind[i] / 2))];
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

    /// <summary>How much board there is for one run of cuts, mm: its length, for staves its width, since they are sawn side by side.</summary>
    public static double BoardUsed(RingPlan plan, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(shop);
        return plan.Stave is { } stave ? StaveBoard.Of(stave.BeforeSanding(shop.Sanding.PerFace.Millimetres), shop).Width(shop) : shop.Boards.Length.Millimetres;
    }

    /// <summary>The true errors of both fences in one ring, for staves of mitre and tilt, rad: drawn once, the same for all its boards.</summary>
    public static (double First, double Second) FenceErrors(RingPlan plan, Shop shop, ulong seed, ErrorCause causes)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(shop);
        if (!causes.HasFlag(ErrorCause.Setting)) return (0, 0);
        var draws = new Draws(seed);
        double sd = shop.Hands.SettingSd.Radians;
        double first = draws.Normal(Draws.Source.Setting, 1, 0, sd);
        return (first, plan.Stave is not null || ClosingBudget.Fences(shop.Sled.Kind) == 2 ? draws.Normal(Draws.Source.Setting, 2, 0, sd) : first);
    }

    private static void SawBatch(RingPlan plan, int batch, Shop shop, ulong seed, ErrorCause causes, SortedDictionary<int, SawnWedge> places)
    {
        RingPlan alone = plan.Alone(batch);
        int setting = Enumerable.Range(0, batch + 1).First(b => plan.Batches[b].Glued.HalfAngle == plan.Batches[batch].Glued.HalfAngle);
        (double, double) fences = FenceErrors(plan, shop, seed + (500_000UL * (ulong)setting), causes);
        // With wood left out between them, no two wedges share a cut: each is a run of its own.
        int perBoard = alone.Strip.Slip > 0 ? 1 : Math.Max(1, alone.Strip.WedgesIn(shop.Boards.Length.Millimetres));
        foreach (WoodNeed wood in alone.Woods)
        {
            ulong pile = seed + (1000UL * (ulong)(plan.Woods.IndexOf(wood) + 1));
            // Segments of a laminated board all come from the one pile, whatever woods show on them.
            IEnumerable<int> where = alone.Batches[0].Places.Where(p => plan.Lamination is not null || string.Equals(plan.Layout[p].Wood, wood.Wood, StringComparison.OrdinalIgnoreCase));
            foreach ((int place, SawnWedge wedge) in where.Zip(Pile(alone, shop, wood.Needed, perBoard, pile, fences, causes))) places.Add(place, wedge);
        }
    }

    // A little longer than the plan's board: a stop that errs must not run the simulated board short.
    internal static double EnoughFor(RingPlan plan, int wedges) => plan.Strip.LengthFor(wedges) + (2 * OffcutTip) + (wedges * 0.5) + plan.Strip.Pitch;

    private static FitWedge Held(FitWedge wedge, double before, double after)
    {
        ConvexPolygon Thickened(ConvexPolygon section) => Moved(Moved(section, after, plusSide: true), before, plusSide: false);
        return before == 0 && after == 0 ? wedge : new(Thickened(wedge.Bottom), Thickened(wedge.Top));
    }

    // One face moved outwards by a strip of even thickness; the rim and the tip go on straight to its ends.
    private static ConvexPolygon Moved(ConvexPolygon section, double thickness, bool plusSide)
    {
        if (thickness == 0) return section;
        ImmutableArray<Vector2D> corners = section.Vertices;
        (int tip, int rim) = FaceChain.Ends(corners, plusSide);
        Vector2D along = corners[rim] - corners[tip];
        Vector2D outwards = (plusSide ? thickness : -thickness) / along.Length * new Vector2D(-along.Y, along.X);
        (int first, int last) = plusSide ? (rim, tip) : (tip, rim);
        int n = corners.Length, facets = (last - first + n) % n;
        return new([.. Enumerable.Range(0, n).Select(k => (k - first + n) % n <= facets ? corners[k] + outwards : corners[k])]);
    }

    private static IEnumerable<SawnWedge> Pile(RingPlan plan, Shop shop, int needed, int perBoard, ulong seed, (double, double) fences, ErrorCause causes)
    {
        for (int board = 0; needed > 0; board++)
        {
            int wedges = Math.Min(needed, perBoard);
            SawRun run = SawSimulator.Run(Job(plan, shop, EnoughFor(plan, wedges), wedges, seed + (ulong)board, fences, causes));
            if (run.Wedges.Length < wedges) throw new BadInputException($"ring {plan.Ring.Name}", run.Explanation.TrimEnd('.'), "a wider stop or smaller errors are needed");
            foreach (SawnWedge wedge in run.Wedges) yield return wedge;
            needed -= wedges;
        }
    }

    private static Jig Jig(SledKind kind, double mitre, (double First, double Second) errors) => kind == SledKind.TwoFences
        ? new TwoFenceSled(new(mitre, errors.First), new(mitre, errors.Second))
        : new FlippedMitre(new(mitre, errors.First));

    internal static Variation VariationOf(Shop shop, ErrorCause causes) => new()
    {
        SeatingMean = causes.HasFlag(ErrorCause.Bias) ? shop.Hands.AngleBias.Radians : 0,
        SeatingDeviation = causes.HasFlag(ErrorCause.CutToCut) ? shop.Hands.AngleSd.Radians : 0,
        StopDeviation = causes.HasFlag(ErrorCause.Stop) ? shop.Hands.StopSd.Millimetres : 0,
        KerfDeviation = causes.HasFlag(ErrorCause.Kerf) ? shop.Saw.KerfSd.Millimetres : 0,
        SandingUnevenness = causes.HasFlag(ErrorCause.Sanding) ? shop.Sanding.Unevenness.Millimetres : 0,
    };

    // Faces are trued by themselves, so what the rough saw did wrong is sanded away as long as the oversize covers it.
    internal static DiscSander SanderOf(double mitre, double error, double oversize, Shop shop, ErrorCause causes) => new(new Fence(mitre, error), oversize)
    {
        SeatingMean = causes.HasFlag(ErrorCause.Bias) ? shop.Hands.AngleBias.Radians : 0,
        SeatingDeviation = causes.HasFlag(ErrorCause.CutToCut) ? shop.Hands.AngleSd.Radians : 0,
        SizeDeviation = causes.HasFlag(ErrorCause.Stop) ? shop.Hands.StopSd.Millimetres : 0,
    };
}
