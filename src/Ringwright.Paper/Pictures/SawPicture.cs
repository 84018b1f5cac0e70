using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Sawing;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures;

/// <summary>The setting of fence and stop, and beside it the first cut too far, right and not far enough.</summary>
public static class SawPicture
{
    private const double Width = 270, SettingTall = 90, CutTall = 75; // mm

    /// <summary>Draws it.</summary>
    /// <param name="plan">The ring.</param>
    /// <param name="sled">What holds the board.</param>
    /// <param name="cuts">The three test cuts.</param>
    /// <param name="style">How lengths are printed.</param>
    public static Drawing Draw(RingPlan plan, Sled sled, ImmutableArray<TestCut> cuts, MeasureStyle style)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        double each = (Width - (2 * Columns.Gutter)) / 3;
        return PicturePage.Of(
            Width,
            new Paragraph($"{plan.Ring.Name}: the setting, and how to judge the first cut", TypeScale.Title),
            Setting(plan, sled, style, each),
            Triptych(cuts, style));
    }

    // The fence takes two columns' room, the stop the third.
    private static Columns Setting(RingPlan plan, Sled sled, MeasureStyle style, double each)
    {
        double wide = (2 * each) + Columns.Gutter;
        ScaledPicture fences = FencePicture.Draw(plan, sled, style, new(wide, SettingTall));
        ScaledPicture stop = StopPicture.Draw(plan, style, new(each, SettingTall));
        return new(
            (wide, new Section($"Fence, from above, {fences.Scale}", new Picture(fences.Drawing))),
            (each, new Section($"Stop, {stop.Scale}", new Picture(stop.Drawing))));
    }

    private static Section Triptych(ImmutableArray<TestCut> cuts, MeasureStyle style)
    {
        (DrawingScale scale, Columns three) = TestCutTriptych.Of(cuts, style, Width, CutTall);
        return new($"The first cut, {scale}. Grey: kerf. Dashed: the right wedge.", three);
    }
}
