using System.Globalization;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Pictures.Gluing;
using Ringwright.Stock.Schedules;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright glue FILE</c>: how each ring and the stack are glued, and the quickest order of it all.</summary>
internal sealed class GlueCommand(IAnsiConsole console) : Command<PicturedSettings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "glue",
        "How each ring and the stack are glued: parts, clamps, marks to line up, and the quickest order of it all.",
        "glue examples/feature-bowl.json --shop examples/small-shop.json --picture glue.svg");

    public override int Execute(CommandContext context, PicturedSettings settings, CancellationToken cancellationToken)
    {
        PictureFile.Check(settings.Picture);
        Plan plan = settings.Plan();
        MeasureStyle style = settings.Style(plan.Piece.Units);
        using var interrupt = new Interrupt(cancellationToken);
        GlueSchedule schedule = GlueScheduler.Of(GluePlan.Of(plan), interrupt.Token);
        if (settings.Json)
            JsonOut.Write(console, json =>
            {
                GlueJson.Write(json, schedule.Plan, style);
                GlueJson.Write(json, schedule, style);
            });
        else Print(schedule, style);
        if (settings.Picture is not null) PictureFile.Write(console, settings.Picture, SchedulePage.Of(schedule, style), $"{plan.Piece.Name}: when to glue what", settings.Json);
        return ExitCode.Done;
    }

    private void Print(GlueSchedule schedule, MeasureStyle style)
    {
        GluePlan glue = schedule.Plan;
        console.WriteLine(glue.HasWork ? schedule.Answer.In(style) : "There is nothing to glue.");
        if (!glue.HasWork) return;
        foreach (Sentence help in schedule.Helps()) console.WriteLine(help.In(style));
        AlignedText.Heading(console, "In numbers");
        AlignedText.Write(console, glue.Figures.Select(f => new[] { f.Label, style.Print(f.Value, f.Quantity), f.Name }), 1);
        foreach (Sentence mind in glue.Minds) console.WriteLine("  Mind: " + mind.In(style));
        foreach (GlueGroup group in GlueGroup.Of(glue))
        {
            AlignedText.Heading(console, group.Name);
            foreach (Sentence step in group.Steps) console.WriteLine("  " + step.In(style));
        }

        if (glue.Stack.Length > 0) Stack(glue, style);
        AlignedText.Heading(console, "When");
        AlignedText.Write(console, schedule.InOrder.Select(t => Row(schedule, t.Task, t.Start)), 0, 3);
        AlignedText.Mind(console, Cautions.ForGluing);
    }

    private void Stack(GluePlan glue, MeasureStyle style)
    {
        AlignedText.Heading(console, "The stack");
        foreach (Sentence step in glue.StackSteps()) console.WriteLine("  " + step.In(style));
        AlignedText.Write(console, glue.Stack.Select((s, i) => new[]
        {
            (i + 1).ToString(CultureInfo.InvariantCulture), $"{Name(glue, s.FromTop ? s.Lower : s.Upper)} on {Name(glue, s.FromTop ? s.Upper : s.Lower)}{(s.Joins ? ", joining the sections" : "")}",
            s.Turn is double turn ? style.Print(turn, Quantity.Angle) : "–", s.Mark.In(style), s.Centre.In(style),
        }), 0, 2);
    }

    private static string[] Row(GlueSchedule schedule, GlueTask task, int start) =>
    [
        schedule.Clock(start), Name(schedule.Plan, task.Ring), task.Text, Core.Measures.Duration.Print(task.Hands),
        task.Clamped > task.Hands ? $"{(task.Clamps == 0 ? "leave it" : "clamped")} until {schedule.Clock(start + task.Clamped)}" : "",
        task.Length > Math.Max(task.Hands, task.Clamped) ? $"cured at {schedule.Clock(start + task.Length)}" : "",
    ];

    private static string Name(GluePlan glue, int ring) => glue.Rings[ring].Ring.Ring.Name;
}
