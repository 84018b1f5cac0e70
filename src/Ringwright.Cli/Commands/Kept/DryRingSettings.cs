using System.ComponentModel;
using Ringwright.Cli.Output;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Fitting;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands.Kept;

/// <summary>How a ring closed that was laid dry.</summary>
internal sealed class DryRingSettings : KeptSettings, ITakesShop
{
    [CommandArgument(0, "<FILE>")]
    [Description("The piece's file.")]
    public string File { get; init; } = "";

    [CommandOption("--ring <NAME>")]
    [Description(RingSettings.Help)]
    public string? Ring { get; init; }

    [CommandOption("--shop <SHOP>")]
    [Description(ShopFile.Help)]
    public string? Shop { get; init; }

    public KeptChoices AtHand { get; set; } = KeptChoices.None;

    [CommandOption("-r|--read <READING>")]
    [Description("What is seen, as 'diagnose' takes it; may be repeated.")]
    public string[] Readings { get; init; } = [];

    [CommandOption("--note <TEXT>")]
    [Description("Free text: wood, blade.")]
    public string? Note { get; init; }

    public LoggedRun Run()
    {
        Piece piece = DocumentFile.Read(File, DocumentJson.ReadPiece);
        Plan plan = Planner.Plan(piece, ShopFile.Read(Shop, AtHand, piece.Units));
        RingPlan ring = RingSettings.Pick(plan, Ring);
        LoggedClosure closure = ReadClosure.Of(ring, plan.Shop.Sled, ReadingOption.Read(Readings, piece.Units))
            ?? throw new BadInputException(ReadingOption.Name, "no opening of a closed ring of wedges is told", "one such as \"gathered rim 0.4 mm\" is needed");
        return new() { Sled = plan.Shop.Sled.Kind, Note = Note ?? $"{piece.Name}, {ring.Ring.Name}", Closures = [closure] };
    }
}
