using Ringwright.Core;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Profiles;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;
using Ringwright.Paper.Templates;
using Ringwright.Paper.Tests.JobSheets;
using Ringwright.Paper.Tests.Pictures;
using UglyToad.PdfPig;

namespace Ringwright.Paper.Tests.Templates;

/// <summary>Templates read back from their PDF by an independent reader and measured against closed formulas.</summary>
public class TemplateTests
{
    private const double Tolerance = 0.01; // mm, finer than any printer
    private static readonly PacketOptions A4 = new(MeasureStyle.Millimetres, PaperSize.A4, new(2026, 3, 14));

    [Fact]
    public void The_wedge_has_its_sizes_as_glued()
    {
        // 16 segments: flats 2 · apothem · tan(π/16), faces depth / cos(π/16) (Machinery's Handbook, table of regular polygons).
        RingPlan ring = Example.PlanOf(Example.Open).Rings[0];
        ReadLine[] lines = Solid(Pages(Example.PlanOf(Example.Open), A4, TemplateKind.Wedge).Single());
        double a = Math.PI / 16, face = ring.Glued.Depth / Math.Cos(a);
        double[] expected = [2 * ring.Glued.InnerApothem * Math.Tan(a), 2 * ring.Glued.OuterApothem * Math.Tan(a), face, face];
        Same(expected, lines.Select(l => l.Length));
    }

    [Fact]
    public void A_disc_that_fits_the_paper_has_all_flats_and_joints()
    {
        Plan plan = Example.PlanOf(Example.Open with { Diameter = AnyPlan.Mm(120), InnerDiameter = AnyPlan.Mm(90) });
        ReadLine[] lines = Solid(Pages(plan, A4, TemplateKind.Disc).Single());
        double rim = 2 * plan.Rings[0].Glued.OuterApothem * Math.Tan(Math.PI / 16);
        Assert.Equal(16, lines.Count(l => Math.Abs(l.Length - rim) < Tolerance));
        Assert.Equal(16, lines.Count(l => Math.Abs(l.Length - plan.Rings[0].Glued.FaceLength) < Tolerance));
        // With 16 flats the first segment's middle lies on the level axis: the disc is as wide as twice its apothem.
        Assert.Equal(2 * plan.Rings[0].Glued.OuterApothem, Span(lines, p => p.X), Tolerance);
    }

    [Fact]
    public void A_quarter_has_a_quarter_of_the_segments()
    {
        ReadLine[] lines = Solid(Pages(Example.PlanOf(Example.Open), A4, TemplateKind.Quarter).Single());
        RingPlan ring = Example.PlanOf(Example.Open).Rings[0];
        Assert.Equal(4, lines.Count(l => Math.Abs(l.Length - ring.Glued.RimEdge) < Tolerance));
        Assert.Equal(5, lines.Count(l => Math.Abs(l.Length - ring.Glued.FaceLength) < Tolerance));
    }

    [Theory]
    [InlineData(300, 1, 1)]
    [InlineData(300, 1.004, 0.997)]
    [InlineData(700, 1, 1)]
    public void A_disc_larger_than_the_paper_goes_on_from_page_to_page(double diameter, double across, double down)
    {
        Plan plan = Example.PlanOf(Example.Open with { Diameter = AnyPlan.Mm(diameter), InnerDiameter = AnyPlan.Mm(0.8 * diameter) });
        PacketOptions options = A4 with { Correction = new(across, down) };
        Template template = TemplateSet.Of(plan, options.Style, new HashSet<TemplateKind> { TemplateKind.Disc }).Single();
        Vector2D[] corners = [.. Assembled(plan, template, options).SelectMany(l => new[] { l.From, l.To })];
        // All corners of the polygon lie on one circle around one centre, the apothem over the cosine away, wherever their page is.
        double reach = plan.Rings[0].Glued.OuterCorner;
        Vector2D centre = new((corners.Min(c => c.X) + corners.Max(c => c.X)) / 2, (corners.Min(c => c.Y) + corners.Max(c => c.Y)) / 2);
        Assert.Equal(2 * plan.Rings[0].Glued.OuterApothem, corners.Max(c => c.X) - corners.Min(c => c.X), Tolerance);
        Vector2D[] outer = [.. corners.Where(c => Math.Abs((c - centre).Length - reach) < Tolerance)];
        int[] places = [.. outer.Select(c => (int)Math.Round((Math.Atan2(c.Y - centre.Y, c.X - centre.X) / (2 * Math.PI / 16)) - 0.5)).Select(n => (n + 32) % 16).Distinct().Order()];
        Assert.Equal(Enumerable.Range(0, 16), places);
    }

