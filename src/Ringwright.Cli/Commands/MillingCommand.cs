using System.Globalization;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright milling FILE</c>: from rough wood to the strips of the whole piece, batched by setting.</summary>
internal sealed class MillingCommand(IAnsiConsole console) : Command<AnswerSettings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "milling",
        "From rough wood to the strips of the whole piece: thicknesses, widths, passes, and how exact they must be.",
        "milling examples/feature-bowl.json");

    public override int Execute(CommandContext context, AnswerSettings settings, CancellationToken cancellationToken)
    {
        Plan plan = settings.Plan();
        MeasureStyle style = settings.Style(plan.Piece.Units);
        var milling = MillingPlan.Of(plan);
        if (settings.Json) JsonOut.Write(console, json => MillingJson.Write(json, milling, style));
        else Print(milling, style);
        return ExitCode.Done;
    }

    private void Print(MillingPlan milling, MeasureStyle style)
    {
        string Count(int n) => n.ToString(CultureInfo.InvariantCulture);
        string Rings(IEnumerable<string> rings) => string.Join(", ", rings);
        console.WriteLine($"{milling.Plan.Piece.Name}: {milling.Planer.Length} {(milling.Planer.Length == 1 ? "thickness" : "thicknesses")} on the planer, {milling.Rip.Length} {(milling.Rip.Length == 1 ? "width" : "widths")} on the rip fence.");
        AlignedText.Heading(console, "Plane, from the thickest");
        AlignedText.Write(console, milling.Planer.Select(p => new[]
        {
            style.Length(p.Thickness), p.Rough is double rough ? $"from rough {style.Length(rough)}{(p.Slices > 1 ? $", resawn into {Count(p.Slices)}" : "")}" : "no rough board is thick enough", p.Rough is null ? "" : $"{Count(p.Passes)} passes", Rings(p.Strips.Select(s => s.Wood).Distinct(StringComparer.OrdinalIgnoreCase)),
        }), 0, 2);
        AlignedText.Heading(console, "Rip, from the widest");
        AlignedText.Write(console, milling.Rip.Select(r => new[] { style.Length(r.Width), $"ripped first to {style.Length(r.Rough)}", Rings(r.Strips.SelectMany(s => s.Rings).Distinct()) }), 0);
        AlignedText.Heading(console, "Strips");
        AlignedText.Write(console, milling.Strips.Select(s => new[]
        {
            s.Wood, style.Length(s.Thickness), s.Width is double width ? style.Length(width) : "–", style.Length(s.Length), $"{Count(s.Boards)} {(s.Boards == 1 ? "board" : "boards")}", MillingWords.Use(s.Use), Rings(s.Rings),
        }).Prepend(["wood", "thick", "wide", "long in all", "", "for", ""]), 1, 2, 3);
        AlignedText.Heading(console, "How exact");
        AlignedText.Write(console, milling.Figures.Select(f => new[] { f.Label, style.Print(f.Value, f.Quantity), f.Why.Reason }), 1);
        foreach (NearWidth near in milling.Near) console.WriteLine("  " + near.Sentence.In(style));
        AlignedText.Heading(console, "In this order");
        foreach (Sentence step in milling.Steps()) console.WriteLine("  " + step.In(style));
        foreach (Sentence mind in milling.Minds) console.WriteLine("  Mind: " + mind.In(style));
        AlignedText.Mind(console, Cautions.ForMilling);
    }
}
