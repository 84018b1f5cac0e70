using System.Collections.Immutable;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Timber;

/// <summary>What would lessen the stress.</summary>
public enum MovementHelp
{
    /// <summary>Strips from boards sawn the other way.</summary>
    OtherCut,

    /// <summary>Wood brought to a certain moisture before it is glued.</summary>
    GlueMoisture,

    /// <summary>A ring, or a shallower one, instead of the disc or ring.</summary>
    Ring,
}

/// <summary>A change that the computation shows to help.</summary>
/// <param name="Help">What to change.</param>
/// <param name="Value">Moisture in percent, or the depth of the ring in mm; 0 for a cut.</param>
/// <param name="Use">What is then used of the strength, as a share; less than without the change.</param>
public readonly record struct MovementAdvice(MovementHelp Help, double Value, double Use);

/// <summary>Whether a glued ring stands the seasons, at worst over its woods, both ways of sawing boards, and the climate.</summary>
/// <param name="Worst">The worst case.</param>
/// <param name="Advice">What helps, most first; empty when little of the strength is used.</param>
public sealed record MovementVerdict(MovementCase Worst, ImmutableArray<MovementAdvice> Advice)
{
    /// <summary>Below this share of the strength there is nothing to say.</summary>
    public const double WorthSaying = 0.5;

    // A change that gains less than a twentieth is not worth the trouble.
    internal const double WorthDoing = 0.95;

    // Beyond this a ring is no longer one.
    private const double ThinnestRing = 0.97;

    /// <summary>Judges a ring.</summary>
    /// <param name="body">The ring as turned.</param>
    /// <param name="woods">Its woods, at least one. Each is judged as if the whole ring were of it.</param>
    /// <param name="range">The moistures it goes through.</param>
    /// <param name="joint">What its joints hold.</param>
    public static MovementVerdict Of(RingBody body, IReadOnlyList<Species> woods, MoistureRange range, GlueJoint joint)
    {
        ImmutableArray<RingMovement> rings = [.. woods.SelectMany(wood => new[] { new RingMovement(body, wood, GrainCut.FlatSawn, joint), new RingMovement(body, wood, GrainCut.QuarterSawn, joint) })];
        MovementCase worst = WorstOf(rings, range);
        if (worst.Use < WorthSaying) return new(worst, []);
        IEnumerable<MovementAdvice?> advice = [OtherCut(rings, range, worst), GlueMoisture(rings, range), Shallower(rings, range, worst)];
        return new(worst, [.. advice.OfType<MovementAdvice>().Where(a => a.Use < WorthDoing * worst.Use).OrderBy(a => a.Use)]);
    }

    private static MovementCase WorstOf(IEnumerable<RingMovement> rings, MoistureRange range) => rings.Select(r => r.Worst(range)).MaxBy(c => c.Use);

    private static MovementAdvice? OtherCut(ImmutableArray<RingMovement> rings, MoistureRange range, MovementCase worst) =>
        new(MovementHelp.OtherCut, 0, WorstOf(rings.Where(r => r.Cut != worst.Ring.Cut), range).Use);

    private static MovementAdvice? GlueMoisture(ImmutableArray<RingMovement> rings, MoistureRange range)
    {
        double best = Halving.LastWhere(range.HomeLow, range.HomeHigh, glued =>
            rings.Max(r => r.Between(glued, range.HomeLow).Use) <= rings.Max(r => r.Between(glued, range.HomeHigh).Use));
        return new(MovementHelp.GlueMoisture, best, WorstOf(rings, range.GluedAt(best)).Use);
    }

    // The deepest ring of the same outside that stands it, by halving: the shallower, the less the stress. Halved for the worst
    // case alone; should another be the worst of the shallower ring, halved again for that one.
    private static MovementAdvice? Shallower(ImmutableArray<RingMovement> rings, MoistureRange range, MovementCase worst)
    {
        double depth = worst.Ring.Body.Depth;
        for (int i = 0; i < 3 && worst.Use > 1 + 1e-6; i++)
        {
            if (Holding(worst, depth) is not double less) return null;
            depth = less;
            worst = WorstOf(rings.Select(r => WithDepth(r, depth)), range);
        }

        return depth < rings[0].Body.Depth ? new(MovementHelp.Ring, depth, worst.Use) : null;
    }

    private static double? Holding(MovementCase worst, double depth)
    {
        double thinnest = (1 - ThinnestRing) * worst.Ring.Body.Outer;
        bool Holds(double d) => WithDepth(worst.Ring, d).Between(worst.From, worst.To).Use <= 1;
        return thinnest < depth && Holds(thinnest) ? Halving.LastWhere(thinnest, depth, Holds) : null;
    }

    private static RingMovement WithDepth(RingMovement ring, double depth) =>
        new(ring.Body with { Inner = ring.Body.Outer - depth }, ring.Species, ring.Cut, ring.Joint);
}
