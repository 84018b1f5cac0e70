using Ringwright.Core.Geometry;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Planning;

/// <summary>
/// How staves lie in a board, their grain along it. Leaning ones: the board is crosscut into panels as long as a stave, the blade
/// at the lean; each panel is sawn up across, turned over end for end between cuts. Upright ones: the board is ripped into
/// strips, turned over end for end between cuts, and each strip is crosscut. Either way there are rows along the board and
/// columns across it. Lengths in mm.
/// </summary>
/// <param name="Sawn">A stave before sanding.</param>
/// <param name="Across">How the staves of a row lie across the board, half way through it (upright: seen from the end).</param>
/// <param name="Kerf">Width of the cut, normal to the blade.</param>
/// <param name="Squaring">Wood lost to square the end, before the lean.</param>
/// <param name="EndHolding">Shortest rest of the board that can be held when it is crosscut.</param>
internal sealed record StaveBoard(StaveGeometry Sawn, StripLayout Across, double Kerf, double Squaring, double EndHolding)
{
    /// <summary>A planed board of a common width where the shop does not say. Common practice, no source.</summary>
    public const double UsualWidth = 150;

    /// <summary>Wood used along the board for each row.</summary>
    public double RowLength => Sawn.Length + (Kerf / Math.Cos(Sawn.Lean));

    /// <summary>Wood lost along every board: squaring, the slant of its ends, the rest to hold.</summary>
    public double RowOverhead => Squaring + (Sawn.Thickness * Math.Tan(Math.Abs(Sawn.Lean))) + EndHolding;

    /// <summary>How staves lie in the boards of <paramref name="shop"/>.</summary>
    public static StaveBoard Of(StaveGeometry sawn, Shop shop)
    {
        double kerf = shop.Saw.Kerf.Millimetres, hold = shop.Saw.HoldingLength.Millimetres, trim = shop.Saw.EndTrim.Millimetres;
        double length = sawn.IsUpright ? shop.Boards.Length.Millimetres : sawn.Length;
        // A stave's corners reach further across than its middle does, half of the difference on either side.
        double slant = sawn.IsUpright ? 0 : sawn.Thickness / 2 * Math.Tan(sawn.HalfAngle) / Math.Cos(sawn.Lean);
        double across = RestAcross(length, hold);
        return new(sawn, new(sawn.Flat, sawn.IsUpright ? kerf : kerf / Math.Cos(sawn.Tilt), trim + slant, across + slant), kerf, trim, hold);
    }

    /// <summary>What has to be left across: nothing when the piece is long enough to be held by its length.</summary>
    public static double RestAcross(double length, double hold) => length >= hold ? 0 : hold;

    /// <summary>Width of one board: the shop's, or a common one, or what a stave needs.</summary>
    public double Width(Shop shop) => shop.Boards.Width?.Millimetres ?? Math.Max(UsualWidth, Across.LengthFor(1));

    /// <summary>Staves across a board of <paramref name="width"/>.</summary>
    public int Columns(double width) => Across.WedgesIn(width);

    /// <summary>Rows along a board of <paramref name="length"/>. A hair is forgiven, as across.</summary>
    public int Rows(double length) => Math.Max(0, (int)Math.Floor((length - RowOverhead + 1e-9) / RowLength));

    /// <summary>
    /// The board laid into the ring so that the stave of a row and column comes to stand at the angle <paramref name="middle"/>:
    /// x along board and grain, y across, z from the lower face. Even columns had the outer face up and the wide end far along
    /// the board, odd ones were turned over end for end.
    /// </summary>
    /// <param name="glued">The stave after sanding.</param>
    /// <param name="row">Its row.</param>
    /// <param name="column">Its column.</param>
    /// <param name="middle">Where it stands, radians.</param>
    public Frame3D Frame(StaveGeometry glued, int row, int column, double middle)
    {
        bool turned = column % 2 == 1;
        Vector3D wide = glued.TowardsWideEnd(middle), outward = glued.Outward(middle);
        Vector3D x = turned ? -wide : wide, z = turned ? -outward : outward, y = outward.Cross(wide);
        double end = turned ? glued.WideEnd : glued.NarrowEnd;
        (double sin, double cos) = Math.SinCos(middle);
        double apothem = glued.MiddleApothem(end);
        var start = new Vector3D(apothem * cos, apothem * sin, end);
        double along = Squaring + (Sawn.Thickness / 2 * Math.Tan(Math.Abs(Sawn.Lean))) + (row * RowLength);
        return new(x, y, z, start - (along * x) - (Across.MiddleOf(column) * y) - (Sawn.Thickness / 2 * z));
    }
}
