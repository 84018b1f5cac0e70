using System.ComponentModel;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core;
using Ringwright.Core.Planning;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Templates;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright templates FILE --out FOLDER</c>: shapes at true scale for paper, a laser or a router.</summary>
internal sealed class TemplatesCommand(IAnsiConsole console) : Command<TemplatesCommand.Settings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "templates",
        "Shapes at true scale: wedges, rings, profile cards, plates and guides, on paper (PDF) or for a laser or router (SVG, DXF).",
        "templates examples/feature-bowl.json --out out --kinds outside,inside,stack");

    internal sealed class Settings : PaperSettings
    {
        [CommandOption("-o|--out <FOLDER>", isRequired: true)]
        [Description("Folder for the files.")]
        public string Out { get; init; } = "";

        [CommandOption("--format <FORMAT>")]
        [Description("pdf (pages, large shapes over several), svg or dxf (one file each, layers, mm).")]
        public string Format { get; init; } = "pdf";

        [CommandOption("--kinds <LIST>")]
        [Description("Which: wedge, quarter, disc, stack, outside, inside, plate, spacer, lap, gauge, block, separated by commas. Otherwise all.")]
        public string? Kinds { get; init; }

        [CommandOption("--ring <NAME>")]
        [Description("Only those of this ring.")]
        public string? Ring { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        string format = settings.Format.ToLowerInvariant();
        if (format is not ("pdf" or "svg" or "dxf")) throw new BadInputException("--format", $"“{settings.Format}” is no format here", "pdf, svg or dxf is needed");
        IReadOnlySet<TemplateKind>? kinds = settings.Kinds is null ? null : Template.Read(settings.Kinds);
        Plan plan = settings.Plan();
        var options = new PacketOptions(settings.Style(plan.Piece.Units), settings.PaperFor(plan.Piece.Units), DateOnly.FromDateTime(DateTime.Now)) { Correction = settings.PrintCorrection() };
        RingPlan? ring = settings.Ring is null ? null : RingSettings.Pick(plan, settings.Ring);
        Template[] templates = [.. TemplateSet.Of(plan, options.Style, kinds, ring)];
        if (templates.Length == 0) throw new BadInputException("--kinds", "this piece has no such template", $"choose among {string.Join(", ", TemplateSet.Of(plan, options.Style, null, ring).Select(t => t.Kind.ToString().ToLowerInvariant()).Distinct())}");
        AlignedText.Heading(console, "Written");
        foreach (string path in new TemplateFiles(plan, options).Write(templates, format, Path.Combine(settings.Out, Path.GetFileNameWithoutExtension(settings.File)))) console.WriteLine("  " + path);
        AlignedText.Mind(console, ["Print at actual size (100 %) and measure the check rulers before you trust a template.", .. format == "pdf" ? Array.Empty<string>() : ["Laser and router: the machine's manual, its guards, extraction and someone beside it; never leave a burning beam alone."]]);
        return ExitCode.Done;
    }
}
