using Ringwright.Core.Geometry;

namespace Ringwright.Core.Turning;

/// <summary>Writes the vertices of planned segments, each in its place around the axis.</summary>
internal sealed class SegmentWriter
{
    private readonly ArcTable _arc = new();

    /// <summary>Fills <paramref name="positions"/> (x, y, z in mm for each vertex) of one cell of a segment.</summary>
    public void WritePositions(SegmentPlan plan, in SegmentSpan span, Span<float> positions)
    {
        if (span.IsRadial) _arc.Set(span.From, span.To, plan.Facets);
        foreach (MeshRow row in plan.Pattern.Rows)
        {
            SectionNode node = plan.Outline.Nodes[row.Node];
            if (!span.IsRadial) _arc.Set(span.FromAt(node.R, node.Z), span.ToAt(node.R, node.Z), plan.Facets);
            (int first, int count) = Reach(plan, row);
            _arc.Write(positions.Slice(3 * row.Start, 3 * count), node.R, node.Z, first);
        }
    }

    /// <summary>Fills <paramref name="normals"/>, unit vectors, of one cell of a segment whose faces have their own vertices.</summary>
    public void WriteNormals(SegmentPlan plan, in SegmentSpan span, Span<float> normals)
    {
        if (span.IsRadial) _arc.Set(span.From, span.To, plan.Facets);
        foreach (MeshRow row in plan.Pattern.Rows)
        {
            if (row.Group >= plan.Groups.From)
            {
                Put(normals, row.Start, row.Group == plan.Groups.From ? -Normal(span.FromPlane) : Normal(span.ToPlane));
                continue;
            }

            SectionNode node = plan.Outline.Nodes[row.Node];
            if (!span.IsRadial) _arc.Set(span.FromAt(node.R, node.Z), span.ToAt(node.R, node.Z), plan.Facets);
            (float r, float z) = plan.Groups.Normal(row, plan.Outline.Nodes.Length);
            (int first, int count) = Reach(plan, row);
            _arc.Write(normals.Slice(3 * row.Start, 3 * count), r, z, first);
        }
    }

    private static (int First, int Count) Reach(SegmentPlan plan, MeshRow row) => row.Reach switch
    {
        RowReach.Arc => (0, plan.FullTurn ? plan.Facets : plan.Facets + 1),
        RowReach.Point => (plan.Facets / 2, 1),
        RowReach.From => (0, 1),
        _ => (plan.Facets, 1),
    };

    private static Vector3D Normal(JointPlane plane)
    {
        (double sin, double cos) = Math.SinCos(plane.Direction);
        (double lean, double upright) = Math.SinCos(plane.Tilt);
        return new(-sin * upright, cos * upright, -lean);
    }

    private static void Put(Span<float> to, int vertex, Vector3D value)
    {
        to[3 * vertex] = (float)value.X;
        to[(3 * vertex) + 1] = (float)value.Y;
        to[(3 * vertex) + 2] = (float)value.Z;
    }
}
