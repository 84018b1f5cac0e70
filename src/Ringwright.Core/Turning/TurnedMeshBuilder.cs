using System.Numerics;
using System.Runtime.InteropServices;

namespace Ringwright.Core.Turning;

/// <summary>Counts first, allocates each buffer once at its exact size, then writes.</summary>
internal sealed class TurnedMeshBuilder(IReadOnlyList<TurnedRing> rings, SegmentPlanner planner)
{
    private readonly SegmentWriter _writer = new();
    private SegmentPlan[][] _plansOf = [];
    private TurnedPart[] _parts = [];

    public TurnedMesh Build(bool withNormals)
    {
        Plan();
        (int vertices, int indices) = Place();
        float[] positions = GC.AllocateUninitializedArray<float>(3 * vertices);
        float[] normals = withNormals ? GC.AllocateUninitializedArray<float>(3 * vertices) : [];
        int[] triangles = GC.AllocateUninitializedArray<int>(indices);
        for (int i = 0; i < _parts.Length; i++)
        {
            SegmentSpan[] cells = SegmentCells.Of(rings[_parts[i].Ring].Segments[_parts[i].Segment]);
            (int vertex, int index) = (_parts[i].FirstVertex, _parts[i].FirstIndex);
            for (int cell = 0; cell < cells.Length; cell++)
            {
                SegmentPlan plan = _plansOf[i][cell];
                int count = plan.Pattern.VertexCount;
                _writer.WritePositions(plan, cells[cell], positions.AsSpan(3 * vertex, 3 * count));
                if (withNormals) _writer.WriteNormals(plan, cells[cell], normals.AsSpan(3 * vertex, 3 * count));
                Connect(plan.Pattern.Indices, vertex, triangles.AsSpan(index, plan.Pattern.Indices.Length));
                vertex += count;
                index += plan.Pattern.Indices.Length;
            }
        }

        return new(rings, _parts, positions, normals, triangles);
    }

    // Sorted by wood by counting, which keeps rings and segments in their order.
    private void Plan()
    {
        int[] nextOfWood = FirstOfEachWood();
        for (int ring = 0; ring < rings.Count; ring++)
        {
            planner.StartRing(rings[ring]);
            for (int segment = 0; segment < rings[ring].Segments.Length; segment++)
            {
                TurnedSegment one = rings[ring].Segments[segment];
                SegmentPlan[] plans = planner.Plan(one);
                int place = nextOfWood[one.Wood]++;
                _plansOf[place] = plans;
                _parts[place] = new(ring, segment, one.Wood, 0, plans.Sum(p => p.Pattern.VertexCount), 0, plans.Sum(p => p.Pattern.Indices.Length));
            }
        }
    }

    private int[] FirstOfEachWood()
    {
        int greatest = -1;
        int count = 0;
        foreach (TurnedRing ring in rings)
        {
            count += ring.Segments.Length;
            foreach (TurnedSegment segment in ring.Segments) greatest = Math.Max(greatest, segment.Wood);
        }

        _plansOf = new SegmentPlan[count][];
        _parts = new TurnedPart[count];
        int[] starts = new int[greatest + 2];
        foreach (TurnedRing ring in rings)
        {
            foreach (TurnedSegment segment in ring.Segments) starts[segment.Wood + 1]++;
        }

        for (int wood = 1; wood < starts.Length; wood++) starts[wood] += starts[wood - 1];
        return starts;
    }

    private (int Vertices, int Indices) Place()
    {
        long vertices = 0;
        long indices = 0;
        for (int i = 0; i < _parts.Length; i++)
        {
            _parts[i] = _parts[i] with { FirstVertex = (int)vertices, FirstIndex = (int)indices };
            vertices += _parts[i].VertexCount;
            indices += _parts[i].IndexCount;
            if (Math.Max(3 * vertices, indices) > Array.MaxLength)
                throw new BadInputException("mesh", "it takes more than two thousand million numbers", "take fewer facets or a larger tolerance");
        }

        return ((int)vertices, (int)indices);
    }

    private static void Connect(ReadOnlySpan<int> pattern, int firstVertex, Span<int> triangles)
    {
        ReadOnlySpan<Vector<int>> wide = MemoryMarshal.Cast<int, Vector<int>>(pattern);
        Span<Vector<int>> to = MemoryMarshal.Cast<int, Vector<int>>(triangles);
        Vector<int> shift = new(firstVertex);
        for (int i = 0; i < wide.Length; i++) to[i] = wide[i] + shift;
        for (int i = wide.Length * Vector<int>.Count; i < pattern.Length; i++) triangles[i] = pattern[i] + firstVertex;
    }
}
