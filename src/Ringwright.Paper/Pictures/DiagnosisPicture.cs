using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Pictures;

/// <summary>The answer of a diagnosis with the fence before and after it.</summary>
public static class DiagnosisPicture
{
    private const double Width = 170, Tall = 110; // mm

    /// <summary>Draws it.</summary>
    public static Drawing Draw(FitDiagnosis diagnosis, MeasureStyle style)
    {
        ArgumentNullException.ThrowIfNull(diagnosis);
        ArgumentNullException.ThrowIfNull(style);
        List<IBlock> blocks =
        [
            new Paragraph(diagnosis.Advice[0].In(style), TypeScale.Heading),
            new Picture(CorrectionPicture.Draw(diagnosis.Correction, style, new(Width, Tall)), $"From above: the pivot at the right; dash-dotted, the line square to the {(diagnosis.Correction.Sled == SledKind.DiscSander ? "disc" : "blade")}."),
            .. diagnosis.Advice.Skip(1).Select(s => new Paragraph(s.In(style))),
        ];
        if (diagnosis.Caution is { } caution) blocks.Add(new Paragraph(caution));
        return PicturePage.Of(Width, blocks);
    }
}
