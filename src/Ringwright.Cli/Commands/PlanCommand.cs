using System.ComponentModel;
using Ringwright.Cli.Commands.Kept;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.JobSheets;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright plan FILE --out FOLDER</c>.</summary>
internal sealed class PlanCommand(IAnsiConsole console) : Command<PlanCommand.Settings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "plan",
        "Plan a piece: job sheet (PDF), picture (SVG), plan (JSON), cut list (CSV), and a summary here.",
        "plan examples/two-wood-disc.json --out out");

    internal sealed class Settings : PaperSettings
    {
        [CommandOption("-o|--out <FOLDER>")]
        [Description("Folder for job sheet, picture, plan and cut list; without it only the summary is printed.")]
        public string? Out { get; init; }

        [CommandOption("--duplex")]
        [Description("Print on both sides: margins change sides, every ring begins on a front page.")]
        public bool Duplex { get; init; }

        [CommandOption("--sheets <LIST>")]
        [Description("Which sheets: cover, cautions, timber, rings (of several, one sheet for each), detailed (all sheets of every ring), glue, stack, lathe, record, cost or all, separated by commas. Otherwise those that the piece needs.")]
        public string? Sheets { get; init; }

        public override string FromKept(KeptChoices kept) => Words(kept, ("paper", Paper is not null), ("correction", Correction is not null), ("duplex", Duplex));

        public PacketOptions Options(LengthUnit unit) => new(Style(unit), PaperFor(unit), DateOnly.FromDateTime(DateTime.Now))
        {
            Correction = PrintCorrection(),
            Duplex = Duplex || AtHand.Print("duplex") is not null,
            Sheets = Sheets is null ? null : PacketOptions.ReadSheets(Sheets),
        };
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        Plan plan = settings.Plan();
        PacketOptions options = settings.Options(plan.Piece.Units);
        Summary.Write(console, plan, options.Style);
        if (settings.Out is null) return ExitCode.Done;
        AlignedText.Heading(console, "Written");
        foreach (string path in new PlanFiles(plan, options).Write(settings.File, settings.Out)) console.WriteLine("  " + path);
        return ExitCode.Done;
    }
}
