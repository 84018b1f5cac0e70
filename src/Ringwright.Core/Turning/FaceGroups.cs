namespace Ringwright.Core.Turning;

/// <summary>
/// Which faces share their vertices, and the normal of each group at each node, in the cut's plane (r, z).
/// </summary>
internal sealed class FaceGroups
{
    // Walls that bend less than this between two heights are one smooth surface, cos 30°.
    private const double SmoothCosine = 0.866;

    private readonly int[] _ofEdge;
    private readonly (float R, float Z)[] _normals;

    private FaceGroups(int[] ofEdge, (float R, float Z)[] normals, int count)
    {
        _ofEdge = ofEdge;
        _normals = normals;
        From = count;
        To = count + 1;
    }

    /// <summary>All faces share all vertices; there are no normals.</summary>
    public static FaceGroups OneForAll { get; } = new([], [], 0);

    /// <summary>Whether all faces share all vertices.</summary>
    public bool Joined => _ofEdge.Length == 0;

    /// <summary>The groups of the two joint faces.</summary>
    public int From { get; }

    public int To { get; }

    public int OfEdge(int edge) => Joined ? 0 : _ofEdge[edge];

    /// <summary>Whether the same faces share their vertices.</summary>
    public bool IsLike(FaceGroups other) => _ofEdge.AsSpan().SequenceEqual(other._ofEdge);

    /// <summary>The unit normal at a vertex row that is not of a joint face.</summary>
    public (float R, float Z) Normal(MeshRow row, int nodeCount) => _normals[(row.Group * nodeCount) + row.Node];

    /// <summary>Groups along the sides of <paramref name="outline"/>: a new one at each change of face and each sharp bend.</summary>
    public static FaceGroups Smooth(SectionOutline outline)
    {
        SectionEdge[] edges = outline.Edges;
        int[] ofEdge = new int[edges.Length];
        for (int i = 1; i < edges.Length; i++) ofEdge[i] = ofEdge[i - 1] + (Continues(outline, edges[i - 1], edges[i]) ? 0 : 1);
        int count = edges.Length == 0 ? 0 : ofEdge[^1] + 1;
        var normals = new (float R, float Z)[count * outline.Nodes.Length];
        for (int i = 0; i < edges.Length; i++)
        {
            int at = ofEdge[i] * outline.Nodes.Length;
            (double R, double Z) own = Outward(outline, edges[i]);
            (double R, double Z)? before = i > 0 && ofEdge[i - 1] == ofEdge[i] ? Outward(outline, edges[i - 1]) : null;
            (double R, double Z)? after = i + 1 < edges.Length && ofEdge[i + 1] == ofEdge[i] ? Outward(outline, edges[i + 1]) : null;
            normals[at + edges[i].A] = AtNode(before, own, after);
            normals[at + edges[i].B] = AtNode(after, own, before);
        }

        return new(ofEdge, normals, count);
    }

    // Between two sides the middle; at the end of a smooth wall the bend of its last two sides goes on by half, so that the
    // shading runs on into the next ring.
    private static (float R, float Z) AtNode((double R, double Z)? near, (double R, double Z) own, (double R, double Z)? far)
    {
        (double r, double z) = (near, far) switch
        {
            ({ } n, _) => (own.R + n.R, own.Z + n.Z),
            (null, { } f) => ((1.5 * own.R) - (0.5 * f.R), (1.5 * own.Z) - (0.5 * f.Z)),
            _ => own,
        };
        double length = Math.Sqrt((r * r) + (z * z));
        return ((float)(r / length), (float)(z / length));
    }

    private static bool Continues(SectionOutline outline, SectionEdge a, SectionEdge b)
    {
        if (a.Face != b.Face || a.B != b.A) return false;
        (double R, double Z) first = Outward(outline, a);
        (double R, double Z) second = Outward(outline, b);
        return (first.R * second.R) + (first.Z * second.Z) >= SmoothCosine;
    }

    // The wood is on the left, so outward is to the right.
    private static (double R, double Z) Outward(SectionOutline outline, SectionEdge edge)
    {
        double r = outline.Nodes[edge.B].Z - outline.Nodes[edge.A].Z;
        double z = outline.Nodes[edge.A].R - outline.Nodes[edge.B].R;
        double length = Math.Sqrt((r * r) + (z * z));
        return (r / length, z / length);
    }
}
