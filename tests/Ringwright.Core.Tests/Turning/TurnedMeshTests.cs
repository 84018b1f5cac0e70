using Ringwright.Core.Turning;

namespace Ringwright.Core.Tests.Turning;

public class TurnedMeshTests
{
    private const double Degree = Math.PI / 180;

    [Fact]
    public void The_vase_has_the_volume_of_its_facets()
    {
        var mesh = TurnedMesh.Of(Rings.Vase, Facets.Fixed(8));
        Assert.Equal(253_440, mesh.TriangleCount);
        Assert.Equal(129_600, mesh.VertexCount);

        // A frustum of a regular polygon pyramid with 288 sides: h/3 (A1 + A2 + sqrt(A1 A2)), A = (n/2) r² sin(2 pi/n).
        double polygon = 144 * Math.Sin(2 * Math.PI / 288);
        double faceted = 0;
        for (int slice = 0; slice < 160; slice++)
        {
            double below = Rings.VaseRadius(1.5 * slice);
            double above = Rings.VaseRadius(1.5 * (slice + 1));
            faceted += polygon * (Frustum(below, above, 1.5) - Frustum(below - 6, above - 6, 1.5));
        }

        Assert.Equal(1, mesh.Volume() / faceted, 1e-6);

        // Pappus over the wall of 6 mm: pi (12 (60 · 240 + 25 · 480/pi) − 36 · 240); the facets leave out 8.63e-5 of it.
        double smooth = Math.PI * ((12 * ((60 * 240) + (25 * 480 / Math.PI))) - (36 * 240));
        Assert.Equal(659_723.9, smooth, 0.05);
        Assert.Equal(8.63e-5, 1 - (mesh.Volume() / smooth), 1e-7);
    }

    [Fact]
    public void Every_segment_of_the_vase_is_closed()
    {
        var mesh = TurnedMesh.Of(Rings.Vase, Facets.Fixed(8));
        MeshChecks.AssertClosed(mesh.Indices);
        MeshChecks.AssertSound(mesh.Positions, mesh.Indices);
        Assert.Equal(2 * 40 * 36, MeshChecks.Euler(mesh.Indices));
        foreach (TurnedPart part in mesh.Parts) Assert.Equal(2, MeshChecks.Euler(mesh.Indices.Slice(part.FirstIndex, part.IndexCount)));
    }

    [Fact]
    public void Parts_lie_in_the_buffers_without_gap_sorted_by_wood()
    {
        var mesh = TurnedMesh.Of(Rings.Vase, Facets.Fixed(2));
        int vertex = 0;
        int index = 0;
        (int, int, int) last = default;
        foreach (TurnedPart part in mesh.Parts)
        {
            Assert.Equal((vertex, index), (part.FirstVertex, part.FirstIndex));
            Assert.True(last.CompareTo((part.Wood, part.Ring, part.Segment)) <= 0);
            foreach (int used in mesh.Indices.Slice(index, part.IndexCount)) Assert.InRange(used, vertex, vertex + part.VertexCount - 1);
            vertex += part.VertexCount;
            index += part.IndexCount;
            last = (part.Wood, part.Ring, part.Segment);
        }

        Assert.Equal((mesh.VertexCount, mesh.Indices.Length), (vertex, index));
        Assert.Equal([0, 1, 2], mesh.Woods.Select(w => w.Wood));
        Assert.Equal([480, 480, 480], mesh.Woods.Select(w => w.PartCount));
        Assert.Equal([0, mesh.Indices.Length / 3, mesh.Indices.Length * 2 / 3], mesh.Woods.Select(w => w.FirstIndex));
    }

    [Fact]
    public void A_triangle_leads_to_its_segment()
    {
        var mesh = TurnedMesh.Of(Rings.Vase, Facets.Fixed(1));
        foreach (TurnedPart part in mesh.Parts)
        {
            Assert.Equal(part, mesh.PartOf(part.FirstIndex / 3));
            Assert.Equal(part, mesh.PartOf(((part.FirstIndex + part.IndexCount) / 3) - 1));
        }

        Assert.Throws<ArgumentOutOfRangeException>(() => mesh.PartOf(mesh.TriangleCount));
    }

