namespace Ringwright.Core.Turning;

/// <summary>One segment's mesh, face by face. Every face has its own corners, at the same place to the bit where faces meet.</summary>
public sealed class SegmentMesh
{
    private readonly float[] _positions;
    private readonly float[] _normals;
    private readonly float[] _board;
    private readonly int[] _indices;
    private readonly int[] _faceStarts = new int[MeshPattern.FaceCount + 1];

    private SegmentMesh(SegmentPlan[] plans, TurnedSegment segment)
    {
        _positions = new float[3 * plans.Sum(p => p.Pattern.VertexCount)];
        _normals = new float[_positions.Length];
        _board = new float[_positions.Length];
        SegmentWriter writer = new();
        SegmentSpan[] cells = SegmentCells.Of(segment);
        int[] firsts = new int[cells.Length];
        for (int i = 0, first = 0; i < cells.Length; first += plans[i++].Pattern.VertexCount)
        {
            firsts[i] = first;
            int count = 3 * plans[i].Pattern.VertexCount;
            writer.WritePositions(plans[i], cells[i], _positions.AsSpan(3 * first, count));
            writer.WriteNormals(plans[i], cells[i], _normals.AsSpan(3 * first, count));
        }

        BoardWriter.Write(segment.Board, _positions, _board);
        _indices = FaceByFace(plans, firsts);
    }

    /// <summary>x, y, z of every vertex, mm.</summary>
    public ReadOnlySpan<float> Positions => _positions;

    /// <summary>Unit normals of every vertex.</summary>
    public ReadOnlySpan<float> Normals => _normals;

    /// <summary>x, y, z in the segment's board of every vertex, mm.</summary>
    public ReadOnlySpan<float> BoardCoordinates => _board;

    /// <summary>Three vertices for each triangle, counter-clockwise seen from outside.</summary>
    public ReadOnlySpan<int> Indices => _indices;

    /// <summary>The triangles of one face; empty where the segment has none there.</summary>
    public ReadOnlySpan<int> Face(SegmentFace face) =>
        _indices.AsSpan(_faceStarts[(int)face].._faceStarts[(int)face + 1]);

    /// <summary>Volume, mm³, by the divergence theorem.</summary>
    public double Volume() => MeshVolume.Of(_positions, _indices);

    /// <summary>Meshes segment <paramref name="segment"/> of <paramref name="ring"/>.</summary>
    /// <exception cref="BadInputException">The ring cannot be used.</exception>
    public static SegmentMesh Of(TurnedRing ring, int segment, Facets facets)
    {
        ArgumentNullException.ThrowIfNull(ring);
        SolidCheck.Check(ring, "ring");
        SegmentPlanner planner = new(facets, MeshCorners.PerFace);
        planner.StartRing(ring);
        return new(planner.Plan(ring.Segments[segment]), ring.Segments[segment]);
    }

    private int[] FaceByFace(SegmentPlan[] plans, int[] firsts)
    {
        List<int> indices = [];
        for (int face = 0; face < MeshPattern.FaceCount; face++)
        {
            _faceStarts[face] = indices.Count;
            for (int i = 0; i < plans.Length; i++)
            {
                MeshPattern pattern = plans[i].Pattern;
                foreach (int index in pattern.Indices.AsSpan(pattern.FaceStarts[face]..pattern.FaceStarts[face + 1])) indices.Add(index + firsts[i]);
            }
        }

        _faceStarts[^1] = indices.Count;
        return [.. indices];
    }
}
