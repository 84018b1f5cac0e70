using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>Pictures of a whole piece that stand by themselves: scale, picture, and which wood is which.</summary>
public static class PiecePage
{
    private static readonly Room Upright = new(200, 270), Level = new(270, 180);

    /// <summary>What the right half of a piece's picture shows.</summary>
    internal const string Caption = "Left: from outside. Right: cut through. Dashed: as glued.";

    /// <summary>Half from outside, half cut through.</summary>
    /// <param name="plan">The piece.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="coloured">Also with a guess of each wood's colour, for a screen.</param>
    public static Drawing Whole(Plan plan, MeasureStyle style, bool coloured = false)
    {
        ScaledPicture picture = PiecePicture.Draw(plan, style, Upright, coloured);
        return Page(plan, picture, Upright, Caption, Legend(plan, PiecePicture.IsShaded(plan, picture.Scale.Ratio), coloured));
    }

    /// <summary>The outside laid flat.</summary>
    /// <param name="plan">The piece.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="coloured">Also with a guess of each wood's colour, for a screen.</param>
    public static Drawing Unrolled(Plan plan, MeasureStyle style, bool coloured = false)
    {
        ScaledPicture picture = UnrolledPicture.Draw(plan, style, Level, coloured);
        const string Words = "The outside laid flat, as seen from outside. The strokes mark the middle of the first segment of a ring that is not turned.";
        return Page(plan, picture, Level, Words, Legend(plan, UnrolledPicture.IsShaded(plan, picture.Scale.Ratio), coloured));
    }

    /// <summary>Which wood is which, and how many pieces are of it.</summary>
    internal static WoodLegend Legend(Plan plan, bool shaded, bool coloured) => new(WoodKey.Of(plan), shaded) { Pieces = Pieces(plan), Coloured = coloured };

    /// <summary>Pieces of each wood in all rings.</summary>
    internal static IReadOnlyDictionary<string, int> Pieces(Plan plan) => plan.Rings.SelectMany(r => r.Layout)
        .GroupBy(s => s.Wood, StringComparer.OrdinalIgnoreCase)
        .ToDictionary(g => g.Key, g => g.Count(), StringComparer.OrdinalIgnoreCase);

    private static Drawing Page(Plan plan, ScaledPicture picture, Room room, string caption, WoodLegend legend) => PicturePage.Of(
        room.Width,
        new Paragraph($"{plan.Piece.Name}, {picture.Scale}", TypeScale.Heading),
        new Picture(picture.Drawing, caption),
        legend);
}
