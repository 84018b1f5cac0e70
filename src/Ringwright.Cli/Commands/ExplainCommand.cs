using System.ComponentModel;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright explain FILE [FIGURE]</c>: where a figure comes from.</summary>
internal sealed class ExplainCommand(IAnsiConsole console) : Command<ExplainCommand.Settings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "explain",
        "Show formula, values and source behind a figure; without a name, list all figures.",
        "explain examples/two-wood-disc.json board-width");

    internal sealed class Settings : RingSettings
    {
        [CommandArgument(1, "[FIGURE]")]
        [Description("The figure's name, such as board-width; without it all names are listed.")]
        public string? Figure { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        Plan plan = settings.Plan();
        MeasureStyle style = settings.Style(plan.Piece.Units);
        RingPlan ring = settings.Pick(plan);
        if (settings.Figure is null)
        {
            AlignedText.Write(console, plan.Figures.Concat(ring.Figures).Select(f => new[] { f.Name, style.Print(f.Value, f.Quantity), f.Label }), 1);
            return ExitCode.Done;
        }

        Figure figure = ring.Find(settings.Figure) ?? plan.Figures.FirstOrDefault(f => string.Equals(f.Name, settings.Figure, StringComparison.OrdinalIgnoreCase))
            ?? throw new BadInputException("figure", $"there is no “{settings.Figure}”", $"one of these is needed: {string.Join(", ", plan.Figures.Concat(ring.Figures).Select(f => f.Name))}");
        Explain(figure, style);
        return ExitCode.Done;
    }

    private void Explain(Figure figure, MeasureStyle style)
    {
        AlignedText.Heading(console, $"{figure.Label}: {style.Print(figure.Value, figure.Quantity)}");
        console.WriteLine("  " + figure.Why.Reason);
        console.WriteLine();
        console.WriteLine($"  {figure.Name} = {figure.Why.Formula}");
        AlignedText.Write(console, figure.Why.Inputs.Select(i => new[] { "  " + i.Symbol, "= " + style.Print(i.Value, i.Quantity), i.Meaning }));
        console.WriteLine("  Source: " + figure.Why.Source);
    }
}
