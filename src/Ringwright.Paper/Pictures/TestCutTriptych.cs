using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Sawing;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Pictures;

/// <summary>The three test cuts beside each other at one scale, each with its name and what one sees.</summary>
internal static class TestCutTriptych
{
    private static readonly string[] Names = ["Too far", "Right", "Not far enough"];

    /// <summary>The three and their scale.</summary>
    /// <param name="cuts">The cuts.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="width">Room across for all, mm.</param>
    /// <param name="tall">Room down for a picture, mm.</param>
    public static (DrawingScale Scale, Columns Three) Of(ImmutableArray<TestCut> cuts, MeasureStyle style, double width, double tall)
    {
        (DrawingScale scale, ImmutableArray<Drawing> pictures) = TestCutPicture.Draw(cuts, new((width - (2 * Columns.Gutter)) / 3, tall));
        double height = pictures.Max(p => p.Height);
        return (scale, new([.. cuts.Select((cut, i) => Cut(cut, pictures[i].Standing(height), style))]));
    }

    private static Column Cut(TestCut cut, Drawing picture, MeasureStyle style) => new(
        3,
        new Picture(picture),
        new Paragraph(Names[(int)cut.Setting], TypeScale.Body with { Weight = FontWeight.SemiBold }),
        new Paragraph(TestCutPicture.InWords(cut).In(Caliper.Of(style))));
}
