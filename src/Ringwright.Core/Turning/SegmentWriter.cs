using Ringwright.Core.Geometry;

namespace Ringwright.Core.Turning;

/// <summary>Writes the vertices of planned segments, each in its place around the axis.</summary>
internal sealed class SegmentWriter
{
    private double[] _cos = new double[16];
    private double[] _sin = new double[16];

    /// <summary>Fills <paramref name="positions"/> (x, y, z in mm for each vertex) of one segment.</summary>
    public void WritePositions(SegmentPlan plan, TurnedSegment segment, Span<float> positions)
    {
        SegmentSpan span = new(segment);
        if (span.IsRadial) SetAngles(span.From, span.To, plan.Facets);
        foreach (MeshRow row in plan.Pattern.Rows)
        {
            SectionNode node = plan.Outline.Nodes[row.Node];
            if (!span.IsRadial) SetAngles(span.FromAt(node.R, node.Z), span.ToAt(node.R, node.Z), plan.Facets);
            (int first, int count) = Reach(plan, row);
            WriteArc(positions.Slice(3 * row.Start, 3 * count), node, first);
        }
    }

    /// <summary>Fills <paramref name="normals"/>, unit vectors, of one segment whose faces have their own vertices.</summary>
    public void WriteNormals(SegmentPlan plan, TurnedSegment segment, Span<float> normals)
    {
        SegmentSpan span = new(segment);
        if (span.IsRadial) SetAngles(span.From, span.To, plan.Facets);
        foreach (MeshRow row in plan.Pattern.Rows)
        {
            if (row.Group >= plan.Groups.From)
            {
                Put(normals, row.Start, row.Group == plan.Groups.From ? -Normal(segment.From) : Normal(segment.To));
                continue;
            }

            SectionNode node = plan.Outline.Nodes[row.Node];
            if (!span.IsRadial) SetAngles(span.FromAt(node.R, node.Z), span.ToAt(node.R, node.Z), plan.Facets);
            (float r, float z) = plan.Groups.Normal(row, plan.Outline.Nodes.Length);
            (int first, int count) = Reach(plan, row);
            for (int k = 0; k < count; k++) Put(normals, row.Start + k, new(r * _cos[first + k], r * _sin[first + k], z));
        }
    }

    private static (int First, int Count) Reach(SegmentPlan plan, MeshRow row) => row.Reach switch
    {
        RowReach.Arc => (0, plan.FullTurn ? plan.Facets : plan.Facets + 1),
        RowReach.Point => (plan.Facets / 2, 1),
        RowReach.From => (0, 1),
        _ => (plan.Facets, 1),
    };

    private void WriteArc(Span<float> to, SectionNode node, int first)
    {
        float z = (float)node.Z;
        ReadOnlySpan<double> cos = _cos.AsSpan(first, to.Length / 3);
        ReadOnlySpan<double> sin = _sin.AsSpan(first, to.Length / 3);
        for (int k = 0; k < cos.Length; k++)
        {
            Span<float> vertex = to.Slice(3 * k, 3);
            vertex[0] = (float)(node.R * cos[k]);
            vertex[1] = (float)(node.R * sin[k]);
            vertex[2] = z;
        }
    }

    // The last angle is taken as it is, so that neighbours have their common joint at the same place to the bit.
    private void SetAngles(double from, double to, int facets)
    {
        if (_cos.Length <= facets)
        {
            _cos = new double[facets + 1];
            _sin = new double[facets + 1];
        }

        double step = (to - from) / facets;
        for (int k = 0; k < facets; k++) (_sin[k], _cos[k]) = Math.SinCos(from + (k * step));
        (_sin[facets], _cos[facets]) = Math.SinCos(to);
    }

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