    [Fact]
    public void Pages_without_a_line_are_left_out_and_the_map_shows_the_others()
    {
        Plan plan = Example.PlanOf(Example.Open with { Diameter = AnyPlan.Mm(900), InnerDiameter = AnyPlan.Mm(850) });
        Template template = TemplateSet.Of(plan, A4.Style, new HashSet<TemplateKind> { TemplateKind.Quarter }).Single();
        TilePlan tiles = TilePlan.Of(template.Drawing, new(150, 180));
        Assert.True(tiles.Tiles.Count < tiles.Columns * tiles.Rows);
        Assert.Equal(tiles.Tiles.Count, TilePicture.Map(tiles, tiles.Tiles[0]).Marks.Count(m => m is Mark.Stroke));
        foreach (Tile tile in tiles.Tiles) Assert.Contains(TilePicture.Part(template.Drawing, tiles, tile).Marks, m => m is Mark.Placed);
    }

    [Fact]
    public void Both_pages_of_a_seam_have_the_same_crosses()
    {
        TilePlan tiles = TilePlan.Of(new Drawing(400, 500).Stroke(Outline.Rectangle(new(0, 0, 400, 500)), Pens.Fine).Line(new(0, 0), new(400, 500), Pens.Fine), new(150, 180));
        foreach (Tile tile in tiles.Tiles)
            foreach ((Vector2D at, string beyond) in tiles.Crosses(tile))
            {
                Tile other = tiles.Tiles.Single(t => t.Name == beyond);
                Assert.Contains(tiles.Crosses(other), c => (c.At - at).Length < 1e-9 && c.Beyond == tile.Name);
                Assert.True(tile.Box.Contains(new(at.X, at.Y, 0, 0)) && other.Box.Contains(new(at.X, at.Y, 0, 0)));
            }
    }

    [Theory]
    [InlineData(PieceKind.Bowl, 180, 80)]
    [InlineData(PieceKind.Vase, 150, 330)]
    [InlineData(PieceKind.PenBarrel, 13, 57)]
    public void The_profile_cards_follow_the_curve(PieceKind kind, double diameter, double height)
    {
        Plan plan = AnyPiece.Of(kind, diameter, height, 6, 12, 2, LengthUnit.Millimetre, false)!;
        TurnedForm form = plan.Form!;
        Template card = TemplateSet.Of(plan, A4.Style, new HashSet<TemplateKind> { TemplateKind.Outside }).Single();
        Vector2D[] points = [.. Assembled(plan, card, A4).Where(l => l.Length > 1e-6).SelectMany(l => new[] { l.From, l.To }).Distinct()];
        // The card stands on its bottom edge; its back is 25 mm behind the widest place.
        double foot = points.Min(p => p.Y), back = points.Max(p => p.X), axis = back - form.Extents(form.Bottom, form.Top).MaxOuter - 25;
        int on = 0;
        foreach (Vector2D p in points)
        {
            double z = p.Y - foot + form.Bottom;
            if (z < form.Bottom + 0.1 || z > form.Top - 0.1 || p.X > back - 9) continue;
            double off = Math.Min(Math.Abs(form.Outer(z) - (p.X - axis)), Math.Abs(form.Outer(z, Side.Below) - (p.X - axis)));
            // A level edge between two steps has no point of its own; every other point lies on the curve.
            Assert.True(off < Tolerance || form.Corners.Any(c => Math.Abs(c - z) < Tolerance), $"{off} mm off at height {z}");
            on++;
        }

        Assert.True(on > 3);
    }

    [Fact]
    public void The_inside_card_is_as_deep_as_the_hollow()
    {
        Plan plan = AnyPiece.Of(PieceKind.Bowl, 180, 80, 6, 12, 2, LengthUnit.Millimetre, false)!;
        double floor = ((Wall)plan.Piece.Shape!.Inside!).Floor!.Value.Millimetres;
        ReadLine[] lines = Solid(Pages(plan, A4, TemplateKind.Inside).Single());
        Assert.Equal(plan.Form!.Top + 25 - floor, Span(lines, p => p.Y), Tolerance);
        Assert.Contains(lines, l => l.IsLevel && Math.Abs(l.Length - plan.Form.Inner(plan.Form.Top)) < Tolerance);
    }

