using System.Text.Json;
using System.Xml.Linq;
using CsCheck;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Output;
using Ringwright.Paper.Templates;
using Ringwright.Paper.Tests.JobSheets;
using Ringwright.Paper.Tests.Readers;

namespace Ringwright.Paper.Tests.Templates;

/// <summary>DXF opened by dxf-parser, an independent reader from npm; SVG by System.Xml.</summary>
public class DxfTests
{
    private const double Fine = 1e-6; // mm

    private static JsonElement Dxf(Drawing drawing) => NodeReader.Read("read-dxf.mjs", DxfWriter.Write(drawing));

    [Fact]
    public void Units_are_millimetres_and_layers_are_those_of_the_template()
    {
        JsonElement dxf = Dxf(One(TemplateKind.Plate).Drawing);
        Assert.Equal(4, dxf.GetProperty("units").GetInt32()); // millimetres, in the DXF reference's list of $INSUNITS
        Assert.Equal(["0", "cut", "lines", "reference", "words"], dxf.GetProperty("layers").EnumerateArray().Select(l => l.GetString()));
        string[] used = [.. dxf.GetProperty("entities").EnumerateArray().Select(e => e.GetProperty("layer").GetString()!).Distinct().Order(StringComparer.Ordinal)];
        Assert.Equal(["cut", "lines", "reference", "words"], used);
    }

    [Fact]
    public void A_wedge_has_its_sizes()
    {
        RingPlan ring = Example.PlanOf(Example.Open).Rings[0];
        JsonElement wedge = Dxf(One(TemplateKind.Wedge).Drawing).GetProperty("entities").EnumerateArray().Single(e => e.GetProperty("layer").GetString() == "cut");
        Assert.True(wedge.GetProperty("shape").GetBoolean()); // closed
        Vector2D[] corners = [.. wedge.GetProperty("vertices").EnumerateArray().Select(Point)];
        double[] sides = [.. corners.Select((c, i) => (corners[(i + 1) % corners.Length] - c).Length)];
        double a = Math.PI / 16;
        double[] expected = [2 * ring.Glued.OuterApothem * Math.Tan(a), 2 * ring.Glued.InnerApothem * Math.Tan(a), ring.Glued.Depth / Math.Cos(a), ring.Glued.Depth / Math.Cos(a)];
        Assert.Equal(expected.Order(), sides.Order(), (x, y) => Math.Abs(x - y) < Fine);
        // y runs up: the rim, the longer flat, is above the tip.
        Assert.True(corners.Where((_, i) => sides[i] == sides.Max()).Single().Y > corners.Min(c => c.Y));
    }

    [Fact]
    public void A_plate_is_a_circle_with_a_hole_for_the_pin_and_holes_under_the_joints()
    {
        RingPlan ring = Example.PlanOf(Example.Open).Rings[0];
        JsonElement[] circles = [.. Dxf(One(TemplateKind.Plate).Drawing).GetProperty("entities").EnumerateArray().Where(e => e.GetProperty("type").GetString() == "CIRCLE" && e.GetProperty("layer").GetString() == "cut")];
        double[] radii = [.. circles.Select(c => c.GetProperty("radius").GetDouble()).Order()];
        Assert.Equal(2 + 16, radii.Length);
        Assert.Equal(ring.Glued.OuterCorner + 25, radii[^1], Fine);
        Assert.Equal(17, radii.Count(r => Math.Abs(r - 3) < Fine)); // pin and joints, both 6 mm wide here
        Vector2D centre = Point(circles.Single(c => c.GetProperty("radius").GetDouble() > 20).GetProperty("center"));
        Assert.All(circles.Where(c => (Point(c.GetProperty("center")) - centre).Length > 1), c => Assert.Equal(ring.Glued.OuterCorner, (Point(c.GetProperty("center")) - centre).Length, Fine));
    }

    [Fact]
    public void Arcs_turn_the_right_way()
    {
        Drawing drawing = new Drawing(100, 100)
            .Stroke(Outline.Arc(new(50, 50), 20, 0, Math.PI / 2), Pens.Fine) // on paper: from the right down
            .Stroke(new([new(new(10, 10), [new Segment.Arc(new(20, 10), Math.PI), new Segment.Line(new(30, 40))], Closed: false)]), Pens.Fine); // over the top
        JsonElement[] entities = [.. Dxf(drawing).GetProperty("entities").EnumerateArray()];
        JsonElement arc = entities.Single(e => e.GetProperty("type").GetString() == "ARC");
        // Counter-clockwise with y up: from below (270°) to the right (360°); dxf-parser gives radians.
        Assert.Equal(1.5 * Math.PI, arc.GetProperty("startAngle").GetDouble(), 1e-9);
        Assert.Equal(0, Math.IEEERemainder(arc.GetProperty("endAngle").GetDouble(), 2 * Math.PI), 1e-9);
        JsonElement first = entities.Single(e => e.GetProperty("type").GetString() == "POLYLINE").GetProperty("vertices")[0];
        Assert.Equal(-1, first.GetProperty("bulge").GetDouble(), 1e-9); // a half circle, clockwise
    }

