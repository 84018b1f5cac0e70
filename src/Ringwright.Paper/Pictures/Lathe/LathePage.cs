using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Pictures.Lathe;

/// <summary>The picture of the work at the lathe, standing by itself.</summary>
public static class LathePage
{
    private static readonly Room Room = new(200, 240);

    /// <summary>Draws it.</summary>
    /// <exception cref="Core.BadInputException">No ring is left by the lathe.</exception>
    public static Drawing Draw(Plan plan, LathePlan lathe, MeasureStyle style)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(lathe);
        if (lathe.Rings.IsEmpty) throw new Core.BadInputException("the piece", "nothing of it can be turned as it stands", "mend what its plan stops at first");
        ScaledPicture picture = LathePicture.Draw(plan, lathe, style, Room);
        return PicturePage.Of(Room.Width, new Paragraph($"{plan.Piece.Name} at the lathe, {picture.Scale}", TypeScale.Heading), new Picture(picture.Drawing, LatheSheet.Caption));
    }
}