    [Fact]
    public void In_the_lap_guide_the_wedge_stands_at_its_angle_to_the_edge()
    {
        Plan plan = Example.PlanOf(Example.Open);
        Template guide = TemplateSet.Of(plan, A4.Style, new HashSet<TemplateKind> { TemplateKind.Lap }).Single();
        ReadLine[] lines = Solid(Pages(plan, A4, TemplateKind.Lap).Single());
        // The face that rests in the notch: its length less the two holes in its corners.
        double face = plan.Rings[0].Glued.FaceLength;
        ReadLine rest = lines.Single(l => !l.IsLevel && Math.Abs(l.Length - (face - 1.5)) < 2 && Math.Abs(Slope(l) - plan.Rings[0].Glued.WedgeAngle) < 1e-4);
        Assert.InRange(rest.Length, face - 3.01, face + 0.01);
        Assert.Contains("lap guide", guide.Name, StringComparison.Ordinal);
        // The opening in the edge is as wide as the face.
        ReadLine[] foot = [.. lines.Where(l => l.IsLevel && Math.Abs(l.From.Y - lines.Min(x => x.From.Y)) < 0.001)];
        Assert.Equal(face, Span(foot, p => p.X) - foot.Sum(l => l.Length), Tolerance);
    }

    [Fact]
    public void A_ring_stands_over_the_one_below_turned_by_its_shift()
    {
        Plan plan = Planner.Plan(new() { Name = "Two", Rings = [Example.Open with { Name = "Low" }, Example.Open with { Name = "High", Shift = 0.5 }] }, Shop.Starting with { Boards = new() { Length = AnyPlan.Mm(3000) } });
        Template[] stack = [.. TemplateSet.Of(plan, A4.Style, new HashSet<TemplateKind> { TemplateKind.Stack })];
        Assert.Equal(["Low: stacking circles", "High: stacking circles"], stack.Select(t => t.Name));
        double Joint(Drawing drawing, string layer) => Strokes(drawing, layer).Select(o => o.Contours[0]).Where(c => c.Segments is [Segment.Line] && Math.Abs(Outline.EndOf(c.Start, c.Segments[0]).Length - c.Start.Length) > 5)
            .Select(c => Turn(Math.Atan2(-c.Start.Y, c.Start.X))).Min();
        double step = 2 * Math.PI / 16;
        Assert.Equal(step / 2, Joint(stack[1].Drawing, "reference"), 1e-9);
        Assert.Equal(0, Math.IEEERemainder(Joint(stack[1].Drawing, "lines"), step), 1e-9);

        static double Turn(double angle) => ((angle % (2 * Math.PI)) + (2 * Math.PI) + 1e-9) % (2 * Math.PI) - 1e-9;
    }

    [Fact]
    public void Longest_names_and_any_unit_lay_out_cleanly()
    {
        foreach (LengthUnit unit in Enum.GetValues<LengthUnit>())
        {
            Plan plan = AnyPiece.Of(PieceKind.Vase, 210, 180, 4, 12, 3, unit, longNames: true)!;
            PacketOptions options = new(MeasureStyle.For(unit), unit == LengthUnit.Inch ? PaperSize.Letter : PaperSize.A4, new(2026, 3, 14)) { Duplex = true };
            Packet packet = TemplateSheets.Packet(plan, TemplateSet.Of(plan, options.Style), options);
            foreach ((Drawing page, Sheet sheet) in packet.Pages().Zip(packet.Sheets))
            {
                LayoutChecks.AssertInside(page, sheet.Frame);
                LayoutChecks.AssertClean(page, sheet.Frame);
            }
        }
    }

    [Theory]
    [InlineData("wedges")]
    [InlineData("")]
    [InlineData("wedge,4")]
    public void Kinds_that_are_not_known_are_refused(string kinds) => Assert.Throws<BadInputException>(() => Template.Read(kinds));

    private static double Slope(ReadLine line) => Math.Abs(Math.Atan((line.To.Y - line.From.Y) / (line.To.X - line.From.X)));

    private static void Same(IEnumerable<double> expected, IEnumerable<double> actual) =>
        Assert.Equal(expected.Order(), actual.Order(), (x, y) => Math.Abs(x - y) < Tolerance);

    private static double Span(IEnumerable<ReadLine> lines, Func<Vector2D, double> axis)
    {
        double[] ends = [.. lines.SelectMany(l => new[] { axis(l.From), axis(l.To) })];
        return ends.Max() - ends.Min();
    }

