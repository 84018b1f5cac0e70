using System.ComponentModel;
using Ringwright.Cli.Output;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright plan FILE --out FOLDER</c>.</summary>
internal sealed class PlanCommand(IAnsiConsole console) : Command<PlanCommand.Settings>
{
    internal sealed class Settings : PieceSettings
    {
        [CommandOption("-o|--out <FOLDER>")]
        [Description("Folder for job sheet, plan and cut list; without it only the summary is printed.")]
        public string? Out { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        Plan plan = settings.Plan();
        MeasureStyle style = settings.Style(plan.Piece.Units);
        Summary.Write(console, plan, style);
        if (settings.Out is null) return ExitCode.Done;
        AlignedText.Heading(console, "Written");
        foreach (string path in PlanFiles.Write(plan, style, settings.File, settings.Out)) console.WriteLine("  " + path);
        return ExitCode.Done;
    }
}