    [Fact]
    public void A_segment_without_wood_is_a_part_without_triangles_and_is_never_pointed_at()
    {
        TurnedSegment nothing = Rings.Segment(new(0.2, 1), new(0.2, -1));
        TurnedRing ring = Rings.Closed(Rings.Cylinder(20, 10), 6);
        var mesh = TurnedMesh.Of([ring with { Segments = ring.Segments.Insert(3, nothing) }], Facets.Fixed(3));
        Assert.Equal(0, mesh.Parts[3].IndexCount);
        Assert.Equal(2, mesh.PartOf((mesh.Parts[3].FirstIndex / 3) - 1).Segment);
        Assert.Equal(4, mesh.PartOf(mesh.Parts[3].FirstIndex / 3).Segment);
        MeshChecks.AssertClosed(mesh.Indices);
    }

    [Theory]
    [InlineData(0, 2)]
    [InlineData(5, 0)]
    public void A_disc_without_joints_is_closed(double inner, int euler)
    {
        var mesh = TurnedMesh.Of([Rings.Disc(Rings.Section((0, 20, inner), (4, 22, inner), (10, 18, inner)))], Facets.Within(0.01));
        MeshChecks.AssertClosed(mesh.Indices);
        MeshChecks.AssertSound(mesh.Positions, mesh.Indices);
        Assert.Equal(euler, MeshChecks.Euler(mesh.Indices));
        Assert.Equal(mesh.VertexCount, new HashSet<int>(mesh.Indices.ToArray()).Count);
    }

    [Fact]
    public void A_bowl_with_a_floor_has_the_volume_of_its_two_parts()
    {
        // Solid to 4 mm, then a wall with a step in the outside as well.
        WallSection section = Rings.Section((0, 30, 0), (4, 30, 0), (4, 28, 20), (10, 28, 22), (10, 32, 22), (12, 32, 24));
        foreach (TurnedRing ring in new[] { Rings.Disc(section), Rings.Closed(section, 7) })
        {
            var mesh = TurnedMesh.Of([ring], Facets.Fixed(ring.Segments.Length == 1 ? 70 : 10));
            MeshChecks.AssertClosed(mesh.Indices);
            MeshChecks.AssertSound(mesh.Positions, mesh.Indices);
            Assert.Equal(2 * ring.Segments.Length, MeshChecks.Euler(mesh.Indices));
            double polygon = 35 * Math.Sin(2 * Math.PI / 70);
            double expected = polygon * ((4 * 900) + (6 * 28 * 28) + (2 * 32 * 32) - Frustum(20, 22, 6) - Frustum(22, 24, 2));
            Assert.Equal(1, mesh.Volume() / expected, 1e-6);
        }
    }

    [Fact]
    public void An_open_segment_ends_where_its_sides_meet()
    {
        // Sides 1 mm inside a wedge of 30° meet 1/sin 15° from the axis.
        var mesh = TurnedMesh.Of([Rings.Open(Rings.Cylinder(40), 12, 2)], Facets.Fixed(400));
        MeshChecks.AssertClosed(mesh.Indices);
        Assert.Equal(24, MeshChecks.Euler(mesh.Indices));
        double tip = 1 / Math.Sin(15 * Degree);
        Assert.Equal(tip, NearestToAxis(mesh), 1e-5);

        // Half angle b of the arc that is left: r sin(15° − b) = 1. The sector over it, less the two triangles between the
        // axis, the meeting point and the ends of the arc.
        double b = (15 * Degree) - Math.Asin(1.0 / 40);
        double area = (40 * 40 * b) - (40 * Math.Sin(b) * tip);
        Assert.Equal(12 * 10 * area, mesh.Volume(), 12 * 10 * area * 2e-6);
    }

    [Fact]
    public void A_veneer_between_parallel_sides_has_its_thickness()
    {
        var mesh = TurnedMesh.Of([Rings.One(Rings.Cylinder(30, 20), new(1, -0.4), new(1, 0.4))], Facets.Fixed(50));
        MeshChecks.AssertClosed(mesh.Indices);
        double Strip(double r) => (r * r * Math.Asin(0.4 / r)) + (0.4 * Math.Sqrt((r * r) - 0.16));
        Assert.Equal(10 * (Strip(30) - Strip(20)), mesh.Volume(), 1e-3);
    }

