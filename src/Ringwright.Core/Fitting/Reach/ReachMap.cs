using System.Collections.Immutable;
using MathNet.Numerics.Distributions;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Fitting;

/// <summary>How small one can go: every number of segments against every diameter, for one shop.</summary>
/// <param name="Shop">The shop it is for.</param>
/// <param name="Segments">The numbers of segments, one column each.</param>
/// <param name="Diameters">The diameters across flats, mm, one row each.</param>
/// <param name="Cells">Row by row.</param>
public sealed record ReachMap(Shop Shop, ImmutableArray<int> Segments, ImmutableArray<double> Diameters, ImmutableArray<ReachCell> Cells)
{
    /// <summary>Below this chance to close, with the fences corrected by a test half, two tries in three gape.</summary>
    public const double FairChance = 1.0 / 3;

    /// <summary>Above this share of sawdust a cell counts as mostly sawdust.</summary>
    public const double MostDust = 0.6;

    private const int MostCells = 200_000;

    /// <summary>The cell of a column and row.</summary>
    public ReachCell this[int column, int row] => Cells[(row * Segments.Length) + column];

    /// <summary>Works out the map.</summary>
    /// <exception cref="BadInputException">A shop, number of segments or diameter that cannot be, or too large a map.</exception>
    public static ReachMap Of(Shop shop, ImmutableArray<int> segments, ImmutableArray<double> diameters)
    {
        ShopCheck.Check(shop);
        if (segments.IsDefaultOrEmpty || diameters.IsDefaultOrEmpty)
            throw new BadInputException("reach", "no segments or no diameters are given", "give at least one of each");
        if ((long)segments.Length * diameters.Length > MostCells)
            throw new BadInputException("reach", $"{segments.Length} by {diameters.Length} sizes are too many", $"at most {MostCells} are worked out");
        foreach (int n in segments)
            if (n is < PieceCheck.FewestSegments or > PieceCheck.MostSegments) throw new BadInputException("segments", $"{n} segments cannot make a ring", $"{PieceCheck.FewestSegments} to {PieceCheck.MostSegments} can");
        foreach (double d in diameters)
            if (!(d >= PieceCheck.SmallestSize && d <= PieceCheck.LargestSize)) throw new BadInputException("diameter", $"{d} mm cannot be", $"{PieceCheck.SmallestSize} mm to {PieceCheck.LargestSize} mm can");
        return new(shop, segments, diameters, [.. diameters.SelectMany(d => segments.Select(n => Cell(shop, n, d)))]);
    }

    /// <summary>One size.</summary>
    public static ReachCell Cell(Shop shop, int segments, double diameter)
    {
        var glued = new WedgeGeometry(segments, diameter / 2, 0);
        WedgeGeometry sawn = glued.BeforeSanding(shop.Sanding.PerFace.Millimetres);
        var strip = new StripLayout(sawn, shop.Saw.Kerf.Millimetres, shop.Saw.EndTrim.Millimetres, shop.Saw.HoldingLength.Millimetres);
        ClosingBudget budget = ClosingBudget.Of(glued, 1, shop).Corrected;
        return new(segments, diameter, glued.RimEdge, sawn.Tip, glued.FaceLength, Required(budget, shop), budget.Sd / Math.Sqrt(Factor(shop, segments)), budget.Chance, strip.DustShare, Stop(shop, glued, sawn, strip, budget));
    }

    /// <summary>What stops a size, as a sentence with its numbers.</summary>
    public static Sentence Say(ReachCell cell, Shop shop) => cell.Stop switch
    {
        ReachStop.SandedAway => Sentence.Of("Sanding {0} off each face leaves less than half of the rim edge of {1} as sawn.", Measured.Fine(shop.Sanding.PerFace.Millimetres), Measured.Length(cell.RimEdge + cell.SawnTip)),
        ReachStop.BoardTooShort => Sentence.Of("A board of {0} yields no wedge beside what must be left to hold.", Measured.Length(shop.Boards.Length.Millimetres)),
        ReachStop.TooSmallToHold => Sentence.Of("The rim edge is {0}; these hands hold and sand no less than {1}.", Measured.Length(cell.RimEdge), Measured.Length(shop.Wanted.LeastRimEdge.Millimetres)),
        ReachStop.MostlySawdust => Sentence.Of("{0} of the strip becomes sawdust.", Measured.Share(cell.Dust)),
        ReachStop.ProbablyGapes => Sentence.Of("It closes with a chance of only {0}: each face must be within {1}, these hands do {2} (standard deviations). Glue two halves and true their faces.", Measured.Share(cell.Chance), Measured.FineAngle(cell.Required), Measured.FineAngle(cell.Achieved)),
        _ => Sentence.Of("It can be made: rim edge {0}, closes with a chance of {1}.", Measured.Length(cell.RimEdge), Measured.Share(cell.Chance)),
    };

    private static ReachStop Stop(Shop shop, WedgeGeometry glued, WedgeGeometry sawn, StripLayout strip, ClosingBudget budget)
    {
        if (glued.RimEdge < sawn.RimEdge / 2) return ReachStop.SandedAway;
        if (strip.WedgesIn(shop.Boards.Length.Millimetres) < 1) return ReachStop.BoardTooShort;
        if (glued.RimEdge < shop.Wanted.LeastRimEdge.Millimetres) return ReachStop.TooSmallToHold;
        if (strip.DustShare > MostDust) return ReachStop.MostlySawdust;
        return budget.Chance < FairChance ? ReachStop.ProbablyGapes : ReachStop.None;
    }

    // The spread of one face that, with all faces alike and nothing else, closes with the wanted chance: L / (z √factor).
    private static double Required(ClosingBudget budget, Shop shop)
    {
        double z = Normal.InvCDF(0, 1, (1 + shop.Wanted.Confidence) / 2);
        return budget.Limit / (z * Math.Sqrt(Factor(shop, budget.Wedges)));
    }

    private static double Factor(Shop shop, int segments) => ClosingBudget.Runs(segments, 1, shop.Sled.Kind).VarianceFactor;
}
