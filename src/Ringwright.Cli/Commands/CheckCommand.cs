using Ringwright.Cli.Reference;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright check FILE</c>: the verdict, and what was found.</summary>
internal sealed class CheckCommand(IAnsiConsole console) : Command<PieceSettings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "check",
        "Say whether a piece can be made, and what to mend first.",
        "check examples/two-wood-disc.json");

    public override int Execute(CommandContext context, PieceSettings settings, CancellationToken cancellationToken)
    {
        Plan plan = settings.Plan();
        MeasureStyle style = settings.Style(plan.Piece.Units);
        console.WriteLine(plan.Verdict.In(style));
        Finding[] doubts = [.. plan.Findings.Where(f => f.Weight != Weight.Note)];
        // What several rings have in common is said once, of the first.
        foreach (IGrouping<string, Finding> alike in doubts.GroupBy(f => f.Sentence.Template))
        {
            Finding finding = alike.First();
            string[] others = [.. alike.Skip(1).Select(f => f.Ring)];
            console.WriteLine($"  {finding.Ring}: {finding.Sentence.In(style)}");
            if (finding.Change is FieldChange change) console.WriteLine($"    {change.Label.In(style)} (\"{change.Field}\": \"{change.Millimetres} mm\")");
            if (others.Length > 0) console.WriteLine($"    So do, with numbers of their own: {string.Join(", ", others)}.");
        }

        return doubts.Length == 0 ? ExitCode.Done : ExitCode.Doubt;
    }
}
