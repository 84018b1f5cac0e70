using System.ComponentModel;
using System.Globalization;
using System.Text.Json;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core.Documents;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Stock.Choosing;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright choose READINGS</c>: which measured wedges to glue, in which order.</summary>
internal sealed class ChooseCommand(IAnsiConsole console) : Command<ChooseCommand.Settings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "choose",
        "Which of the measured wedges to glue, in which order, for the least gap.",
        "choose examples/caliper-readings.csv --segments 12 --depth \"8 mm\" --radius \"9.5 mm\" --woods maple,padauk");

    internal sealed class Settings : UnitSettings
    {
        [CommandArgument(0, "<READINGS>")]
        [Description("Caliper readings as CSV: number,wood,rim,tip.")]
        public string Readings { get; init; } = "";

        [CommandOption("--segments <N>")]
        [Description("Wedges in the ring.")]
        public int Segments { get; init; }

        [CommandOption("--depth <LENGTH>")]
        [Description("Distance between the two reading places of a wedge.")]
        public string Depth { get; init; } = "";

        [CommandOption("--radius <LENGTH>")]
        [Description("Radius at which the gap is told.")]
        public string Radius { get; init; } = "";

        [CommandOption("--woods <LIST>")]
        [Description("Woods around the ring, separated by commas; they repeat. Otherwise any wood anywhere.")]
        public string? Woods { get; init; }

        [CommandOption("--halves")]
        [Description("The ring is glued in two halves that are not trued.")]
        public bool Halves { get; init; }

        [CommandOption("--json")]
        [Description("The choice as JSON: lengths in mm, angles in radians.")]
        public bool Json { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        MeasureStyle style = settings.Style(LengthUnit.Millimetre);
        var input = new WedgeChoiceInput
        {
            Wedges = ReadingsFile.Read(settings.Readings, style.Unit),
            Places = settings.Segments,
            Depth = Read("--depth", settings.Depth, style.Unit),
            Radius = Read("--radius", settings.Radius, style.Unit),
            Pattern = settings.Woods is null ? [] : TypedText.Woods(settings.Woods),
            Closing = settings.Halves ? Closing.Halves : Closing.Whole,
        };
        using var interrupt = new Interrupt(cancellationToken);
        WedgeChoice choice = new WedgeChooser().Choose(input, null, interrupt.Token);
        if (settings.Json) JsonOut.Write(console, json => Write(json, choice));
        else Print(choice, style);
        return ExitCode.Done;
    }

    private static double Read(string option, string text, LengthUnit unit) =>
        TypedText.Length(option, text, unit, "a length such as 9.5 mm is needed").Millimetres;

    private void Print(WedgeChoice choice, MeasureStyle style)
    {
        console.WriteLine(choice.Sentence);
        AlignedText.Heading(console, "Around the ring, counter-clockwise");
        AlignedText.Write(console, choice.Ring.Select(p => new[]
        {
            p.Place.ToString(CultureInfo.InvariantCulture), $"wedge {p.Wedge.Number}", p.Wedge.Wood, style.Print(p.Angle, Quantity.FineAngle),
        }), 0, 3);
        AlignedText.Heading(console, "What it brings");
        string Gap(RingFigures figures) => style.Print(figures.WorstGap, Quantity.FineLength);
        AlignedText.Write(console, [
            ["worst gap, taken as they come", Gap(choice.Before)],
            ["worst gap, chosen", Gap(choice.After) + (choice.Proof.Gap.Proved ? ", proved to be the least" : $", at best {style.Print(choice.Proof.Gap.Bound, Quantity.FineLength)}")],
            ["what the caliper leaves unknown", "± " + style.Print(2 * choice.GapSd, Quantity.FineLength)],
            ["left over", choice.LeftOver.Count == 0 ? "none" : string.Join(", ", choice.LeftOver)]]);
    }

    private static void Write(Utf8JsonWriter json, WedgeChoice choice)
    {
        json.WriteString("says", choice.Sentence);
        json.WriteObjects("ring", choice.Ring, placed =>
        {
            json.WriteNumber("place", placed.Place);
            json.WriteNumber("number", placed.Wedge.Number);
            json.WriteString("wood", placed.Wedge.Wood);
            json.WriteNumber("angle", placed.Angle);
        });
        json.WriteStartArray("leftOver");
        foreach (int number in choice.LeftOver) json.WriteNumberValue(number);
        json.WriteEndArray();
        json.WriteNumber("worstGapBefore", choice.Before.WorstGap);
        json.WriteNumber("worstGap", choice.After.WorstGap);
        json.WriteBoolean("proved", choice.Proof.Gap.Proved);
        json.WriteNumber("gapBound", choice.Proof.Gap.Bound);
        json.WriteNumber("gapSd", choice.GapSd);
    }
}