    private static IEnumerable<Outline> Strokes(Drawing drawing, string layer) => drawing.Marks.OfType<Mark.Placed>().Where(p => p.Layer == layer).SelectMany(p => p.Child.Marks).OfType<Mark.Stroke>().Select(s => s.Outline);

    // The lines of true-scale thickness on each page.
    private static IEnumerable<IReadOnlyList<ReadLine>> Pages(Plan plan, PacketOptions options, TemplateKind kind)
    {
        Packet packet = TemplateSheets.Packet(plan, TemplateSet.Of(plan, options.Style, new HashSet<TemplateKind> { kind }), options);
        using PdfDocument pdf = PdfReader.Document(packet.Pages());
        for (int p = 1; p <= pdf.NumberOfPages; p++) yield return PdfReader.Lines(pdf.GetPage(p));
    }

    private static ReadLine[] Solid(IReadOnlyList<ReadLine> lines) => [.. lines.Where(l => Math.Abs(l.Width - TrueScalePicture.Line.Width) < 0.01)];

    // The pages laid on each other as a person does: every page is moved until its crosses meet those of the first. Corrected for the printer.
    private static List<ReadLine> Assembled(Plan plan, Template template, PacketOptions options)
    {
        Packet packet = TemplateSheets.Packet(plan, [template], options);
        using PdfDocument pdf = PdfReader.Document(packet.Pages());
        List<ReadLine> all = [];
        Dictionary<string, Vector2D> at = []; // where the middle of a page's drawing lies in the whole
        List<(string Name, IReadOnlyList<ReadLine> Lines, Dictionary<string, Vector2D[]> Crosses)> pages = [];
        for (int p = 1; p <= pdf.NumberOfPages; p++)
        {
            string name = packet.Sheets[p - 1].Name is var title && title.Contains(", ", StringComparison.Ordinal) ? title[(title.LastIndexOf(", ", StringComparison.Ordinal) + 2)..] : "A1";
            Vector2D True(Vector2D v) => new(v.X / options.Correction.Across, v.Y / options.Correction.Down);
            ReadLine[] lines = [.. PdfReader.Lines(pdf.GetPage(p)).Select(l => new ReadLine(True(l.From), True(l.To), l.Width))];
            pages.Add((name, lines, CrossesOf(pdf.GetPage(p), lines, True)));
        }

        at[pages[0].Name] = default;
        while (at.Count < pages.Count)
        {
            (string Name, IReadOnlyList<ReadLine> Lines, Dictionary<string, Vector2D[]> Crosses) next = pages.First(p => !at.ContainsKey(p.Name) && p.Crosses.Keys.Any(at.ContainsKey));
            string known = next.Crosses.Keys.First(at.ContainsKey);
            Vector2D[] here = next.Crosses[known], there = pages.Single(p => p.Name == known).Crosses[next.Name];
            Assert.Equal((here[1] - here[0]).Length, (there[1] - there[0]).Length, Tolerance);
            at[next.Name] = at[known] + there[0] - here[0];
        }

        foreach ((string name, IReadOnlyList<ReadLine> lines, _) in pages)
            all.AddRange(Solid(lines).Select(l => l with { From = l.From + at[name], To = l.To + at[name] }));
        return all;
    }

    // A cross is where two lines of 8 mm halve each other; the word "to B1" beside it says which page it belongs to.
    private static Dictionary<string, Vector2D[]> CrossesOf(UglyToad.PdfPig.Content.Page page, ReadLine[] lines, Func<Vector2D, Vector2D> corrected)
    {
        ReadLine[] arms = [.. lines.Where(l => Math.Abs(l.Length - 8) < 0.01 && Math.Abs(l.Width - Pens.Medium.Width) < 0.02)];
        Vector2D[] middles = [.. arms.Where(l => l.IsLevel).Select(l => 0.5 * (l.From + l.To)).Where(m => arms.Any(u => u.IsUpright && (0.5 * (u.From + u.To) - m).Length < 0.01))];
        var names = page.GetWords().Where(w => w.Text.Length >= 2 && char.IsAsciiLetterUpper(w.Text[0]) && char.IsAsciiDigit(w.Text[^1])).Select(w => (w.Text, At: corrected(new(w.BoundingBox.Left * 25.4 / 72, w.BoundingBox.Top * 25.4 / 72)))).ToArray();
        return middles.GroupBy(m => names.MinBy(n => (n.At - m).Length).Text).ToDictionary(g => g.Key, g => g.OrderBy(m => m.X + (3 * m.Y)).ToArray());
    }
}
