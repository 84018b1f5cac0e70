using System.ComponentModel;
using System.Globalization;
using Ringwright.Cli.Output;
using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Paper.Sheets;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary>A piece whose paper is printed.</summary>
internal class PaperSettings : PieceSettings
{
    [CommandOption("--paper <PAPER>")]
    [Description("Paper: a4 or letter. Otherwise Letter for a piece in inches, A4 for others.")]
    public string? Paper { get; init; }

    [CommandOption("--correction <ACROSS,DOWN>")]
    [Description("Correction of true-scale outlines for your printer: two factors (1.003,0.998), or what the 100 mm check rulers measured on paper (99.7 mm,100.2 mm).")]
    public string? Correction { get; init; }

    public PaperSize PaperFor(LengthUnit unit) => Paper?.ToLowerInvariant() switch
    {
        null => unit == LengthUnit.Inch ? PaperSize.Letter : PaperSize.A4,
        "a4" => PaperSize.A4,
        "letter" => PaperSize.Letter,
        _ => throw new BadInputException("--paper", $"“{Paper}” is no paper here", "a4 or letter is needed"),
    };

    public PrintCorrection PrintCorrection()
    {
        const string Right = "two factors such as 1.003,0.998 or two lengths such as 99.7 mm,100.2 mm are needed, across the sheet first";
        if (Correction is null) return Ringwright.Paper.Sheets.PrintCorrection.None;
        string[] both = Correction.Split(',', StringSplitOptions.TrimEntries);
        if (both.Length != 2) throw new BadInputException("--correction", $"“{Correction}” is not two values", Right);
        if (both.All(text => double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _)))
            return new(double.Parse(both[0], CultureInfo.InvariantCulture), double.Parse(both[1], CultureInfo.InvariantCulture));
        double[] measured = [.. both.Select(text => TypedText.Length("--correction", text, LengthUnit.Millimetre, Right).Millimetres)];
        return measured.All(length => length > 0)
            ? Ringwright.Paper.Sheets.PrintCorrection.FromMeasured(measured[0], measured[1])
            : throw new BadInputException("--correction", "a ruler cannot measure nothing", Right);
    }
}
