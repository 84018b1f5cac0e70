using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures.Gluing;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The sheets at the gluing bench: how each ring comes together, when to glue what, what to mind.</summary>
internal static class GlueSheet
{
    private const string Name = "Gluing";
    private const double MostWords = 44;   // of the names of rings, mm
    private const double TallestTime = 95; // of a picture of the schedule, mm
    private const int MostTasks = 90;      // in a list to tick off; more are read from the picture

    public static void Add(Packet packet, GlueSchedule schedule, MeasureStyle style)
    {
        GluePlan glue = schedule.Plan;
        GlueGroup[] groups = [.. GlueGroup.Of(glue)];
        Box free = packet.FreeArea;
        packet.Flow(Name, "–", [
            new Column(3, new Paragraph("Gluing the rings", TypeScale.Title), new Paragraph(string.Join(' ', schedule.Helps().Prepend(schedule.Answer).Select(s => s.In(style))), RingJob.Words)),
            new Section("In numbers", new KeyFigures(4, [.. Numbers(schedule)])),
            .. SheetTables.Under("How each ring comes together", groups.Select(g => Row(g, style)), Ways),
            .. groups.Select(g => Steps(g, style)),
            .. glue.Minds.IsEmpty ? Array.Empty<IBlock>() : [new Section("Mind", new ListBlock(ListMark.Dot, [.. glue.Minds.Select(m => m.In(style))], RingJob.Words))],
        ]);
        packet.Flow("Gluing times", "–", [.. When(schedule, free), .. Tasks(schedule), new Section("Take care", new ListBlock(ListMark.Caution, Cautions.ForGluing))]);
    }

    private static IEnumerable<KeyFigure> Numbers(GlueSchedule schedule)
    {
        GluePlan glue = schedule.Plan;
        KeyFigure Time(string caption, double minutes) => new(caption, Core.Measures.Duration.Print(minutes));
        return
        [
            Time("Open time", glue.Plan.Shop.Adhesive.OpenTime.Minutes),
            Time("Clamp time", glue.Plan.Shop.Adhesive.ClampTime.Minutes),
            Time("Cure time", glue.Plan.Shop.Adhesive.CureTime.Minutes),
            new("Joints in one go, at most", Count((int)glue.Find("joints-at-once")!.Value)),
            new("Glue-ups", Count((int)glue.Find("glue-ups")!.Value)),
            Time("Handwork", schedule.Hands),
            Time("Ready to turn after", schedule.Work.Makespan),
        ];
    }

    private static Table Ways(string[][] rows) => new(
        [new("Ring"), new("Comes together as"), new("Pieces", ColumnKind.Numbers), new("Glue-ups", ColumnKind.Numbers), new("Bands", ColumnKind.Numbers), new("Presses", ColumnKind.Numbers), new("Truing up to", ColumnKind.Numbers)],
        rows);

    private static string[] Row(GlueGroup group, MeasureStyle style)
    {
        int ups = group.Like.Boards.Length + group.Like.GlueUps.Length;
        return
        [
            Cut(group.Name), group.Way, group.Like.Pieces == 0 ? "–" : Count(group.Like.Pieces), group.Rings.Length == 1 ? Count(ups) : $"{Count(ups)} each",
            Count(group.Like.Clamps(GlueClamp.Band)), Count(group.Like.Clamps(GlueClamp.Press)), group.Truing is Measured truing ? style.Print(truing.Value, truing.Quantity) : "–",
        ];
    }

    private static Section Steps(GlueGroup group, MeasureStyle style) =>
        new(Cut(group.Name) + ": " + group.Way, new ListBlock(ListMark.Number, [.. group.Steps.Select(s => s.In(style))], RingJob.Words));

    private static IEnumerable<IBlock> When(GlueSchedule schedule, Box free) => SchedulePicture.InsteadOf(schedule) is string words
        ? [new Section("When to glue what", new Paragraph(words))]
        : SchedulePicture.Draw(schedule, free.Width, TallestTime).Select((picture, i) => i == 0
            ? new Section("When to glue what", new Column(3, ScheduleKey.Block, new Picture(picture.Drawing)))
            : (IBlock)new Picture(picture.Drawing));

    private static IEnumerable<IBlock> Tasks(GlueSchedule schedule) => schedule.Tasks.Length > MostTasks ? [] : SheetTables.Under(
        "To tick off",
        schedule.InOrder.Select(t => new[] { schedule.Clock(t.Start), Cut(schedule.Plan.Rings[t.Task.Ring].Ring.Ring.Name), t.Task.Text, Core.Measures.Duration.Print(t.Task.Hands), Until(schedule, t.Task, t.Start), "" }),
        rows => new([new("At"), new("Ring"), new("Do"), new("Hands"), new("Leave it until"), new("Done")], rows));

    private static string Until(GlueSchedule schedule, GlueTask task, int start) => task.Length > task.Hands ? schedule.Clock(start + task.Length) : "–";

    private static string Cut(string name) => Shortened.To(name, s => Typesetter.WidthOf(s, TypeScale.Heading) <= 2 * MostWords);

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
