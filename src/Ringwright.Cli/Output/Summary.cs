using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Spectre.Console;

namespace Ringwright.Cli.Output;

/// <summary>What <c>plan</c> prints: the answer first, then what to set, to saw and to mind.</summary>
internal static class Summary
{
    private static readonly string[] ToSet =
        ["board-width", "board-thickness", "mitre", "rule-offset", "sine-bar-height", "stop", "gap-at-rim", "gap-at-tip", "plate-circle", "stave-length", "blade-tilt", "tilt-height", "end-tilt"];
    private static readonly string[] ToKnow =
        ["rim-edge", "tip", "opening-corners", "across-flats", "strip-per-wedge", "dust-share", "pattern-repeat", "lamination-length", "lamination-repeats", "line-step"];
    private static readonly string[] Round = ["round", "board-length", "boards-across"];
    private static readonly string[] OutOfBoard =
        ["tilt", "tilt-within", "inside-wide", "inside-narrow", "outside-wide", "outside-narrow", "wall-wide", "wall-narrow", "glue-width", "start-hole", "middle-wide", "middle-narrow"];
    private static readonly string[] HowExact = ["angle-per-wedge", "angle-per-fence", "rule-accuracy"];

    public static void Write(IAnsiConsole console, Plan plan, MeasureStyle style)
    {
        console.Write(new Text(plan.Piece.Name, new Style(decoration: Decoration.Bold)));
        console.WriteLine();
        console.WriteLine(plan.Verdict.In(style));
        if (plan.Form is not null || plan.Rings.Length > 1)
        {
            AlignedText.Heading(console, "The whole piece");
            AlignedText.Write(console, plan.Figures.Select(f => new[] { f.Label, style.Print(f.Value, f.Quantity), f.Name }), 1);
        }

        foreach (RingPlan ring in plan.Rings) WriteRing(console, ring, style);
        AlignedText.Mind(console, Cautions.For(plan));
    }

    private static void WriteRing(IAnsiConsole console, RingPlan ring, MeasureStyle style)
    {
        AlignedText.Heading(console, $"{ring.Ring.Name}: {RingDescription.Of(ring.Ring).In(style)}");
        for (int b = 0; b < ring.Batches.Length; b++)
        {
            RingPlan batch = ring.Alone(b);
            string piece = ring.Stave is null ? "wedge" : "stave", which = ring.Batches.Length == 1 ? "" : $", wedge {b + 1}";
            Figures(console, "Set" + which, batch, ToSet, style);
            Figures(console, $"The {piece}" + which, batch, ToKnow, style);
            Figures(console, ring.Ring is OpenRing ? "So that the gaps look even" : "So that no joint gapes", batch, ring.Stave is null ? HowExact : ["tilt-within", .. HowExact], style);
        }

        Figures(console, "The round", ring, Round, style);
        if (ring.Board is not null) Figures(console, "Out of the board", ring, OutOfBoard, style);
        if (!ring.Woods.IsEmpty) console.WriteLine(" Saw");
        AlignedText.Write(console, [.. ring.Woods.Select(w => Row(ring, w, style)), .. ring.Spacers.Select(s => Row(s, style))], 1, 2, 3, 4);
        foreach (StripNeed strip in ring.Lamination?.Kinds ?? [])
            console.WriteLine($"  strips of {strip.Wood}: {strip.Count}, {style.Length(strip.Thickness)} thick, {style.Length(strip.Height)} along the grain, {style.Length(strip.Length)} of board");
        console.WriteLine("  around the ring: " + Order(ring.Ring));
        foreach (Finding finding in ring.Findings) console.WriteLine($"  {Word(finding.Weight)}{finding.Sentence.In(style)}");
    }

    private static string[] Row(RingPlan ring, WoodNeed w, MeasureStyle style) =>
    [
        ring.Batches.Length == 1 ? w.Wood : $"{w.Wood}, wedge {w.Batch + 1}",
        $"{w.Needed} + {w.Spares} spare", $"{w.Boards} board{(w.Boards == 1 ? "" : "s")}", $"{style.Length(w.Length)} of strip", $"{style.Length(w.LeftOver)} left over",
    ];

    private static string[] Row(SpacerBatch s, MeasureStyle style) =>
    [
        $"{s.Wood}, spacers {style.Length(s.Thickness)} thick, {style.Length(s.Length)} long",
        $"{s.Need.Needed} + {s.Need.Spares} spare", $"{s.Need.Boards} strip{(s.Need.Boards == 1 ? "" : "s")}", $"{style.Length(s.Need.Length)} of strip", $"{style.Length(s.Need.LeftOver)} left over",
    ];

    private static void Figures(IAnsiConsole console, string title, RingPlan ring, string[] names, MeasureStyle style)
    {
        Figure[] known = [.. names.Select(ring.Find).OfType<Figure>()];
        if (known.Length == 0) return;
        console.WriteLine(" " + title);
        AlignedText.Write(console, known.Select(f => new[] { f.Label, style.Print(f.Value, f.Quantity), f.Name }), 1);
    }

    private static string Order(Ring ring)
    {
        if (ring is MixedRing mixed)
            return $"{string.Join(", ", mixed.Parts.Select(p => p.IsSpacer ? $"{p.Wood} spacer" : p.Wood))}, {mixed.Repeats} times";
        string once = string.Join(", ", ring.Cycle);
        if (ring is LaminatedRing) return $"{once}, again and again in the laminated board";
        if (ring.Around == 1) return once;
        int times = ring.Around / ring.Cycle.Length;
        int rest = ring.Around % ring.Cycle.Length;
        return $"{once}, {times} times" + (rest == 0 ? "" : $", then {string.Join(", ", ring.Cycle.Take(rest))}");
    }

    private static string Word(Weight weight) => weight switch
    {
        Weight.Stop => "Cannot be: ",
        Weight.Doubt => "Doubt: ",
        _ => "",
    };
}
