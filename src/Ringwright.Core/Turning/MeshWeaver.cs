namespace Ringwright.Core.Turning;

/// <summary>Connects a swept outline: strips along its sides, and its triangles on the two joint faces.</summary>
internal sealed class MeshWeaver(SectionOutline outline, FaceGroups groups, int facets, bool fullTurn)
{
    private readonly List<MeshRow> _rows = [];
    private readonly Dictionary<(int Node, int Group), MeshRow> _rowOf = [];
    private readonly List<int> _indices = [];
    private int _vertexCount;

    public MeshPattern Weave()
    {
        int[] starts = new int[MeshPattern.FaceCount + 1];
        for (int face = 0; face < MeshPattern.FaceCount; face++)
        {
            starts[face] = _indices.Count;
            WeaveFace((SegmentFace)face);
        }

        starts[^1] = _indices.Count;
        return new([.. _rows], _vertexCount, [.. _indices], starts);
    }

    private void WeaveFace(SegmentFace face)
    {
        if (face is SegmentFace.From or SegmentFace.To)
        {
            if (!fullTurn) WeaveJoint(face);
            return;
        }

        for (int i = 0; i < outline.Edges.Length; i++)
        {
            if (outline.Edges[i].Face == face) WeaveStrip(outline.Edges[i], groups.OfEdge(i));
        }
    }

    // The wood is on the left of the side a to b in the cut, and seen from outside the turn goes to its left, too.
    private void WeaveStrip(SectionEdge edge, int group)
    {
        bool aPoint = outline.Nodes[edge.A].IsPoint;
        bool bPoint = outline.Nodes[edge.B].IsPoint;
        if (aPoint && bPoint) return;
        MeshRow a = Row(edge.A, group, RowReach.Arc);
        MeshRow b = Row(edge.B, group, RowReach.Arc);
        for (int k = 0; k < facets; k++)
        {
            int next = fullTurn && k == facets - 1 ? 0 : k + 1;
            if (!aPoint) Add(At(b, k), At(a, k), At(a, next));
            if (!bPoint) Add(At(b, k), At(a, next), At(b, next));
        }
    }

    private void WeaveJoint(SegmentFace face)
    {
        bool from = face == SegmentFace.From;
        foreach (SectionTriangle t in outline.Triangles)
        {
            int a = Corner(t.A, from);
            int b = Corner(t.B, from);
            int c = Corner(t.C, from);
            if (from) Add(a, b, c);
            else Add(a, c, b);
        }
    }

    private int Corner(int node, bool from)
    {
        MeshRow row = groups.Joined
            ? Row(node, 0, RowReach.Arc)
            : Row(node, from ? groups.From : groups.To, from ? RowReach.From : RowReach.To);
        return At(row, from ? 0 : facets);
    }

    private MeshRow Row(int node, int group, RowReach reach)
    {
        if (_rowOf.TryGetValue((node, group), out MeshRow known)) return known;
        MeshRow row = new(node, group, _vertexCount, NeedsOne(outline.Nodes[node]) ? RowReach.Point : reach);
        _vertexCount += row.Reach != RowReach.Arc ? 1 : fullTurn ? facets : facets + 1;
        _rows.Add(row);
        _rowOf.Add((node, group), row);
        return row;
    }

    // On the axis every facet of a cone has its own normal, so it has its own vertex where there are normals.
    private bool NeedsOne(SectionNode node) => node.IsPoint && (groups.Joined || node.R > 0);

    private static int At(MeshRow row, int k) => row.Start + (row.Reach == RowReach.Arc ? k : 0);

    private void Add(int a, int b, int c)
    {
        _indices.Add(a);
        _indices.Add(b);
        _indices.Add(c);
    }
}
