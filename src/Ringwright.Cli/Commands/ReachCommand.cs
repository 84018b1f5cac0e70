using System.Collections.Immutable;
using System.ComponentModel;
using System.Globalization;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Pictures;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright reach</c>: how small one can go in this shop.</summary>
internal sealed class ReachCommand(IAnsiConsole console) : Command<ReachCommand.Settings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "reach",
        "How small one can go in this shop: every number of segments against every diameter.",
        "reach --shop examples/small-shop.json --segments 12-48/12 --diameters 8-40/4");

    internal sealed class Settings : ShopSettings
    {
        [CommandOption("--segments <LIST>")]
        [Description("Numbers of segments: 6-48, 6-72/6 or 12,18,24.")]
        public string Segments { get; init; } = "6-48/6";

        [CommandOption("--diameters <LIST>")]
        [Description("Diameters across flats: 8-40/4 or 12,19,25.4 or 3/4 in, bare numbers in the units spoken.")]
        public string? Diameters { get; init; }

        [CommandOption("--picture <FILE>")]
        [Description(PictureFile.Help)]
        public string? Picture { get; init; }

        [CommandOption("--json")]
        [Description("The map as JSON.")]
        public bool Json { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        PictureFile.Check(settings.Picture);
        MeasureStyle style = settings.Style(LengthUnit.Millimetre);
        string usual = style.Unit == LengthUnit.Inch ? "0.25-2/0.25" : "8-40/4";
        ImmutableArray<double> diameters = [.. NumberList.Lengths("--diameters", settings.Diameters ?? usual, style.Unit)];
        ImmutableArray<int> segments = [.. NumberList.Whole("--segments", settings.Segments)];
        var map = ReachMap.Of(settings.ReadShop(style.Unit), segments, diameters);
        // Drawn before anything is printed: a map too large to draw is refused as a whole.
        Drawing? picture = settings.Picture is null ? null : ReachPicture.Draw(map, style);
        if (settings.Json) JsonOut.Write(console, json => ReachJson.Write(json, map, style));
        else Print(map, style);
        if (picture is not null) PictureFile.Write(console, settings.Picture!, picture, "How small one can go", settings.Json);
        return ExitCode.Done;
    }

    private void Print(ReachMap map, MeasureStyle style)
    {
        console.WriteLine($"How small one can go: {map.Shop.Name}");
        console.WriteLine("Rim edge where it can be made; a word where something stops it.");
        AlignedText.Heading(console, "Across flats, by segments");
        string[] head = ["", .. map.Segments.Select(n => n.ToString(CultureInfo.InvariantCulture))];
        IEnumerable<string[]> rows = map.Diameters.Select((d, row) => (string[])[style.Length(d), .. Enumerable.Range(0, map.Segments.Length).Select(c => Word(map[c, row], style))]);
        AlignedText.Write(console, rows.Prepend(head), [.. Enumerable.Range(0, head.Length)]);
        AlignedText.Heading(console, "Words");
        foreach (ReachCell cell in map.Cells.Where(c => c.Stop != ReachStop.None).DistinctBy(c => c.Stop))
            console.WriteLine($"  {Word(cell, style)}: for {cell.Segments} at {style.Length(cell.Diameter)}: {ReachMap.Say(cell, map.Shop).In(style)}");
        AlignedText.Mind(console, map.Shop.Sled.Kind);
    }

    private static string Word(ReachCell cell, MeasureStyle style) => cell.Stop switch
    {
        ReachStop.SandedAway => "sanded away",
        ReachStop.BoardTooShort => "short board",
        ReachStop.TooSmallToHold => "tiny",
        ReachStop.MostlySawdust => "dust",
        ReachStop.ProbablyGapes => "gapes",
        _ => style.Length(cell.RimEdge),
    };
}
