namespace Ringwright.Core.Turning;

/// <summary>Where along the turn the vertices of a row stand.</summary>
internal enum RowReach
{
    /// <summary>All the way from one side to the other.</summary>
    Arc,

    /// <summary>One vertex, halfway, where the segment has no width.</summary>
    Point,

    /// <summary>One vertex, on the side it starts at.</summary>
    From,

    /// <summary>One vertex, on the side it ends at.</summary>
    To,
}

/// <summary>Vertices of one node, one behind the other.</summary>
/// <param name="Node">The node they are swept from.</param>
/// <param name="Group">Faces with the same number share the row.</param>
/// <param name="Start">Number of the first vertex within the segment.</param>
/// <param name="Reach">How far along the turn it goes.</param>
internal readonly record struct MeshRow(int Node, int Group, int Start, RowReach Reach);

/// <summary>
/// How the vertices of a segment are laid out and connected: the same for all segments of like outline, so it is worked out
/// once and copied with the number of the first vertex added.
/// </summary>
/// <param name="Rows">All vertices in order.</param>
/// <param name="VertexCount">How many vertices that are.</param>
/// <param name="Indices">Three for each triangle, counter-clockwise from outside, sorted by face.</param>
/// <param name="FaceStarts">Where in the indices each <see cref="SegmentFace"/> starts, and the end.</param>
internal sealed record MeshPattern(MeshRow[] Rows, int VertexCount, int[] Indices, int[] FaceStarts)
{
    public const int FaceCount = 6;

    public static MeshPattern Of(SectionOutline outline, FaceGroups groups, int facets, bool fullTurn) =>
        new MeshWeaver(outline, groups, facets, fullTurn).Weave();
}
