using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Turning;

/// <summary>
/// The turned solid as triangles: every segment a closed solid of its own (a strip of a glued segment of up to four), all in one set of buffers, sorted by wood and within
/// a wood by ring and segment. Positions are of single precision, computed in double.
/// </summary>
public sealed class TurnedMesh
{
    private readonly IReadOnlyList<TurnedRing> _rings;
    private readonly float[] _positions;
    private readonly float[] _normals;
    private readonly int[] _indices;

    internal TurnedMesh(IReadOnlyList<TurnedRing> rings, TurnedPart[] parts, float[] positions, float[] normals, int[] indices)
    {
        _rings = rings;
        _positions = positions;
        _normals = normals;
        _indices = indices;
        Parts = ImmutableCollectionsMarshal.AsImmutableArray(parts);
        Woods = WoodRanges(parts);
    }

    /// <summary>x, y, z of every vertex, mm; z is the lathe's axis.</summary>
    public ReadOnlySpan<float> Positions => _positions;

    /// <summary>Unit normals of every vertex; empty where corners are shared.</summary>
    public ReadOnlySpan<float> Normals => _normals;

    /// <summary>Three vertices for each triangle, counter-clockwise seen from outside.</summary>
    public ReadOnlySpan<int> Indices => _indices;

    /// <summary>The segments in the order of the buffers.</summary>
    public ImmutableArray<TurnedPart> Parts { get; }

    /// <summary>The woods in the order of the buffers.</summary>
    public ImmutableArray<WoodRange> Woods { get; }

    /// <summary>How many triangles there are.</summary>
    public int TriangleCount => _indices.Length / 3;

    /// <summary>How many vertices there are.</summary>
    public int VertexCount => _positions.Length / 3;

    /// <summary>
    /// Meshes <paramref name="rings"/>. Where a segment's sides meet or cross there is nothing of it behind that; a segment
    /// without any wood becomes a part without triangles. Time and memory grow in proportion to the triangles.
    /// </summary>
    /// <exception cref="BadInputException">A ring cannot be used; the sentence has its number.</exception>
    public static TurnedMesh Of(IReadOnlyList<TurnedRing> rings, Facets facets, MeshCorners corners = MeshCorners.Shared)
    {
        SolidCheck.Check(rings);
        return new TurnedMeshBuilder(rings, new(facets, corners)).Build(corners == MeshCorners.PerFace);
    }

    /// <summary>The part to which a triangle belongs: what was pointed at.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such triangle.</exception>
    public TurnedPart PartOf(int triangle)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(triangle);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(triangle, TriangleCount);
        int low = 0;
        int high = Parts.Length - 1;
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            if (Parts[middle].FirstIndex <= 3 * triangle) low = middle;
            else high = middle - 1;
        }

        return Parts[low];
    }

    /// <summary>
    /// For every vertex where in its segment's board it was: x along the board, y across, z through it, mm. For grain that runs
    /// through the solid.
    /// </summary>
    public float[] BoardCoordinates()
    {
        float[] coordinates = GC.AllocateUninitializedArray<float>(_positions.Length);
        foreach (TurnedPart part in Parts)
        {
            Frame3D board = _rings[part.Ring].Segments[part.Segment].Board;
            BoardWriter.Write(
                board,
                _positions.AsSpan(3 * part.FirstVertex, 3 * part.VertexCount),
                coordinates.AsSpan(3 * part.FirstVertex, 3 * part.VertexCount));
        }

        return coordinates;
    }

    /// <summary>Volume of everything, mm³, by the divergence theorem over the triangles.</summary>
    public double Volume() => MeshVolume.Of(_positions, _indices);

    /// <summary>Volume of one segment, mm³.</summary>
    public double Volume(TurnedPart part) => MeshVolume.Of(_positions, _indices.AsSpan(part.FirstIndex, part.IndexCount));

    private static ImmutableArray<WoodRange> WoodRanges(TurnedPart[] parts)
    {
        var ranges = ImmutableArray.CreateBuilder<WoodRange>();
        for (int first = 0; first < parts.Length;)
        {
            int end = first;
            int count = 0;
            for (; end < parts.Length && parts[end].Wood == parts[first].Wood; end++) count += parts[end].IndexCount;
            ranges.Add(new(parts[first].Wood, first, end - first, parts[first].FirstIndex, count));
            first = end;
        }

        return ranges.ToImmutable();
    }
}
