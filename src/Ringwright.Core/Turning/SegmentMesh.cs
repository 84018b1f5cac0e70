namespace Ringwright.Core.Turning;

/// <summary>One segment's mesh, face by face. Every face has its own corners, at the same place to the bit where faces meet.</summary>
public sealed class SegmentMesh
{
    private readonly float[] _positions;
    private readonly float[] _normals;
    private readonly float[] _board;
    private readonly MeshPattern _pattern;

    private SegmentMesh(SegmentPlan plan, TurnedSegment segment)
    {
        _pattern = plan.Pattern;
        _positions = new float[3 * _pattern.VertexCount];
        _normals = new float[_positions.Length];
        _board = new float[_positions.Length];
        SegmentWriter writer = new();
        writer.WritePositions(plan, segment, _positions);
        writer.WriteNormals(plan, segment, _normals);
        BoardWriter.Write(segment.Board, _positions, _board);
    }

    /// <summary>x, y, z of every vertex, mm.</summary>
    public ReadOnlySpan<float> Positions => _positions;

    /// <summary>Unit normals of every vertex.</summary>
    public ReadOnlySpan<float> Normals => _normals;

    /// <summary>x, y, z in the segment's board of every vertex, mm.</summary>
    public ReadOnlySpan<float> BoardCoordinates => _board;

    /// <summary>Three vertices for each triangle, counter-clockwise seen from outside.</summary>
    public ReadOnlySpan<int> Indices => _pattern.Indices;

    /// <summary>The triangles of one face; empty where the segment has none there.</summary>
    public ReadOnlySpan<int> Face(SegmentFace face) =>
        _pattern.Indices.AsSpan(_pattern.FaceStarts[(int)face].._pattern.FaceStarts[(int)face + 1]);

    /// <summary>Volume, mm³, by the divergence theorem.</summary>
    public double Volume() => MeshVolume.Of(_positions, _pattern.Indices);

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
}
