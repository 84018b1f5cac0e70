using Ringwright.Core.Turning;

namespace Ringwright.Web.Viewing;

/// <summary>
/// Sorts the triangles of a turned mesh: first those that can be seen as long as the piece is whole, then those of glue faces that lie
/// wholly against another's. Most of a segment is glue face; leaving it out halves what is drawn.
/// </summary>
internal sealed class GlueFaces
{
    // Corners lie on their planes to single precision: of some hundred mm a ten-thousandth and better.
    private const double OnPlane = 2e-3;

    private readonly TurnedPiece _piece;
    private readonly TurnedMesh _mesh;
    private readonly bool[] _closed;

    private GlueFaces(TurnedPiece piece, TurnedMesh mesh)
    {
        (_piece, _mesh) = (piece, mesh);
        _closed = [.. piece.Rings.Select(r => Enumerable.Range(0, r.Segments.Length).All(i => Touches(r, i)))];
    }

    /// <summary>The triangles in that order, and how many indices the first kind has.</summary>
    public static (int[] Indices, int Seen) Sort(TurnedPiece piece, TurnedMesh mesh) => new GlueFaces(piece, mesh).Sort();

    private (int[] Indices, int Seen) Sort()
    {
        int[] sorted = new int[_mesh.Indices.Length];
        (int first, int last) = (0, sorted.Length);
        Span<float> rows = stackalloc float[PartRows.Count];
        foreach (TurnedPart part in _mesh.Parts)
        {
            TurnedRing ring = _piece.Rings[part.Ring];
            PartRows.Planes(rows, ring.Segments[part.Segment]);
            bool from = Touches(ring, part.Segment), to = Touches(ring, (part.Segment + 1) % ring.Segments.Length);
            double above = Covered(part.Ring, 1) ? ring.Section.Levels[^1].Z : double.NaN, below = Covered(part.Ring, -1) ? ring.Section.Levels[0].Z : double.NaN;
            for (int i = part.FirstIndex; i < part.FirstIndex + part.IndexCount; i += 3)
            {
                bool hidden = (from && Lies(i, rows[12..])) || (to && Lies(i, rows[16..])) || Lies(i, above) || Lies(i, below);
                int at = hidden ? last -= 3 : first;
                if (!hidden) first += 3;
                _mesh.Indices.Slice(i, 3).CopyTo(sorted.AsSpan(at));
            }
        }

        return (sorted, first);
    }

    // Whether a segment starts where the one before it ends. Strips inside a segment are left alone: their lines may leave it.
    private static bool Touches(TurnedRing ring, int segment)
    {
        TurnedSegment own = ring.Segments[segment], before = ring.Segments[segment == 0 ? ring.Segments.Length - 1 : segment - 1];
        if (own.Within is not null || before.Within is not null || ring.Segments.Length == 1) return false;
        double turn = Math.IEEERemainder(own.From.Direction - before.To.Direction, 2 * Math.PI);
        return Math.Abs(turn) < 1e-9 && Math.Abs(own.From.Offset - before.To.Offset) < 1e-9 && Math.Abs(own.From.Tilt - before.To.Tilt) < 1e-9;
    }

    // Whether the ring above (1) or below (−1) has wood all over this one's face.
    private bool Covered(int ring, int side)
    {
        int other = ring + side;
        if (other < 0 || other >= _piece.Rings.Length || !_closed[other]) return false;
        WallLevel own = Face(ring, side), its = Face(other, -side);
        return Math.Abs(own.Z - its.Z) < OnPlane && its.Outer > own.Outer - OnPlane && its.Inner < own.Inner + OnPlane;
    }

    private WallLevel Face(int ring, int side) => side > 0 ? _piece.Rings[ring].Section.Levels[^1] : _piece.Rings[ring].Section.Levels[0];

    private bool Lies(int triangle, ReadOnlySpan<float> plane)
    {
        foreach (int vertex in _mesh.Indices.Slice(triangle, 3))
        {
            ReadOnlySpan<float> p = _mesh.Positions.Slice(3 * vertex, 3);
            if (Math.Abs((plane[0] * p[0]) + (plane[1] * p[1]) + (plane[2] * p[2]) - plane[3]) > OnPlane) return false;
        }

        return true;
    }

    private bool Lies(int triangle, double z)
    {
        foreach (int vertex in _mesh.Indices.Slice(triangle, 3))
            if (!(Math.Abs(_mesh.Positions[(3 * vertex) + 2] - z) <= OnPlane)) return false;
        return true;
    }
}
