using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Planning;

/// <summary>The strips of a laminated board as they stand in the ring.</summary>
/// <param name="ring">The ring.</param>
/// <param name="board">How its board is laminated.</param>
/// <param name="wedges">The plan of its segments as if of plain wood.</param>
/// <param name="shop">The shop.</param>
internal sealed class MotifLayout(LaminatedRing ring, Lamination board, RingPlan wedges, Shop shop)
{
    // Slivers thinner than this at a corner are no pieces of wood, mm.
    private const double Sliver = 1e-6;

    private readonly int _perBoard = Math.Max(1, wedges.Strip.WedgesIn(shop.Boards.Length.Millimetres));
    private readonly Dictionary<(int Board, int Strip), int> _numbers = [];
    private readonly Dictionary<(string, double), int> _counts = [];

    private WedgeGeometry Glued => wedges.Glued;

    private double Flattening => shop.Sanding.Flattening.Millimetres;

    public ImmutableArray<LaidSegment> Lay() => [.. Enumerable.Range(0, ring.Segments).SelectMany(Segment)];

    private IEnumerable<LaidSegment> Segment(int index)
    {
        double middle = (index + ring.Shift) * 2 * Glued.HalfAngle;
        int cut = index % _perBoard;
        bool mirrored = ring.Mirrored && index % 2 == 1;
        var joints = new SegmentJoints(new(middle - Glued.HalfAngle), new(middle + Glued.HalfAngle));
        double start = Start(cut);
        (double least, double most) = Reach(start);
        for (int strip = board.IndexAt(least + Sliver); board.StartOf(strip) < most - Sliver; strip++)
            yield return Piece(strip, start, middle, mirrored, joints, index / _perBoard);
    }

    // Where the segment's middle, at its finished lower face, lies square to the glue lines. The first strip stands in the middle at half height.
    private double Start(int cut) => (board.Strips[0].Thickness.Millimetres / 2) + (ring.Thickness.Millimetres / 2 * Math.Sin(board.Angle)) + (cut * board.Pitch * Math.Cos(board.Angle));

    private (double Least, double Most) Reach(double start)
    {
        double half = Glued.RimEdge / 2 * Math.Cos(board.Angle), rise = ring.Thickness.Millimetres * Math.Sin(board.Angle);
        return (start - half - Math.Max(0, rise), start + half - Math.Min(0, rise));
    }

    private LaidSegment Piece(int strip, double start, double middle, bool mirrored, SegmentJoints joints, int boardNumber)
    {
        double from = board.StartOf(strip) - start, to = board.StartOf(strip + 1) - start;
        JointPlane first = mirrored ? new(middle, -to, -board.Angle) : new(middle, from, board.Angle);
        JointPlane last = mirrored ? new(middle, -from, -board.Angle) : new(middle, to, board.Angle);
        Strip wood = board.StripAt(strip);
        int number = Number(wood, boardNumber, strip);
        StripNeed kind = board.Kinds.First(k => string.Equals(k.Wood, wood.Wood, StringComparison.OrdinalIgnoreCase) && k.Thickness == wood.Thickness.Millimetres);
        int perStick = Math.Max(1, (int)Math.Ceiling((double)kind.Count / kind.Sticks));
        return new(first, last, wood.Wood, number / perStick, number % perStick, Frame(middle, mirrored, from, number % perStick, kind)) { Within = joints };
    }

    // Strips are numbered as they come up, one number for both segments that a strip may be sawn into.
    private int Number(Strip strip, int boardNumber, int index)
    {
        if (_numbers.TryGetValue((boardNumber, index), out int number)) return number;
        (string, double) kind = (strip.Wood.ToUpperInvariant(), strip.Thickness.Millimetres);
        number = _counts.GetValueOrDefault(kind);
        _counts[kind] = number + 1;
        _numbers[(boardNumber, index)] = number;
        return number;
    }

    /// <summary>
    /// The strip's own board: x along the glue line and the grain, y from the board's far edge to its near one, z from the glue line
    /// before it. The second wedge of a pair was turned half round about the axis, which turns the strip with it.
    /// </summary>
    private Frame3D Frame(double middle, bool mirrored, double from, int cut, StripNeed kind)
    {
        (double sin, double cos) = Math.SinCos(board.Angle);
        double side = mirrored ? -1 : 1;
        var radial = new Vector3D(Math.Cos(middle), Math.Sin(middle), 0);
        Vector3D tangent = side * new Vector3D(-Math.Sin(middle), Math.Cos(middle), 0);
        Vector3D x = (sin * tangent) + new Vector3D(0, 0, cos), y = side * radial;
        Vector3D z = (cos * tangent) - new Vector3D(0, 0, sin);
        // On the glue line at the slab's lower face, which the flattening takes away.
        double low = -Flattening - LaminationFigures.PerFace;
        Vector3D foot = ((mirrored ? Glued.OuterApothem : Glued.InnerApothem) * radial) + (((from + (low * sin)) / cos) * tangent) + new Vector3D(0, 0, low);
        double along = shop.Saw.EndTrim.Millimetres + (cut * (kind.Height + shop.Saw.Kerf.Millimetres)) + (board.Angle < 0 ? kind.Stagger : 0);
        return new(x, y, z, foot - (along * x) - (LaminationFigures.PerFace * y));
    }
}
