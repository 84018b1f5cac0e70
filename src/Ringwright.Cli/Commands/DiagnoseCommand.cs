using System.ComponentModel;
using Ringwright.Cli.Commands.Kept;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Pictures;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright diagnose [FILE] --read "…"</c>: from what is seen on a dry ring to the fence.</summary>
internal sealed class DiagnoseCommand(IAnsiConsole console) : Command<DiagnoseCommand.Settings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "diagnose",
        "From what is seen on a dry ring: the cause, which fence to move, which way and how far.",
        "diagnose examples/two-wood-disc.json --read \"gathered rim closed\" --read \"gathered centre 0.4 mm\"",
        "diagnose --segments 24 --diameter \"120 mm\" --inner \"90 mm\" --read \"half rim 0.3 mm ± 0.02 mm\"",
        "diagnose examples/walnut-ring.json -r \"joint 3 rim top 0.008 in\" -r \"joint 3 rim bottom closed\" -r \"wedge 22.4°\" --picture fence.png");

    internal sealed class Settings : SizeSettings, ITakesShop
    {
        [CommandArgument(0, "[FILE]")]
        [Description("The piece's file; or tell the ring by --segments, --diameter and so on.")]
        public string? File { get; init; }

        [CommandOption("--ring <NAME>")]
        [Description(RingSettings.Help)]
        public string? Ring { get; init; }

        [CommandOption("--shop <SHOP>")]
        [Description(ShopFile.Help)]
        public string? Shop { get; init; }

        public KeptChoices AtHand { get; set; } = KeptChoices.None;

        [CommandOption("-r|--read <READING>")]
        [Description("What is seen; may be repeated: \"gathered rim|centre [[top|bottom]] GAP\" (all joints pressed shut but one), \"joint N rim|centre [[top|bottom]] GAP\" (under a band), \"half rim|centre GAP\" (half a ring on a straightedge), \"wedge ANGLE\". GAP is a length or closed; ± LENGTH behind it tells how well it is known.")]
        public string[] Readings { get; init; } = [];

        [CommandOption("--picture <FILE>")]
        [Description(PictureFile.Help)]
        public string? Picture { get; init; }

        [CommandOption("--json")]
        [Description("The answer as JSON: lengths in mm, angles in radians.")]
        public bool Json { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        PictureFile.Check(settings.Picture);
        if (settings.Readings.Length == 0) throw new BadInputException(ReadingOption.Name, "nothing that was seen is told", ReadingText.Grammar);
        Piece piece = PieceOf(settings);
        Plan plan = Planner.Plan(piece, ShopFile.Read(settings.Shop, settings.AtHand, piece.Units));
        RingPlan ring = RingSettings.Pick(plan, settings.Ring);
        MeasureStyle style = settings.Style(piece.Units);
        FitObservation[] readings = ReadingOption.Read(settings.Readings, style.Unit);
        FitDiagnosis diagnosis = FitDiagnosis.Of(ring.Stave is null ? DiagnosedRing.Of(ring, plan.Shop.Sled) : DiagnosedRing.Of(ring, plan.Shop.Sled, 0), readings);
        if (settings.Picture is not null && diagnosis.Correction.IsTilt) throw new BadInputException("--picture", "what is to be changed is the blade’s tilt, and only fences are drawn", "leave it out");
        if (settings.Json) JsonOut.Write(console, json => DiagnosisJson.Write(json, diagnosis, readings, style));
        else DiagnosisText.Write(console, diagnosis, readings, style);
        if (settings.Picture is { } path) PictureFile.Write(console, path, DiagnosisPicture.Draw(diagnosis, style), "The fence before and after", settings.Json);
        return ExitCode.Done;
    }

    private static Piece PieceOf(Settings settings)
    {
        if (settings.File is { } file)
        {
            return settings.HasSizes
                ? throw new BadInputException("diagnose", $"“{file}” and sizes are given", "the piece's file or the ring's sizes are needed, not both")
                : DocumentFile.Read(file, DocumentJson.ReadPiece);
        }

        if (settings.Segments is null || settings.Diameter is null)
            throw new BadInputException("diagnose", "it is not told which ring", "a piece's file is needed, or at least --segments and --diameter");
        LengthUnit unit = settings.Style(LengthUnit.Millimetre).Unit;
        return new()
        {
            Name = "Ring on the table",
            Units = unit,
            Rings = [settings.Inner is null ? settings.Disc(unit, "wood") : settings.Open(unit, "wood")],
        };
    }
}
