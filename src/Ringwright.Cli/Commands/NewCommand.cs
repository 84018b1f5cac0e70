using System.ComponentModel;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright new KIND FILE</c>: a file to start from.</summary>
internal sealed class NewCommand(IAnsiConsole console) : Command<NewCommand.Settings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "new",
        "Write a new piece or shop file to start from. Never overwrites.",
        "new disc my-disc.json --segments 24 --diameter \"19 mm\" --woods maple,padauk",
        "new bowl my-bowl.json --diameter \"180 mm\" --height \"70 mm\" --segments 16",
        "new shop my-shop.json");

    internal sealed class Settings : SizeSettings
    {
        [CommandArgument(0, "<KIND>")]
        [Description("disc, ring, bowl, vase, platter, box, spindle, pen-barrel or shop.")]
        public string Kind { get; init; } = "";

        [CommandArgument(1, "<FILE>")]
        [Description("The file to write; it must not exist.")]
        public string File { get; init; } = "";

        [CommandOption("--name <NAME>")]
        [Description("The piece's name; otherwise the file's.")]
        public string? Name { get; init; }

        [CommandOption("--height <LENGTH>")]
        [Description("Height of a bowl, vase and the like.")]
        public string? Height { get; init; }

        [CommandOption("--heights <LIST>")]
        [Description(StackOptions.Heights)]
        public string? Heights { get; init; }

        [CommandOption("--rim-edge <LENGTH>")]
        [Description(StackOptions.RimEdge)]
        public string? RimEdge { get; init; }

        [CommandOption("--woods <LIST>")]
        [Description("Woods around the ring, separated by commas; they repeat.")]
        public string Woods { get; init; } = "maple,padauk";
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        LengthUnit unit = settings.Style(LengthUnit.Millimetre).Unit;
        string text = settings.Kind switch
        {
            "disc" or "ring" => PieceText(settings, unit),
            "shop" => DocumentJson.Write(Shop.StartingIn(unit) with { Name = settings.Name ?? "My shop" }),
            _ => ShapeText(settings, unit),
        };
        if (Path.Exists(settings.File)) throw new BadInputException(settings.File, "it exists already and was left as it is", "another name is needed");
        SafeFile.Write(settings.File, text);
        console.WriteLine($"{settings.File} written.");
        return ExitCode.Done;
    }

    private static string ShapeText(Settings settings, LengthUnit unit)
    {
        Shop shop = Shop.StartingIn(unit);
        Piece piece = ShapeStart.Of(settings.Kind, settings, unit, shop)
            ?? throw new BadInputException("kind", $"“{settings.Kind}” is not known", $"disc, ring, {string.Join(", ", ShapeStart.Names)} or shop is needed");
        Planner.Plan(piece, shop);
        return DocumentJson.Write(piece);
    }

    private static string PieceText(Settings settings, LengthUnit unit)
    {
        string[] woods = TypedText.Woods(settings.Woods);
        var piece = new Piece
        {
            Name = settings.Name ?? Path.GetFileNameWithoutExtension(settings.File),
            Units = unit,
            Rings = [settings.Kind == "disc" ? settings.Disc(unit, woods) : settings.Open(unit, woods)],
        };
        Planner.Plan(piece, Shop.Starting);
        return DocumentJson.Write(piece);
    }
}
