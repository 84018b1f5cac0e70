using System.ComponentModel;
using Ringwright.Cli.Output;
using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Sheets;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright plan FILE --out FOLDER</c>.</summary>
internal sealed class PlanCommand(IAnsiConsole console) : Command<PlanCommand.Settings>
{
    internal sealed class Settings : PieceSettings
    {
        [CommandOption("-o|--out <FOLDER>")]
        [Description("Folder for job sheet, picture, plan and cut list; without it only the summary is printed.")]
        public string? Out { get; init; }

        [CommandOption("--paper <PAPER>")]
        [Description("Paper of the job sheet: a4 or letter. Otherwise Letter for a piece in inches, A4 for others.")]
        public string? Paper { get; init; }

        public PaperSize PaperFor(LengthUnit unit) => Paper?.ToLowerInvariant() switch
        {
            null => unit == LengthUnit.Inch ? PaperSize.Letter : PaperSize.A4,
            "a4" => PaperSize.A4,
            "letter" => PaperSize.Letter,
            _ => throw new BadInputException("--paper", $"“{Paper}” is no paper here", "a4 or letter is needed"),
        };
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        Plan plan = settings.Plan();
        MeasureStyle style = settings.Style(plan.Piece.Units);
        PaperSize paper = settings.PaperFor(plan.Piece.Units);
        Summary.Write(console, plan, style);
        if (settings.Out is null) return ExitCode.Done;
        AlignedText.Heading(console, "Written");
        var files = new PlanFiles(plan, style, paper, DateOnly.FromDateTime(DateTime.Now));
        foreach (string path in files.Write(settings.File, settings.Out)) console.WriteLine("  " + path);
        return ExitCode.Done;
    }
}
