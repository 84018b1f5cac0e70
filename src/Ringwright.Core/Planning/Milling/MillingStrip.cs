using System.Collections.Immutable;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>What strips are for.</summary>
public enum StripUse
{
    /// <summary>Segments.</summary>
    Segments,

    /// <summary>Spacers between segments.</summary>
    Spacers,

    /// <summary>Strips of a laminated board.</summary>
    Lamination,

    /// <summary>Boards for staves: only their thickness is set here.</summary>
    Staves,

    /// <summary>A board for a layer of one piece.</summary>
    Layer,
}

/// <summary>Strips of one wood that are milled at one setting of planer and rip fence, for one ring or several. Lengths in mm.</summary>
/// <param name="Use">What they are for.</param>
/// <param name="Wood">Their wood.</param>
/// <param name="Thickness">As planed.</param>
/// <param name="Width">As ripped and trued; null where the width is sawn later.</param>
/// <param name="Length">Length of strip in all, the ends of the boards counted.</param>
/// <param name="Boards">Boards of the shop's length.</param>
/// <param name="Rings">The rings they are for, from the bottom up.</param>
public sealed record MillingStrip(StripUse Use, string Wood, double Thickness, double? Width, double Length, int Boards, ImmutableArray<string> Rings)
{
    // Finer than any planer or rip fence is set, mm.
    private const double SameSetting = 0.02;

    /// <summary>The strips of a plan, those of one wood and size together: thickest first, then widest.</summary>
    internal static ImmutableArray<MillingStrip> Of(Plan plan) =>
    [
        .. plan.Rings.SelectMany(Of).GroupBy(s => (s.Use, Wood: s.Wood.ToUpperInvariant(), Setting(s.Thickness), Setting(s.Width ?? 0)))
            .Select(g => g.First() with { Length = g.Sum(s => s.Length), Boards = g.Sum(s => s.Boards), Rings = [.. g.SelectMany(s => s.Rings).Distinct()] })
            .OrderByDescending(s => Setting(s.Thickness)).ThenByDescending(s => Setting(s.Width ?? 0)),
    ];

    /// <summary>Whether two sizes are one setting, mm.</summary>
    internal static bool IsSame(double one, double other) => Setting(one) == Setting(other);

    private static long Setting(double size) => (long)Math.Round(size / SameSetting);

    private static IEnumerable<MillingStrip> Of(RingPlan ring)
    {
        string name = ring.Ring.Name;
        if (ring.Lamination is Lamination board)
            foreach (StripNeed kind in board.Kinds) yield return new(StripUse.Lamination, kind.Wood, kind.Thickness, ring["strip-width"].Value, kind.Length, kind.Sticks, [name]);
        else if (ring.Ring is SolidLayer { IsVeneer: false })
            yield return new(StripUse.Layer, ring.Woods[0].Wood, ring["board-thickness"].Value, null, ring.Woods[0].Length, ring.Woods[0].Boards, [name]);
        else if (!ring.Batches.IsEmpty)
            foreach (IGrouping<string, WoodNeed> wood in ring.Woods.GroupBy(w => w.Wood, StringComparer.OrdinalIgnoreCase))
                yield return new(ring.Stave is null ? StripUse.Segments : StripUse.Staves, wood.Key, ring["board-thickness"].Value, ring.Stave is null ? ring["board-width"].Value : null, wood.Sum(w => w.Length), wood.Sum(w => w.Boards), [name]);
        foreach (SpacerBatch spacer in ring.Spacers) yield return new(StripUse.Spacers, spacer.Wood, spacer.Thickness, spacer.Height, spacer.Need.Length, spacer.Need.Boards, [name]);
    }
}
