namespace Ringwright.Core.Turning;

/// <summary>Traces one connected part of a wall's cut. At a step the walls below and above share the nodes they both have.</summary>
internal sealed class SectionTracer(
    List<WallLevel> levels, SegmentSpan span, List<SectionNode> nodes, List<SectionEdge> edges, List<SectionTriangle> triangles)
{
    private readonly int[] _outer = new int[levels.Count];
    private readonly int[] _inner = new int[levels.Count];

    public void Trace()
    {
        for (int i = 0; i < levels.Count; i++) AddLevel(i);
        int top = levels.Count - 1;
        AddEdge(_inner[0], _outer[0], SegmentFace.Bottom);
        for (int i = 0; i < top; i++) AddEdge(_outer[i], _outer[i + 1], SegmentFace.Outer);
        AddEdge(_outer[top], _inner[top], SegmentFace.Top);
        for (int i = top; i > 0; i--) AddEdge(_inner[i], _inner[i - 1], SegmentFace.Inner);
        for (int i = 0; i < top; i++) FillSlab(i);
    }

    private void AddLevel(int i)
    {
        WallLevel level = levels[i];
        _inner[i] = OnStep(i, level.Inner, _inner) ?? AddNode(level.Inner, level.Z);
        _outer[i] = level.Outer - level.Inner <= SolidCheck.Resolution ? _inner[i] : OnStep(i, level.Outer, _outer) ?? AddNode(level.Outer, level.Z);
    }

    private int? OnStep(int i, double r, int[] wall) =>
        i > 0 && SolidCheck.SameHeight(levels[i - 1], levels[i]) && Math.Abs(nodes[wall[i - 1]].R - r) <= SolidCheck.Resolution ? wall[i - 1] : null;

    private int AddNode(double r, double z)
    {
        bool axis = r <= SolidCheck.Resolution;
        bool meeting = !span.IsRadial && r * span.Width(r, z) <= SolidCheck.Resolution;
        nodes.Add(new(axis ? 0 : r, z, axis || meeting));
        return nodes.Count - 1;
    }

    private void AddEdge(int a, int b, SegmentFace face)
    {
        if (a != b) edges.Add(new(a, b, face));
    }

    // The triangles between two heights, from the inside out: always the next step that reaches less far out.
    private void FillSlab(int i)
    {
        if (SolidCheck.SameHeight(levels[i], levels[i + 1])) return;
        Span<int> below = stackalloc int[4];
        Span<int> above = stackalloc int[4];
        below = Across(i, i - 1, below);
        above = Across(i + 1, i + 2, above);
        int b = 0;
        int a = 0;
        while (b + 1 < below.Length || a + 1 < above.Length)
        {
            bool takeBelow = a + 1 == above.Length || (b + 1 < below.Length && nodes[below[b + 1]].R <= nodes[above[a + 1]].R);
            triangles.Add(takeBelow ? new(below[b], below[b + 1], above[a]) : new(below[b], above[a + 1], above[a]));
            if (takeBelow) b++;
            else a++;
        }
    }

    // The nodes on the wood of a level, from the inside out: its own, and those of the other side of a step.
    private Span<int> Across(int i, int partner, Span<int> room)
    {
        int count = 0;
        room[count++] = _inner[i];
        bool step = partner >= 0 && partner < levels.Count && SolidCheck.SameHeight(levels[i], levels[partner]);
        if (step && Within(_inner[partner], i)) room[count++] = _inner[partner];
        if (step && Within(_outer[partner], i)) room[count++] = _outer[partner];
        if (_outer[i] != _inner[i]) room[count++] = _outer[i];
        return room[..count];
    }

    private bool Within(int node, int i) =>
        node != _inner[i] && node != _outer[i] && nodes[node].R > nodes[_inner[i]].R && nodes[node].R < nodes[_outer[i]].R;
}