    [Fact]
    public void Where_the_sides_cross_inside_the_wall_there_is_nothing_behind()
    {
        // The inner wall passes the meeting line at mid height.
        WallSection section = Rings.Section((0, 40, 2), (10, 40, 12));
        var mesh = TurnedMesh.Of([Rings.Open(section, 12, 2 * 7 * Math.Sin(15 * Degree))], Facets.Fixed(12));
        MeshChecks.AssertClosed(mesh.Indices);
        MeshChecks.AssertSound(mesh.Positions, mesh.Indices);
        Assert.Equal(7, NearestToAxis(mesh), 1e-4);
    }

    [Fact]
    public void A_waist_thinner_than_the_meeting_line_parts_the_segment_in_two()
    {
        WallSection waist = Rings.Section((0, 20, 0), (10, 4, 0), (20, 20, 0));
        var mesh = TurnedMesh.Of([Rings.Open(waist, 6, 2 * 8 * Math.Sin(30 * Degree))], Facets.Fixed(6));
        MeshChecks.AssertClosed(mesh.Indices);
        MeshChecks.AssertSound(mesh.Positions, mesh.Indices);
        Assert.Equal(2 * 2 * 6, MeshChecks.Euler(mesh.Indices));
        Assert.True(mesh.Volume() > 0);
    }

    [Fact]
    public void Leaning_sides_lie_in_their_planes()
    {
        JointPlane from = new(0.1, 0.7, 0.3);
        JointPlane to = new(0.9, -1.1, -0.2);
        var mesh = SegmentMesh.Of(Rings.One(Rings.Section((5, 40, 25), (12, 45, 25), (20, 38, 30)), from, to), 0, Facets.Fixed(9));
        AssertOn(mesh, from, mesh.Face(SegmentFace.From));
        AssertOn(mesh, to, mesh.Face(SegmentFace.To));
    }

    [Fact]
    public void Bad_rings_get_one_sentence_with_the_ring_number()
    {
        TurnedRing good = Rings.Closed(Rings.Cylinder(20, 10), 6);
        Assert.Equal(
            "ring 2, height 10 mm: the outer radius 9 mm leaves no wall around the inner radius 12 mm; the outer radius must be the larger one.",
            Sentence(good, Rings.Closed(Rings.Section((0, 20, 10), (10, 9, 12)), 6)));
        Assert.Contains("ring 2, height 10 mm: the wood below and above the step does not meet", Sentence(good, Rings.Closed(Rings.Section((0, 20, 0), (10, 20, 0), (10, 30, 20), (12, 30, 20)), 6)));
        Assert.Contains("ring 1, segment 1: it reaches around", Sentence(Rings.One(Rings.Cylinder(20), new(0), new(7))));
        Assert.Contains("ring 1, height 4 mm: the level lies under", Sentence(Rings.Disc(Rings.Section((0, 20, 0), (5, 20, 0), (4, 20, 0)))));
        Assert.Contains("a size is not a number", Sentence(Rings.Disc(Rings.Section((0, 20, 0), (5, double.NaN, 0)))));
    }

    private static double NearestToAxis(TurnedMesh mesh) => Enumerable.Range(0, mesh.VertexCount).Min(v =>
    {
        System.Numerics.Vector3 p = MeshChecks.At(mesh.Positions, v);
        return Math.Sqrt((p.X * p.X) + (p.Y * p.Y));
    });

    private static string Sentence(params TurnedRing[] rings) =>
        Assert.Throws<BadInputException>(() => TurnedMesh.Of(rings, Facets.Fixed(4))).Message;

    private static double Frustum(double a, double b, double height) => height / 3 * ((a * a) + (a * b) + (b * b));

    private static void AssertOn(SegmentMesh mesh, JointPlane plane, ReadOnlySpan<int> face)
    {
        Assert.NotEqual(0, face.Length);
        foreach (int vertex in face)
        {
            System.Numerics.Vector3 p = MeshChecks.At(mesh.Positions, vertex);
            double t = (p.Y * Math.Cos(plane.Direction)) - (p.X * Math.Sin(plane.Direction));
            Assert.Equal(plane.Offset, (Math.Cos(plane.Tilt) * t) - (Math.Sin(plane.Tilt) * p.Z), 2e-5);
        }
    }
}
