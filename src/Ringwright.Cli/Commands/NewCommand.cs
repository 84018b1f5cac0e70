using System.ComponentModel;
using Ringwright.Cli.Output;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright new disc|ring|shop FILE</c>: a file to start from.</summary>
internal sealed class NewCommand(IAnsiConsole console) : Command<NewCommand.Settings>
{
    internal sealed class Settings : UnitSettings
    {
        [CommandArgument(0, "<KIND>")]
        [Description("disc, ring or shop.")]
        public string Kind { get; init; } = "";

        [CommandArgument(1, "<FILE>")]
        [Description("The file to write; it must not exist.")]
        public string File { get; init; } = "";

        [CommandOption("--name <NAME>")]
        [Description("The piece's name; otherwise the file's.")]
        public string? Name { get; init; }

        [CommandOption("--segments <N>")]
        [Description("Segments around; 24 otherwise.")]
        public int Segments { get; init; } = 24;

        [CommandOption("--diameter <LENGTH>")]
        [Description("Diameter to be turned.")]
        public string? Diameter { get; init; }

        [CommandOption("--inner <LENGTH>")]
        [Description("Inner diameter of a ring.")]
        public string? Inner { get; init; }

        [CommandOption("--thickness <LENGTH>")]
        [Description("Height of the ring.")]
        public string? Thickness { get; init; }

        [CommandOption("--allowance <LENGTH>")]
        [Description("Wood left on the radius for turning.")]
        public string? Allowance { get; init; }

        [CommandOption("--tip <LENGTH>")]
        [Description("Flat tip of a disc's wedges.")]
        public string? Tip { get; init; }

        [CommandOption("--bore <LENGTH>")]
        [Description("Hole bored through a disc.")]
        public string? Bore { get; init; }

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
            _ => throw new BadInputException("kind", $"“{settings.Kind}” is not known", "disc, ring or shop is needed"),
        };
        if (Path.Exists(settings.File)) throw new BadInputException(settings.File, "it exists already and was left as it is", "another name is needed");
        SafeFile.Write(settings.File, text);
        console.WriteLine($"{settings.File} written.");
        return ExitCode.Done;
    }

    private static string PieceText(Settings settings, LengthUnit unit)
    {
        bool disc = settings.Kind == "disc";
        var piece = new Piece
        {
            Name = settings.Name ?? Path.GetFileNameWithoutExtension(settings.File),
            Units = unit,
            Rings = [disc ? Disc(settings, unit) : Open(settings, unit)],
        };
        Planner.Plan(piece, Shop.Starting);
        return DocumentJson.Write(piece);
    }

    private static WedgeDisc Disc(Settings s, LengthUnit unit) => new()
    {
        Name = "Disc",
        Segments = s.Segments,
        Diameter = Read("--diameter", s.Diameter, "19 mm", unit),
        Thickness = Read("--thickness", s.Thickness, "30 mm", unit),
        Allowance = Read("--allowance", s.Allowance, "0 mm", unit),
        Tip = Optional("--tip", s.Tip, unit),
        Bore = Optional("--bore", s.Bore, unit),
        Woods = [.. TypedText.Woods(s.Woods)],
    };

    private static SegmentRing Open(Settings s, LengthUnit unit) => new()
    {
        Name = "Ring",
        Segments = s.Segments,
        Diameter = Read("--diameter", s.Diameter, "120 mm", unit),
        InnerDiameter = Read("--inner", s.Inner, "90 mm", unit),
        Thickness = Read("--thickness", s.Thickness, "18 mm", unit),
        Allowance = Optional("--allowance", s.Allowance, unit),
        Woods = [.. TypedText.Woods(s.Woods)],
    };

    private static Length? Optional(string option, string? text, LengthUnit unit) => text is null ? null : Read(option, text, text, unit);

    private static Length Read(string option, string? text, string otherwise, LengthUnit unit) =>
        TypedText.Length(option, text ?? otherwise, unit, "lengths are written like 19 mm or 3/4 in");
}
