using System.Collections.Immutable;
using Ringwright.Core.Pieces;
using Ringwright.Core.Timber;

namespace Ringwright.Core.Planning;

/// <summary>The usual cautions for the work at hand. Common practice; the machine's manual and local rules come first.</summary>
public static class Cautions
{
    internal const string Manual = "The manuals of your machines, local codes and licensed practice come before anything printed here.";

    /// <summary>All cautions for the work that <paramref name="plan"/> asks for, each once.</summary>
    public static ImmutableArray<string> For(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        IEnumerable<string> all =
        [
            .. plan.Rings.Any(r => !r.Batches.IsEmpty) ? For(plan.Shop.Sled.Kind) : [],
            .. plan.Rings.Any(r => r.Board is not null) ? ForTiltedRings : [],
            .. plan.Rings.Any(r => r.Ring is SolidLayer { IsVeneer: false }) ? ForRounds : [],
            .. plan.Rings.Any(r => r.Ring is SolidLayer { IsVeneer: true }) ? ForVeneer : [],
            .. ForWoods(plan.Shop, plan.Rings.SelectMany(r => r.Layout).Select(s => s.Wood)),
        ];
        return [.. all.Where(c => c != Manual).Distinct(), Manual];
    }

    /// <summary>What the dust of these woods may do beyond the usual, a line for each that is known for it. Never complete.</summary>
    public static IEnumerable<string> ForWoods(Shop shop, IEnumerable<string> woods)
    {
        SpeciesTable species = SpeciesTable.For(shop);
        return woods.Distinct(StringComparer.OrdinalIgnoreCase).Select(species.FindOrAssume).Where(w => w.Caution.Length > 0)
            .Select(w => $"{char.ToUpperInvariant(w.Name[0])}{w.Name[1..]}: {w.Caution.TrimEnd('.')}.").Distinct();
    }

    /// <summary>Cautions for sawing a round out of a board.</summary>
    public static ImmutableArray<string> ForRounds { get; } =
    [
        "Bandsaw: guide and guard just above the wood, a blade narrow enough for the curve, hands out of the blade's line and 150 mm (6 in) from it.",
        "Saw off the corners first and run relief cuts to the line. Stop the saw before you back out of a long curve: a blade drawn back leaves its wheels.",
        "The wood lies flat on the table along the whole cut. A warped or round piece that can roll is grabbed and thrown.",
        "On a centre pin: clamp the pin's board to the table, and let no part of the hand follow the round past the blade.",
        Manual,
    ];

    /// <summary>Cautions for sawing rings out of a board with a tilted table.</summary>
    public static ImmutableArray<string> ForTiltedRings { get; } =
    [
        "On a tilted table wood slides down towards the blade or away from it: lock the tilt, keep a ledge on the low side, and stand where nothing can push you in.",
        "The hold-down and the upper guide no longer meet the wood squarely: set them anew and turn the blade by hand once around before the motor runs.",
        "Start holes: clamp the disc to the drill's tilted table; a drill that enters a slope wanders, so start with a small one.",
        "Inside cuts: unplug the saw whenever the blade is threaded or freed. Never back out of a curve with the saw running.",
        "Thin rings break: feed gently, fingers beside the line and never in front of the blade, and let the blade stop before you lift a ring off.",
        Manual,
    ];

    /// <summary>Cautions for turning a glued stack.</summary>
    public static ImmutableArray<string> ForLathe { get; } =
    [
        "Look at every joint before mounting and again when the work is round. Never turn work with an open joint, a crack or glue that has not cured.",
        "Full face shield, no loose sleeves, cuffs, gloves, cords or long hair; stand out of the line of the rim when the lathe starts.",
        "Turn the work by hand once around before the motor runs; move the rest only when it stands still, and set it close to the wood.",
        "Start at the slowest speed and speed up only while nothing shakes. The lathe's plate, the chuck's manual and the lower of the printed speeds hold.",
        "Jaws: check them again after the first cuts and after every pause; tailstock up wherever it can be.",
        "Sand with the rest out of the way and the paper below the work; extract the dust at the lathe and wear a mask.",
        Manual,
    ];

    /// <summary>Cautions for cutting and pressing veneer.</summary>
    public static ImmutableArray<string> ForVeneer { get; } =
    [
        "Knife: sharp, along a template that is held down with clamps, drawn past the body, the other hand behind the cut.",
        "Several light strokes; at the end of the grain cut towards the middle, or the edge splits off.",
        "Glue: read its sheet, air the room, gloves where it asks for them.",
        Manual,
    ];

    /// <summary>Cautions for planing and ripping.</summary>
    public static ImmutableArray<string> ForMilling { get; } =
    [
        "Jointer and planer: no board shorter or thinner than the manual allows, knots and nails out, push blocks on the jointer, never a hand over the cutters, never two boards of unequal thickness beside each other.",
        "Ripping: splitter, guard and push stick; one edge straight and against the fence; stand beside the board's line, for a strip that is pinched comes back.",
        "Wide boards cup and narrow ones bow when they are ripped: let them rest a day, then take the last cut.",
        "Fine dust harms: extract it at the machine and wear a mask; hearing protection at the planer.",
        Manual,
    ];

    /// <summary>Cautions for gluing, flattening and stacking.</summary>
    public static ImmutableArray<string> ForGluing { get; } =
    [
        "Glue: read its sheet, air the room, gloves where it asks for them; its times hold for the warmth and moisture it names.",
        "Band clamps slip off low rings: hold the band with a block while you tighten, fingers out of the joint.",
        "Flattening a ring on a drum or disc: on a carrier with an edge around it, never loose; a ring that is not cured can burst.",
        "Lathe: nothing turns before the cure time is over and every joint is closed; then face shield on, by hand first, slow, out of the line of the rim.",
        Manual,
    ];

    /// <summary>Cautions for sawing and sanding wedges with a sled of <paramref name="kind"/>.</summary>
    public static ImmutableArray<string> For(SledKind kind) =>
    [
        "Hold the board with a hold-down on the sled, never a small piece with fingers; keep hands 150 mm (6 in) from the blade.",
        "Small wedges: a bandsaw is kinder than a table saw. Let the blade stop before you take a wedge that lies beside it.",
        "Use the stop only to place the board, and see that the sawn wedge can fall free: caught between stop and blade it is thrown.",
        "Back the cut with a sacrificial fence face so that nothing drops into the slot.",
        kind == SledKind.DiscSander
            ? "Disc sander: only on the half of the disc that moves down, table close to the disc, small wedges in a holder."
            : "Sand small wedges on a flat sheet or in a holder, not in the fingertips against a running disc.",
        "Fine dust harms: extract it at the machine and wear a mask; some woods irritate skin and lungs.",
        "Glue: read its sheet, air the room, gloves where it asks for them.",
        "Lathe: sound joints only, face shield on, turn by hand first, start slow, stand out of the line of the rim.",
        Manual,
    ];
}
