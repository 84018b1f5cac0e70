using System.ComponentModel;
using Ringwright.Core;
using Ringwright.Core.Planning;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary>One ring of a piece.</summary>
internal class RingSettings : PieceSettings
{
    public const string Help = "The ring, when the piece has several; otherwise the first.";

    [CommandOption("--ring <NAME>")]
    [Description(Help)]
    public string? Ring { get; init; }

    public RingPlan Pick(Plan plan) => Pick(plan, Ring);

    public static RingPlan Pick(Plan plan, string? name) => name is null
        ? plan.Rings[0]
        : plan.Rings.FirstOrDefault(r => string.Equals(r.Ring.Name, name, StringComparison.OrdinalIgnoreCase))
            ?? throw new BadInputException("--ring", $"there is no ring “{name}”", $"one of these is needed: {string.Join(", ", plan.Rings.Select(r => r.Ring.Name))}");
}

/// <summary>One ring of a piece, in simulation.</summary>
internal class SimulationSettings : PicturedSettings
{
    [CommandOption("--ring <NAME>")]
    [Description(RingSettings.Help)]
    public string? Ring { get; init; }

    [CommandOption("--seed <SEED>")]
    [Description("Seed of the random errors; the same seed gives the same answer.")]
    public int Seed { get; init; } = 1;

    public RingPlan Pick(Plan plan) => RingSettings.Pick(plan, Ring);
}
