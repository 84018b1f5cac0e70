using Ringwright.Core;
using Ringwright.Core.Planning;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Labels;
using Ringwright.Paper.Sheets;
using Ringwright.Paper.Templates;
using Sheet = Ringwright.Web.Bench.Sheet;

namespace Ringwright.Web.Printing;

/// <summary>How something is to be printed, as it stands in an address and among the choices that are kept. What is empty is as usual.</summary>
/// <param name="Paper">Paper: <c>a4</c> or <c>letter</c>.</param>
/// <param name="Duplex">Whether both sides are printed.</param>
/// <param name="Sheets">Which sheets of the packet, separated by commas.</param>
/// <param name="Correction">Two factors, or what the 100 mm rulers measured.</param>
/// <param name="Ring">Only this ring.</param>
/// <param name="Grid">Stickers across and down.</param>
/// <param name="Margins">Margins of a sheet of stickers.</param>
/// <param name="Gaps">Gaps between stickers.</param>
/// <param name="Skip">Stickers that are used already.</param>
/// <param name="Outlines">Whether the stickers' edges are drawn.</param>
/// <param name="Kinds">Which templates, separated by commas.</param>
internal sealed record PrintQuery(string? Paper, bool? Duplex, string? Sheets, string? Correction, string? Ring, string? Grid, string? Margins, string? Gaps, int? Skip, bool? Outlines, string? Kinds)
{
    /// <summary>What is chosen, by name; the ring is of a piece and is not among it.</summary>
    public static PrintQuery Of(IReadOnlyDictionary<string, string> chosen)
    {
        string? Text(string name) => chosen.GetValueOrDefault(name) is string text && !string.IsNullOrWhiteSpace(text) ? text.Trim() : null;
        return new(Text("paper"), Text("duplex") is null ? null : true, Text("sheets"), Text("correction"), null, Text("grid"), Text("margins"), Text("gaps"), TypedSkip(Text("skip")), Text("outlines") is null ? null : true, Text("kinds"));
    }

    /// <summary>An address with what an answer there depends on.</summary>
    /// <param name="path">The path.</param>
    /// <param name="names">Names of the values that matter there.</param>
    public string At(string path, params ReadOnlySpan<string> names)
    {
        List<string> parts = [];
        foreach (string name in names)
            if (Written(name) is string value) parts.Add($"{name}={Uri.EscapeDataString(value)}");
        return parts.Count == 0 ? path : $"{path}?{string.Join('&', parts)}";
    }

    /// <summary>Why something cannot be printed so; null when it can.</summary>
    public string? Problem(Sheet sheet)
    {
        try
        {
            Options(sheet, default);
            if (Kinds is not null) Template.Read(Kinds);
            Stickers(sheet).On(PaperFor(sheet));
            return Skip == Unreadable ? throw new BadInputException("used stickers", "it is no number", "such as 4 is needed, or nothing") : null;
        }
        catch (BadInputException e)
        {
            return e.Message;
        }
    }

    /// <summary>As options of a packet.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="date">Printed on each page.</param>
    /// <param name="order">When to glue what; a quick order when absent.</param>
    /// <exception cref="BadInputException">A value cannot be used.</exception>
    public PacketOptions Options(Sheet sheet, DateOnly date, GlueSchedule? order = null) => new(sheet.Style, PaperFor(sheet), date)
    {
        Schedule = order,
        Duplex = Duplex ?? false,
        Sheets = string.IsNullOrEmpty(Sheets) ? null : PacketOptions.ReadSheets(Sheets),
        Correction = PrintCorrection.Read(Correction, "correction"),
        Ring = OnlyRing(sheet.Good)?.Ring.Name,
    };

    /// <summary>The paper.</summary>
    public PaperSize PaperFor(Sheet sheet) => PaperSize.Read(Paper, sheet.Style.Unit, "paper");

    /// <summary>How stickers lie on their sheet.</summary>
    public LabelGrid Stickers(Sheet sheet) => LabelGrid.Read(Grid, Margins, Gaps, sheet.Style.Unit);

    /// <summary>The ring it is about; null for all.</summary>
    /// <exception cref="BadInputException">There is no such ring.</exception>
    public RingPlan? OnlyRing(Plan plan) => string.IsNullOrEmpty(Ring) ? null : RingOf(plan, Ring);

    /// <summary>The ring of a name.</summary>
    /// <exception cref="BadInputException">There is none.</exception>
    public static RingPlan RingOf(Plan plan, string name) => plan.Rings.FirstOrDefault(r => r.Ring.Name == name)
        ?? throw new BadInputException("ring", $"there is none called “{name}” in the piece on the bench, {plan.Piece.Name}", $"one of these is needed: {string.Join(", ", plan.Rings.Take(12).Select(r => r.Ring.Name))}");

    private const int Unreadable = -1;

    private static int? TypedSkip(string? text) => text is null ? null : int.TryParse(text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out int skip) ? skip : Unreadable;

    private string? Written(string name) => name switch
    {
        "paper" => Paper,
        "duplex" => Duplex == true ? "true" : null,
        "sheets" => Sheets,
        "correction" => Correction,
        "ring" => Ring,
        "grid" => Grid,
        "margins" => Margins,
        "gaps" => Gaps,
        "skip" => Skip?.ToString(System.Globalization.CultureInfo.InvariantCulture),
        "outlines" => Outlines == true ? "true" : null,
        "kinds" => Kinds,
        _ => throw new ArgumentException($"nothing is called {name}", nameof(name)),
    };
}
