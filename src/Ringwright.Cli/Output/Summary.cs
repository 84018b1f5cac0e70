using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Spectre.Console;

namespace Ringwright.Cli.Output;

/// <summary>What <c>plan</c> prints: the answer first, then what to set, to saw and to mind.</summary>
internal static class Summary
{
    private static readonly string[] ToSet = ["board-width", "board-thickness", "mitre", "rule-offset", "sine-bar-height", "stop", "stave-length", "blade-tilt", "tilt-height", "end-tilt"];
    private static readonly string[] ToKnow = ["rim-edge", "tip", "opening-corners", "across-flats", "strip-per-wedge", "dust-share", "pattern-repeat", "lamination-length", "lamination-repeats", "line-step"];
    private static readonly string[] HowExact = ["angle-per-wedge", "angle-per-fence", "rule-accuracy", "tilt-within"];

    public static void Write(IAnsiConsole console, Plan plan, MeasureStyle style)
    {
        console.Write(new Text(plan.Piece.Name, new Style(decoration: Decoration.Bold)));
        console.WriteLine();
        console.WriteLine(plan.Verdict.In(style));
        foreach (RingPlan ring in plan.Rings) WriteRing(console, ring, style);
        AlignedText.Mind(console, plan.Shop.Sled.Kind);
    }

    private static void WriteRing(IAnsiConsole console, RingPlan ring, MeasureStyle style)
    {
        AlignedText.Heading(console, $"{ring.Ring.Name}: {RingDescription.Of(ring.Ring).In(style)}");
        Figures(console, "Set", ring, ToSet, style);
        Figures(console, "The wedge", ring, ToKnow, style);
        Figures(console, "So that no joint gapes", ring, HowExact, style);
        console.WriteLine(" Saw");
        AlignedText.Write(console, ring.Woods.Select(w => new[]
        {
            w.Wood, $"{w.Needed} + {w.Spares} spare", $"{w.Boards} board{(w.Boards == 1 ? "" : "s")}", $"{style.Length(w.Length)} of strip", $"{style.Length(w.LeftOver)} left over",
        }), 1, 2, 3, 4);
        foreach (StripNeed strip in ring.Lamination?.Kinds ?? [])
            console.WriteLine($"  strips of {strip.Wood}: {strip.Count}, {style.Length(strip.Thickness)} thick, {style.Length(strip.Height)} along the grain, {style.Length(strip.Length)} of board");
        console.WriteLine("  around the ring: " + Order(ring.Ring));
        foreach (Finding finding in ring.Findings) console.WriteLine($"  {Word(finding.Weight)}{finding.Sentence.In(style)}");
    }

    private static void Figures(IAnsiConsole console, string title, RingPlan ring, string[] names, MeasureStyle style)
    {
        Figure[] known = [.. names.Select(ring.Find).OfType<Figure>()];
        if (known.Length == 0) return;
        console.WriteLine(" " + title);
        AlignedText.Write(console, known.Select(f => new[] { f.Label, style.Print(f.Value, f.Quantity), f.Name }), 1);
    }

    private static string Order(Ring ring)
    {
        string once = string.Join(", ", ring.Cycle);
        if (ring is LaminatedRing) return $"{once}, again and again in the laminated board";
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
