using System.ComponentModel;
using System.Text.RegularExpressions;
using Ringwright.Cli.Output;
using Ringwright.Core;
using Ringwright.Core.Boards;
using Ringwright.Core.Measures;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands.Kept;

/// <summary>A command on the board with a label.</summary>
internal class LabelSettings : KeptSettings
{
    [CommandArgument(0, "<LABEL>")]
    [Description("What is chalked on the board, such as A1.")]
    public string Label { get; init; } = "";
}

/// <summary>A board told on the command line.</summary>
internal sealed partial class BoardSettings : LabelSettings
{
    private const string LengthHelp = "lengths are written like 600 mm or 23 5/8 in";

    [CommandOption("--wood <WOOD>")]
    [Description("Its wood.")]
    public string? Wood { get; init; }

    [CommandOption("--length <LENGTH>")]
    [Description("Length along the grain.")]
    public string? Length { get; init; }

    [CommandOption("--width <LENGTH>")]
    [Description("Width at its narrowest.")]
    public string? Width { get; init; }

    [CommandOption("--thickness <LENGTH>")]
    [Description("Thickness at its thinnest.")]
    public string? Thickness { get; init; }

    [CommandOption("--moisture <PERCENT>")]
    [Description("Moisture measured in it.")]
    public double? Moisture { get; init; }

    [CommandOption("--price <NUMBER>")]
    [Description("Price of the whole board.")]
    public double? Price { get; init; }

    [CommandOption("--defect <STRETCH>")]
    [Description("A stretch that nothing may come from, such as \"120 mm to 150 mm, knot\"; may stand several times.")]
    public string[] Defects { get; init; } = [];

    [CommandOption("--note <TEXT>")]
    [Description("Free text.")]
    public string? Note { get; init; }

    public RackBoard NewBoard(LengthUnit unit) => Changed(
        new()
        {
            Label = Label,
            Wood = Wood ?? throw Missing("--wood", "such as maple"),
            Length = Read("--length", Length ?? throw Missing("--length", LengthHelp), unit),
            Width = Read("--width", Width ?? throw Missing("--width", LengthHelp), unit),
            Thickness = Read("--thickness", Thickness ?? throw Missing("--thickness", LengthHelp), unit),
        }, unit);

    public RackBoard Changed(RackBoard board, LengthUnit unit) => board with
    {
        Wood = Wood ?? board.Wood,
        Length = Length is null ? board.Length : Read("--length", Length, unit),
        Width = Width is null ? board.Width : Read("--width", Width, unit),
        Thickness = Thickness is null ? board.Thickness : Read("--thickness", Thickness, unit),
        Moisture = Moisture ?? board.Moisture,
        Price = Price ?? board.Price,
        Defects = Defects.Length == 0 ? board.Defects : [.. Defects.Select(d => Defect(d, unit))],
        Note = Note ?? board.Note,
    };

    private static Defect Defect(string text, LengthUnit unit)
    {
        Match match = Stretch().Match(text);
        if (!match.Success) throw new BadInputException("--defect", $"“{text}” is no stretch", "one is written like: 120 mm to 150 mm, knot");
        return new()
        {
            From = Read("--defect", match.Groups[1].Value, unit),
            To = Read("--defect", match.Groups[2].Value, unit),
            Note = match.Groups[3].Value is { Length: > 0 } note ? note : null,
        };
    }

    private static Length Read(string option, string text, LengthUnit unit) => TypedText.Length(option, text, unit, LengthHelp);

    private static BadInputException Missing(string option, string right) => new(option, "it is missing for a new board", right);

    [GeneratedRegex(@"^\s*(.+?)\s+to\s+(.+?)\s*(?:,\s*(\D.*))?$")]
    private static partial Regex Stretch();
}
