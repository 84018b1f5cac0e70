using System.ComponentModel;
using Ringwright.Cli.Commands.Kept;
using Ringwright.Core.Measures;
using Ringwright.Paper.Sheets;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary>A piece whose paper is printed.</summary>
internal class PaperSettings : PieceSettings
{
    [CommandOption("--paper <PAPER>")]
    [Description("Paper: a4 or letter. Otherwise as your settings say; without any, Letter for a piece in inches and A4 for others.")]
    public string? Paper { get; init; }

    [CommandOption("--correction <ACROSS,DOWN>")]
    [Description("Correction of true-scale outlines for your printer: two factors (1.003,0.998), or what the 100 mm check rulers measured on paper (99.7 mm,100.2 mm).")]
    public string? Correction { get; init; }

    /// <summary>What of the kept settings holds for this command, in words; empty when nothing does.</summary>
    public virtual string FromKept(KeptChoices kept) => Words(kept, ("paper", Paper is not null), ("correction", Correction is not null));

    public PaperSize PaperFor(LengthUnit unit) => Paper is null && AtHand.Print("paper") is string kept ? PaperSize.Read(kept, unit, PrintSettings.Paper) : PaperSize.Read(Paper, unit, "--paper");

    public PrintCorrection PrintCorrection() => Correction is null && AtHand.Print("correction") is string kept
        ? Ringwright.Paper.Sheets.PrintCorrection.Read(kept, PrintSettings.Correction)
        : Ringwright.Paper.Sheets.PrintCorrection.Read(Correction, "--correction");

    protected static string Words(KeptChoices kept, params IEnumerable<(string Name, bool IsTold)> all) =>
        string.Join(", ", all.Where(one => !one.IsTold && kept.Print(one.Name) is not null).Select(one => $"{PrintSettings.Prefix}{one.Name} {kept.Print(one.Name)}"));
}
