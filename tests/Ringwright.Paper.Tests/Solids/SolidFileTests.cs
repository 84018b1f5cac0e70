using System.Globalization;
using System.IO.Compression;
using System.Numerics;
using System.Xml.Linq;
using Ringwright.Core;
using Ringwright.Core.Geometry;
using Ringwright.Core.Timber;
using Ringwright.Core.Turning;
using Ringwright.Paper.Solids;
using SharpGLTF.Schema2;

namespace Ringwright.Paper.Tests.Solids;

public class SolidFileTests
{
    private static readonly Wood[] Woods = [Wood.Named("maple"), Wood.Named("walnut")];
    private static readonly XNamespace Core = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";

    [Fact]
    public void The_glb_has_one_primitive_for_each_wood_in_metres_with_y_up()
    {
        TurnedMesh mesh = Bowl(MeshCorners.PerFace);
        var model = ModelRoot.ParseGLB(GlbWriter.Write(mesh, Woods));
        Mesh solid = Assert.Single(model.LogicalMeshes);
        Assert.Same(solid, Assert.Single(model.DefaultScene.VisualChildren).Mesh);
        Assert.Equal(["maple", "walnut"], solid.Primitives.Select(p => p.Material.Name));
        double volume = 0;
        foreach (MeshPrimitive primitive in solid.Primitives)
        {
            IReadOnlyList<Vector3> positions = primitive.GetVertexAccessor("POSITION").AsVector3Array();
            volume += Volume(positions, primitive.GetTriangleIndices());
            Assert.All(positions, p => Assert.InRange(p.Y, 0, 0.010001));
            Assert.All(primitive.GetVertexAccessor("NORMAL").AsVector3Array(), n => Assert.Equal(1, n.Length(), 1e-5));
        }

        Assert.Equal(1, volume * 1e9 / mesh.Volume(), 1e-5);
    }

    [Fact]
    public void The_glb_carries_the_place_in_the_board_of_every_vertex()
    {
        TurnedMesh mesh = Bowl(MeshCorners.Shared);
        var model = ModelRoot.ParseGLB(GlbWriter.Write(mesh, Woods));
        float[] board = mesh.BoardCoordinates();
        Vector3[] written = [.. model.LogicalMeshes[0].Primitives.SelectMany(p => p.GetVertexAccessor("_BOARD").AsVector3Array())];
        Assert.Equal(mesh.VertexCount, written.Length);
        for (int v = 0; v < written.Length; v++) Assert.Equal(0, (new Vector3(board.AsSpan(3 * v, 3)) - (1000 * written[v])).Length(), 1e-4);
    }

    // IEC 61966-2-1: the grey of sRGB 188 is half the light (0.5029).
    [Fact]
    public void The_glb_gives_colours_in_linear_light()
    {
        var model = ModelRoot.ParseGLB(GlbWriter.Write(Bowl(MeshCorners.Shared), [new("grey", "#bcbcbc", 0), Woods[1]]));
        Vector4 colour = model.LogicalMaterials[0].FindChannel("BaseColor")!.Value.Color;
        Assert.Equal(0.5029, colour.X, 1e-3);
        Assert.Equal(1, colour.W);
    }

    [Fact]
    public void The_3mf_holds_closed_shells_in_millimetres()
    {
        TurnedMesh mesh = Bowl(MeshCorners.Shared);
        using ZipArchive zip = new(new MemoryStream(ThreeMfWriter.Write(mesh, Woods)));
        string target = (string)Load(zip, "_rels/.rels").Elements().Single().Attribute("Target")!;
        XElement model = Load(zip, target.TrimStart('/'));
        Assert.Equal("millimeter", (string)model.Attribute("unit")!);
        Assert.Equal(["#E3C9A5", "#6D5140"], model.Descendants(Core + "base").Select(b => (string)b.Attribute("displaycolor")!));
        double volume = 0;
        foreach (XElement one in model.Descendants(Core + "object"))
        {
            Vector3[] vertices = [.. one.Descendants(Core + "vertex").Select(v => new Vector3(Number(v, "x"), Number(v, "y"), Number(v, "z")))];
            (int A, int B, int C)[] triangles = [.. one.Descendants(Core + "triangle").Select(t => ((int)Number(t, "v1"), (int)Number(t, "v2"), (int)Number(t, "v3")))];
            AssertClosed(triangles);
            volume += Volume(vertices, triangles);
        }

        Assert.Equal(1, volume / mesh.Volume(), 1e-5);
        Assert.Equal(model.Descendants(Core + "object").Select(o => (string)o.Attribute("id")!), model.Descendants(Core + "item").Select(i => (string)i.Attribute("objectid")!));
        Assert.Equal("1 0 0 0 1 0 0 0 1 30 30 0", (string)model.Descendants(Core + "item").First().Attribute("transform")!);
    }

    [Fact]
    public void The_same_mesh_gives_the_same_bytes()
    {
        Assert.Equal(ThreeMfWriter.Write(Bowl(MeshCorners.Shared), Woods), ThreeMfWriter.Write(Bowl(MeshCorners.Shared), Woods));
        Assert.Equal(GlbWriter.Write(Bowl(MeshCorners.Shared), Woods), GlbWriter.Write(Bowl(MeshCorners.Shared), Woods));
    }

    [Fact]
    public void A_wood_without_name_is_said_and_an_empty_solid_is_written()
    {
        Assert.Equal(
            "ring 1, segment 2: its wood 1 is not in the list of 1; name every wood that is used.",
            Assert.Throws<BadInputException>(() => GlbWriter.Write(Bowl(MeshCorners.Shared), [Woods[0]])).Message);
        Assert.Throws<BadInputException>(() => ThreeMfWriter.Write(Bowl(MeshCorners.PerFace), Woods));
        var nothing = TurnedMesh.Of([], Facets.Fixed(1));
        Assert.Empty(ModelRoot.ParseGLB(GlbWriter.Write(nothing, [])).LogicalMeshes);
        Assert.NotEmpty(ThreeMfWriter.Write(nothing, []));
    }

    // Four segments of two woods on a floor of 4 mm.
    private static TurnedMesh Bowl(MeshCorners corners)
    {
        WallSection section = new([new(0, 30, 0), new(4, 30, 0), new(4, 30, 20), new(10, 28, 22)]);
        TurnedSegment Segment(int i) => new(new(i * Math.PI / 2), new((i + 1) * Math.PI / 2), i % 2, Frame3D.Identity with { Origin = new(5, i, 7) });
        return TurnedMesh.Of([new(section, [.. Enumerable.Range(0, 4).Select(Segment)])], Facets.Fixed(6), corners);
    }

    private static XElement Load(ZipArchive zip, string path)
    {
        using Stream stream = zip.GetEntry(path)!.Open();
        return XDocument.Load(stream).Root!;
    }

    private static float Number(XElement element, string attribute) => float.Parse((string)element.Attribute(attribute)!, CultureInfo.InvariantCulture);

    private static double Volume(IReadOnlyList<Vector3> vertices, IEnumerable<(int A, int B, int C)> triangles) =>
        triangles.Sum(t => Vector3.Dot(vertices[t.A], Vector3.Cross(vertices[t.B], vertices[t.C])) / 6.0);

    private static void AssertClosed((int A, int B, int C)[] triangles)
    {
        (int, int)[] edges = [.. triangles.SelectMany(t => new[] { (t.A, t.B), (t.B, t.C), (t.C, t.A) })];
        HashSet<(int, int)> all = [.. edges];
        Assert.Equal(edges.Length, all.Count);
        Assert.All(edges, edge => Assert.Contains((edge.Item2, edge.Item1), all));
    }
}
