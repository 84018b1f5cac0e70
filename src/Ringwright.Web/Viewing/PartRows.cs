using Ringwright.Core.Geometry;
using Ringwright.Core.Planning;
using Ringwright.Core.Timber.Grain;
using Ringwright.Core.Turning;

namespace Ringwright.Web.Viewing;

/// <summary>
/// What the shader knows of one piece of wood: eight rows of four numbers. Rows 0 to 2 lead from the piece to the tree that the
/// board was sawn from: three direction cosines and an offset, mm. Rows 3, 4, 6 and 7 are glue planes: a normal into the wood and
/// the plane's distance along it. Row 5: heights of the glue faces below and above, wood, ring.
/// </summary>
internal static class PartRows
{
    /// <summary>Numbers for each part.</summary>
    public const int Count = 32;

    // Of a glue face that is not there.
    private const float FarAway = 1e9f;

    public static void Write(Span<float> rows, TurnedSegment segment, RingPlan ring, LaidSegment laid, (double Below, double Above) glued, int wood, int place)
    {
        Frame3D tree = TreeInBoard.Of(ring.Board?.Carrier.Name ?? ring.Ring.Name, laid.Wood, laid.Board);
        Board(rows, segment.Board, tree);
        Planes(rows, segment);
        rows[20] = (float)glued.Below;
        rows[21] = (float)glued.Above;
        rows[22] = wood;
        rows[23] = place;
    }

    /// <summary>Writes the glue planes alone.</summary>
    public static void Planes(Span<float> rows, TurnedSegment segment)
    {
        bool whole = segment.To.Direction - segment.From.Direction > (2 * Math.PI) - 1e-9;
        Plane(rows[12..], whole ? null : segment.From, 1);
        Plane(rows[16..], whole ? null : segment.To, -1);
        Plane(rows[24..], segment.Within?.From, 1);
        Plane(rows[28..], segment.Within?.To, -1);
    }

    // Piece to board, then board to tree.
    private static void Board(Span<float> rows, Frame3D board, Frame3D tree)
    {
        Vector3D origin = tree.ToLocal(board.ToLocal(default(Vector3D)));
        Row(rows, board.TurnToOuter(tree.X), origin.X);
        Row(rows[4..], board.TurnToOuter(tree.Y), origin.Y);
        Row(rows[8..], board.TurnToOuter(tree.Z), origin.Z);
    }

    private static void Plane(Span<float> row, JointPlane? plane, int side)
    {
        if (plane is not { } joint)
        {
            Row(row, default, -FarAway);
            return;
        }

        (double sin, double cos) = Math.SinCos(joint.Direction);
        (double lean, double upright) = Math.SinCos(joint.Tilt);
        Row(row, side * new Vector3D(-sin * upright, cos * upright, -lean), side * joint.Offset);
    }

    private static void Row(Span<float> row, Vector3D v, double w) => (row[0], row[1], row[2], row[3]) = ((float)v.X, (float)v.Y, (float)v.Z, (float)w);

    /// <summary>The glue face that is not there, below and above.</summary>
    public static (double Below, double Above) Open => (-FarAway, FarAway);
}
