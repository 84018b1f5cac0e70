using System.Collections.Immutable;
using System.ComponentModel;
using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands.Kept;

/// <summary>A run told on the command line.</summary>
internal sealed class RunSettings : KeptSettings
{
    public static readonly IReadOnlyDictionary<string, SledKind> Sleds = new Dictionary<string, SledKind>
    {
        ["two fences"] = SledKind.TwoFences,
        ["one fence"] = SledKind.OneFence,
        ["disc sander"] = SledKind.DiscSander,
    };

    [CommandOption("--sled <KIND>")]
    [Description("How the board was held: \"two fences\", \"one fence\" or \"disc sander\".")]
    public string Sled { get; init; } = "two fences";

    [CommandOption("--wedge-angle <ANGLE>")]
    [Description("The wedge angle wanted; needed with --measured.")]
    public string? WedgeAngle { get; init; }

    [CommandOption("--measured <ANGLES>")]
    [Description("Measured wedge angles in the order they were sawn, separated by commas; again for another row.")]
    public string[] Measured { get; init; } = [];

    [CommandOption("--sawn <N>")]
    [Description("Wedges sawn, lost ones included.")]
    public int Sawn { get; init; }

    [CommandOption("--lost <N>")]
    [Description("Wedges of these that were lost.")]
    public int Lost { get; init; }

    [CommandOption("--cuts <N>")]
    [Description("Cuts that were timed, with --cutting-minutes.")]
    public int Cuts { get; init; }

    [CommandOption("--cutting-minutes <MINUTES>")]
    [Description("Minutes for the timed cuts.")]
    public double CuttingMinutes { get; init; }

    [CommandOption("--faces <N>")]
    [Description("Sanded faces that were timed, with --sanding-minutes.")]
    public int Faces { get; init; }

    [CommandOption("--sanding-minutes <MINUTES>")]
    [Description("Minutes for the timed faces.")]
    public double SandingMinutes { get; init; }

    [CommandOption("--note <TEXT>")]
    [Description("Free text: wood, blade.")]
    public string? Note { get; init; }

    public LoggedRun Run()
    {
        if (Sawn == 0 && Measured.Length == 0 && Cuts == 0 && Faces == 0)
            throw new BadInputException("run", "nothing was measured", "give --sawn and --lost, --measured, --cuts or --faces; a ring that was laid dry is added by 'record dry-ring'");
        return new()
        {
            Sled = Sleds.TryGetValue(Sled, out SledKind kind) ? kind : throw new BadInputException("--sled", $"“{Sled}” is not known", "two fences, one fence or disc sander is needed"),
            Note = Note,
            WedgeAngle = WedgeAngle is null ? null : Read("--wedge-angle", WedgeAngle),
            Measured = [.. Measured.Select(row => row.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(a => Read("--measured", a)).ToImmutableArray())],
            Sawn = Sawn,
            Lost = Lost,
            Cuts = Cuts,
            CuttingMinutes = CuttingMinutes,
            FacesSanded = Faces,
            SandingMinutes = SandingMinutes,
        };
    }

    private static Angle Read(string option, string text) => Angle.TryParse(text, out Angle angle, out ParseError? error)
        ? angle
        : throw new BadInputException(option, error.Sentence, "an angle such as 15.02° is needed");
}
