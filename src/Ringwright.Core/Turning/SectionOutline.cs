namespace Ringwright.Core.Turning;

/// <summary>A corner of a wall's cut.</summary>
/// <param name="R">Distance from the axis, mm.</param>
/// <param name="Z">Height, mm.</param>
/// <param name="IsPoint">Whether the segment has no width here: the axis, or where its sides meet.</param>
internal readonly record struct SectionNode(double R, double Z, bool IsPoint);

/// <summary>A straight side of a wall's cut, from node to node, with the wood on its left (r to the right, z up).</summary>
internal readonly record struct SectionEdge(int A, int B, SegmentFace Face);

/// <summary>A triangle of a wall's cut, counter-clockwise (r to the right, z up).</summary>
internal readonly record struct SectionTriangle(int A, int B, int C);

/// <summary>
/// A wall's cut as a mesh of the plane: what all faces of a segment are swept or copied from. Its triangles and its sides
/// share the nodes, so nothing swept from them can have a gap or a T-junction.
/// </summary>
internal sealed class SectionOutline
{
    private SectionOutline(List<SectionNode> nodes, List<SectionEdge> edges, List<SectionTriangle> triangles)
    {
        Nodes = [.. nodes];
        Edges = [.. edges];
        Triangles = [.. triangles];
        foreach (SectionNode node in Nodes) GreatestRadius = Math.Max(GreatestRadius, node.R);
    }

    public SectionNode[] Nodes { get; }

    /// <summary>Each connected part in turn: bottom, outside up, top, inside down.</summary>
    public SectionEdge[] Edges { get; }

    public SectionTriangle[] Triangles { get; }

    /// <summary>mm.</summary>
    public double GreatestRadius { get; }

    /// <summary>The outline of connected parts of a cut.</summary>
    public static SectionOutline Of(List<List<WallLevel>> runs, in SegmentSpan span)
    {
        List<SectionNode> nodes = new(2 * runs.Sum(run => run.Count));
        List<SectionEdge> edges = new(nodes.Capacity);
        List<SectionTriangle> triangles = new(nodes.Capacity);
        foreach (List<WallLevel> run in runs) new SectionTracer(run, span, nodes, edges, triangles).Trace();
        return new(nodes, edges, triangles);
    }

    /// <summary>Whether faces made for <paramref name="other"/> connect the nodes of this one too.</summary>
    public bool ConnectsLike(SectionOutline other)
    {
        if (Nodes.Length != other.Nodes.Length || !Edges.AsSpan().SequenceEqual(other.Edges) || !Triangles.AsSpan().SequenceEqual(other.Triangles)) return false;
        for (int i = 0; i < Nodes.Length; i++)
        {
            if (Nodes[i].IsPoint != other.Nodes[i].IsPoint || Nodes[i].R == 0 != (other.Nodes[i].R == 0)) return false;
        }

        return true;
    }
}
