using System.ComponentModel;
using Ringwright.Cli.Commands.Kept;
using Ringwright.Cli.Output;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary>Options of every command: in which units to speak.</summary>
internal class UnitSettings : CommandSettings
{
    [CommandOption("--units <UNITS>")]
    [Description("Units of what is printed: mm or in. Otherwise as the file says.")]
    public string? Units { get; init; }

    [CommandOption("--decimals")]
    [Description("Inches as decimals instead of fractions to 1/64.")]
    public bool Decimals { get; init; }

    public MeasureStyle Style(LengthUnit fallback)
    {
        LengthUnit unit = Units switch
        {
            null => fallback,
            "mm" => LengthUnit.Millimetre,
            "in" => LengthUnit.Inch,
            _ => throw new BadInputException("--units", $"“{Units}” is no unit here", "mm or in is needed"),
        };
        return unit == LengthUnit.Inch && Decimals ? MeasureStyle.InchDecimals : MeasureStyle.For(unit);
    }
}

/// <summary>The shop things are made in.</summary>
internal class ShopSettings : UnitSettings, ITakesShop
{
    [CommandOption("--shop <SHOP>")]
    [Description(ShopFile.Help)]
    public string? Shop { get; init; }

    public KeptChoices AtHand { get; set; } = KeptChoices.None;

    public Shop ReadShop(LengthUnit unit) => ShopFile.Read(Shop, AtHand, unit);
}

/// <summary>A piece file and the shop it is made in.</summary>
internal class PieceSettings : ShopSettings
{
    [CommandArgument(0, "<FILE>")]
    [Description("The piece's file.")]
    public string File { get; init; } = "";

    public Plan Plan()
    {
        Piece piece = DocumentFile.Read(File, DocumentJson.ReadPiece);
        return Planner.Plan(piece, ReadShop(piece.Units));
    }
}

/// <summary>A piece, and an answer that can be had as JSON.</summary>
internal class AnswerSettings : PieceSettings
{
    [CommandOption("--json")]
    [Description("The answer as JSON: lengths in mm, angles in radians, times in minutes.")]
    public bool Json { get; init; }
}

/// <summary>A piece, and an answer that can be had as JSON and drawn.</summary>
internal class PicturedSettings : AnswerSettings
{
    [CommandOption("--picture <FILE>")]
    [Description(PictureFile.Help)]
    public string? Picture { get; init; }
}
