using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Pictures.Gluing;

/// <summary>The whole schedule as one picture that stands by itself.</summary>
public static class SchedulePage
{
    private const double Wide = 260, Tall = 170;

    /// <summary>All its hours under each other.</summary>
    /// <param name="schedule">The schedule.</param>
    /// <param name="style">How times and lengths are printed.</param>
    public static Drawing Of(GlueSchedule schedule, MeasureStyle style)
    {
        ArgumentNullException.ThrowIfNull(schedule);
        ArgumentNullException.ThrowIfNull(style);
        string answer = schedule.Tasks.IsEmpty ? "There is nothing to glue." : schedule.Answer.In(style);
        return PicturePage.Of(
            Wide,
            [
                new Paragraph($"{schedule.Plan.Plan.Piece.Name}: when to glue what", TypeScale.Heading),
                new Paragraph(answer),
                .. schedule.Tasks.IsEmpty ? [] : SchedulePicture.InsteadOf(schedule) is string words ? [new Paragraph(words)] : SchedulePicture.Draw(schedule, Wide, Tall).Select(p => new Picture(p.Drawing)).Append<IBlock>(ScheduleKey.Block),
            ]);
    }
}
