using System.ComponentModel;
using Ringwright.Core;
using Ringwright.Core.Planning;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary>One ring of a piece.</summary>
internal class RingSettings : PieceSettings
{
    [CommandOption("--ring <NAME>")]
    [Description("The ring, when the piece has several; otherwise the first.")]
    public string? Ring { get; init; }

    public RingPlan Pick(Plan plan) => Ring is null
        ? plan.Rings[0]
        : plan.Rings.FirstOrDefault(r => string.Equals(r.Ring.Name, Ring, StringComparison.OrdinalIgnoreCase))
            ?? throw new BadInputException("--ring", $"there is no ring “{Ring}”", $"one of these is needed: {string.Join(", ", plan.Rings.Select(r => r.Ring.Name))}");
}

/// <summary>One ring of a piece, in simulation.</summary>
internal class SimulationSettings : RingSettings
{
    [CommandOption("--seed <SEED>")]
    [Description("Seed of the random errors; the same seed gives the same answer.")]
    public int Seed { get; init; } = 1;

    [CommandOption("--json")]
    [Description("The answer as JSON: lengths in mm, angles in radians.")]
    public bool Json { get; init; }
}
