using System.ComponentModel;
using Ringwright.Cli.Commands.Kept;
using Ringwright.Cli.Reference;
using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Labels;
using Ringwright.Paper.Output;
using Ringwright.Paper.Sheets;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright labels FILE --out FILE</c>: stickers for rings and batches of wedges, with a code.</summary>
internal sealed class LabelsCommand(IAnsiConsole console) : Command<LabelsCommand.Settings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "labels",
        "Stickers for rings and batches of wedges, with a code that opens the ring's job sheet in the app.",
        "labels examples/feature-bowl.json --out labels.pdf --grid 3x7");

    internal sealed class Settings : PaperSettings
    {
        [CommandOption("-o|--out <FILE>", isRequired: true)]
        [Description("The PDF to write.")]
        public string Out { get; init; } = "";

        [CommandOption("--grid <COLUMNSxROWS>")]
        [Description("Stickers across and down the sheet, such as 3x7.")]
        public string? Grid { get; init; }

        [CommandOption("--margins <ACROSS,DOWN>")]
        [Description("Margins left and right, above and below, such as 10 mm,12 mm.")]
        public string? Margins { get; init; }

        [CommandOption("--gaps <ACROSS,DOWN>")]
        [Description("Gaps between stickers, such as 3 mm,2 mm.")]
        public string? Gaps { get; init; }

        [CommandOption("--skip <N>")]
        [Description("Stickers of the first sheet that are used already.")]
        public int Skip { get; init; }

        [CommandOption("--outlines")]
        [Description("Draw the stickers' edges, for plain paper.")]
        public bool Outlines { get; init; }

        [CommandOption("--link <ADDRESS>")]
        [Description("Address of the app on your network, such as http://192.168.1.20:5080: the codes then open the ring's job sheet. Otherwise they name ring and piece.")]
        public string? Link { get; init; }

        public override string FromKept(KeptChoices kept) =>
            Words(kept, ("paper", Paper is not null), ("correction", Correction is not null), ("grid", Grid is not null), ("margins", Margins is not null), ("gaps", Gaps is not null));

        public LabelGrid Lie(LengthUnit unit) => LabelGrid.Read(Grid ?? AtHand.Print("grid"), Margins ?? AtHand.Print("margins"), Gaps ?? AtHand.Print("gaps"), unit, "--");

        public Uri? ReadLink() => Link is null ? null : Uri.TryCreate(Link, UriKind.Absolute, out Uri? link) && (link.Scheme is "http" or "https")
            ? link
            : throw new BadInputException("--link", $"“{Link}” is no address", "one such as http://192.168.1.20:5080 is needed");
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (!settings.Out.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase)) throw new BadInputException("--out", $"“{settings.Out}” is no PDF", "a name that ends with .pdf is needed");
        Uri? link = settings.ReadLink();
        Plan plan = settings.Plan();
        MeasureStyle style = settings.Style(plan.Piece.Units);
        PaperSize paper = settings.PaperFor(plan.Piece.Units);
        Label[] labels = [.. Label.Of(plan, style, link)];
        IReadOnlyList<Drawing> pages = LabelSheets.Pages(labels, settings.Lie(style.Unit), paper, settings.Skip, settings.Outlines, settings.PrintCorrection());
        using var stream = new MemoryStream();
        PdfWriter.Write(pages, new($"{plan.Piece.Name}: labels", $"{labels.Length} stickers", DateOnly.FromDateTime(DateTime.Now)), stream);
        SafeFile.Write(settings.Out, stream.ToArray());
        console.WriteLine($"{settings.Out} written: {labels.Length} stickers on {pages.Count} {(pages.Count == 1 ? "sheet" : "sheets")}. Print at actual size (100 %).");
        return ExitCode.Done;
    }
}