    [Fact]
    public void Every_line_of_any_template_is_in_the_file_and_words_are_plain()
    {
        Plan plan = Example.PlanOf(Example.Open with { Name = "Großer Ring Ø 1" });
        foreach (Template template in TemplateSet.Of(plan, MeasureStyle.Millimetres))
        {
            JsonElement[] entities = [.. Dxf(template.Drawing).GetProperty("entities").EnumerateArray()];
            int contours = template.Drawing.Marks.OfType<Mark.Placed>().SelectMany(p => p.Child.Marks).OfType<Mark.Stroke>().Sum(s => s.Outline.Contours.Count);
            Assert.Equal(contours, entities.Count(e => e.GetProperty("type").GetString() != "TEXT"));
            Assert.All(DxfWriter.Write(template.Drawing), c => Assert.True(c < 128));
        }
    }

    [Fact]
    public void Svg_has_the_layers_and_the_size_in_millimetres()
    {
        Template template = One(TemplateKind.Plate);
        XElement svg = XDocument.Parse(SvgWriter.Write(template.Drawing, template.Name)).Root!;
        Assert.EndsWith("mm", svg.Attribute("width")!.Value, StringComparison.Ordinal);
        Assert.Equal($"0 0 {svg.Attribute("width")!.Value[..^2]} {svg.Attribute("height")!.Value[..^2]}", svg.Attribute("viewBox")!.Value);
        Assert.Equal(["cut", "lines", "reference", "words"], svg.Elements().Select(e => e.Attribute("id")?.Value).OfType<string>());
        // The plate's rim: an arc of its radius, at one user unit to the millimetre.
        string rim = svg.Elements().First(e => e.Attribute("id")?.Value == "cut").Elements().First().Attribute("d")!.Value;
        double radius = Example.PlanOf(Example.Open).Rings[0].Glued.OuterCorner + 25;
        Assert.Contains(FormattableString.Invariant($"A{Math.Round(radius, 4):0.####} "), rim, StringComparison.Ordinal);
    }

    // Cutting must lose nothing: what lies in a box and what lies in its four neighbours is the whole length.
    [Fact]
    public void Clipped_lines_and_arcs_add_up() => Gen.Select(Gen.Double[5, 45], Gen.Double[-3, 3], Gen.Double[0.1, 6.2], Gen.Double[10, 90], Gen.Double[10, 90]).Sample((radius, from, sweep, x, y) =>
    {
        Outline[] shapes = [Outline.Arc(new(50, 50), radius, from, sweep), Outline.Circle(new(50, 50), radius), Outline.Polygon([new(50 - radius, 40), new(50 + radius, 50), new(45, 50 + radius)])];
        Box[] parts = [new(0, 0, x, y), new(x, 0, 100 - x, y), new(0, y, x, 100 - y), new(x, y, 100 - x, 100 - y)];
        foreach (Outline shape in shapes)
            Assert.Equal(Length(shape), parts.Sum(box => shape.Within(box) is Outline inside ? Length(inside) : 0), 1e-6 * Length(shape));
    });

    private static double Length(Outline outline) => outline.Contours.Sum(contour =>
    {
        double sum = 0;
        Vector2D at = contour.Start;
        foreach (Segment step in contour.Segments)
        {
            Vector2D end = Outline.EndOf(at, step);
            sum += step is Segment.Arc arc ? (at - arc.Centre).Length * Math.Abs(arc.Sweep) : (end - at).Length;
            at = end;
        }

        return sum + (contour.Closed ? (contour.Start - at).Length : 0);
    });

    private static Vector2D Point(JsonElement point) => new(point.GetProperty("x").GetDouble(), point.GetProperty("y").GetDouble());

    private static Template One(TemplateKind kind) => TemplateSet.Of(Example.PlanOf(Example.Open), MeasureStyle.Millimetres, new HashSet<TemplateKind> { kind }).Single();
}
