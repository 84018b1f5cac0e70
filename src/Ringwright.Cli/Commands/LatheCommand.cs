using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Pictures.Lathe;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright lathe FILE</c>: holding, boring, the wall after each pass, speeds, order of work.</summary>
internal sealed class LatheCommand(IAnsiConsole console) : Command<PicturedSettings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "lathe",
        "The work at the lathe: holding, boring, the wall after each pass, speeds, order of work.",
        "lathe examples/feature-bowl.json --picture lathe.svg");

    public override int Execute(CommandContext context, PicturedSettings settings, CancellationToken cancellationToken)
    {
        PictureFile.Check(settings.Picture);
        Plan plan = settings.Plan();
        MeasureStyle style = settings.Style(plan.Piece.Units);
        var lathe = LathePlan.Of(plan);
        if (settings.Json) LatheJson.Write(console, plan, lathe, style);
        else Print(plan, lathe, style);
        if (settings.Picture is null) return ExitCode.Done;
        PictureFile.Write(console, settings.Picture, LathePage.Draw(plan, lathe, style), $"{plan.Piece.Name} at the lathe", settings.Json);
        return ExitCode.Done;
    }

    private void Print(Plan plan, LathePlan lathe, MeasureStyle style)
    {
        console.WriteLine($"{plan.Piece.Name} at the lathe");
        foreach (Finding doubt in lathe.Doubts) console.WriteLine(doubt.Sentence.In(style));
        AlignedText.Heading(console, "In this order");
        foreach ((Sentence step, int i) in lathe.Steps.Select((s, i) => (s, i))) console.WriteLine($"  {i + 1}. {step.In(style)}");
        AlignedText.Heading(console, "Numbers");
        AlignedText.Write(console, lathe.Figures.Select(f => new[] { f.Label, style.Print(f.Value, f.Quantity), f.Name }), 1);
        AlignedText.Heading(console, "Thinnest wall after each pass, from the rim down; Ø where it is solid");
        AlignedText.Write(console, lathe.Rings.Reverse().Select(r => Row(r, style)).Prepend(["", "as glued", "outside roughed", "inside roughed", "finished", "centre within"]), 1, 2, 3, 4, 5);
        AlignedText.Mind(console, [.. Cautions.ForLathe]);
    }

    private static string[] Row(RingPasses ring, MeasureStyle style) =>
    [
        ring.Ring.Plan.Ring.Name,
        .. Enum.GetValues<LathePass>().Select(p => ring[p]).Select(r => r.Inner > 0 ? style.Length(r.Thickness) : "Ø " + style.Length(2 * r.Outer)),
        style.Length(Math.Max(0, ring.CentreWithin)),
    ];
}
