using System.ComponentModel;
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

    public PaperSize PaperFor(LengthUnit unit) => PaperSize.Read(Paper, unit, "--paper");

    public PrintCorrection PrintCorrection() => Ringwright.Paper.Sheets.PrintCorrection.Read(Correction, "--correction");
}
