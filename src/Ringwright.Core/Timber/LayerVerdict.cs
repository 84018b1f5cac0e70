using System.Collections.Immutable;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Timber;

/// <summary>What would lessen the stress in a solid layer.</summary>
public enum LayerHelp
{
    /// <summary>Let it float in a groove with room to move, glued nowhere or only in its middle.</summary>
    Unglued,

    /// <summary>Make it smaller.</summary>
    Smaller,

    /// <summary>Make it of segments like the ring it is glued to, so that the grain of both runs around.</summary>
    Segments,

    /// <summary>Wood brought to a certain moisture before it is glued.</summary>
    GlueMoisture,
}

/// <summary>A change that the computation shows to help.</summary>
/// <param name="Help">What to change.</param>
/// <param name="Value">Room across the grain in mm, width in mm, or moisture in percent; 0 for segments.</param>
/// <param name="Use">What is then used of the strength, as a share.</param>
public readonly record struct LayerAdvice(LayerHelp Help, double Value, double Use);

/// <summary>Whether a solid layer that is glued to a ring of segments stands the seasons.</summary>
/// <param name="Worst">The worst case.</param>
/// <param name="From">Moisture when glued, percent.</param>
/// <param name="To">Moisture after, percent.</param>
/// <param name="Advice">What helps, most first; empty when little of the strength is used.</param>
public sealed record LayerVerdict(LayerMovement Worst, double From, double To, ImmutableArray<LayerAdvice> Advice)
{
    /// <summary>Thinner layers bend and creep with the ring (common practice, no source), mm.</summary>
    public const double Veneer = 2;

    /// <summary>Judges a layer glued to a ring of segments.</summary>
    /// <param name="species">Its wood.</param>
    /// <param name="width">Its diameter, mm.</param>
    /// <param name="thickness">Its thickness, mm.</param>
    /// <param name="segments">Segments of the ring it is glued to.</param>
    /// <param name="range">The moistures it goes through.</param>
    /// <param name="joint">What joints hold.</param>
    public static LayerVerdict Of(Species species, double width, double thickness, int segments, MoistureRange range, GlueJoint joint)
    {
        LayerMovement Case(GrainCut cut, double from, double to) => LayerMovement.Between(species, cut, width, thickness, from, to, 0, joint);
        double Use(double from, double to) => Math.Max(Case(GrainCut.FlatSawn, from, to).Use, Case(GrainCut.QuarterSawn, from, to).Use);
        bool dry = Use(range.GluedHigh, range.HomeLow) >= Use(range.GluedLow, range.HomeHigh);
        (double from, double to) = dry ? (range.GluedHigh, range.HomeLow) : (range.GluedLow, range.HomeHigh);
        LayerMovement flat = Case(GrainCut.FlatSawn, from, to), quarter = Case(GrainCut.QuarterSawn, from, to);
        LayerMovement worst = flat.Use >= quarter.Use ? flat : quarter;
        if (worst.Use < MovementVerdict.WorthSaying) return new(worst, from, to, []);
        double room = Math.Max(Math.Abs(flat.FreeChange), Math.Abs(quarter.FreeChange));
        double best = Halving.LastWhere(range.HomeLow, range.HomeHigh, glued => Use(glued, range.HomeLow) <= Use(glued, range.HomeHigh));
        List<LayerAdvice> advice =
        [
            new(LayerHelp.Unglued, room, 0),
            new(LayerHelp.GlueMoisture, best, Math.Max(Use(best, range.HomeLow), Use(best, range.HomeHigh))),
            new(LayerHelp.Segments, 0, MovementVerdict.Of(new(segments, width / 2, 0), [species], range, joint).Worst.Use),
        ];
        if (worst.WidthThatHolds() is double holds) advice.Add(new(LayerHelp.Smaller, holds, (worst with { Width = holds }).Use));
        return new(worst, from, to, [.. advice.Where(a => a.Use < MovementVerdict.WorthDoing * worst.Use).OrderBy(a => a.Use)]);
    }
}
