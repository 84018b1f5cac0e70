using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;
using UglyToad.PdfPig;

namespace Ringwright.Paper.Tests.JobSheets;

/// <summary>The true-scale sheet read back from its PDF by an independent reader and measured against the plan.</summary>
public class TrueScaleTests
{
    private const double Tolerance = 0.01; // mm, finer than any printer

    [Fact]
    public void Wedges_and_disc_have_the_sizes_of_the_plan()
    {
        RingPlan ring = Example.PlanOf(Example.Disc).Rings[0];
        ReadLine[] lines = Outlines(Example.PlanOf(Example.Disc));
        AssertWedge(ring.Strip.Wedge, lines[..4]);
        AssertWedge(ring.Glued, lines[4..7]); // comes to a point
        ReadLine[] disc = lines[7..];
        Assert.Equal(24 * 2, disc.Length); // flats and joints
        // 24 flats: the disc is as wide between its right and left flat as between its upper and lower one.
        Assert.Equal(ring["across-flats"].Value, Across(disc, p => p.X), Tolerance);
        Assert.Equal(ring["across-flats"].Value, Across(disc, p => p.Y), Tolerance);
        Assert.Equal(24, disc.Count(l => Math.Abs(l.Length - ring["rim-edge"].Value) < Tolerance));
    }

    [Theory]
    [InlineData(90)]   // whole
    [InlineData(140)]  // part of it
    [InlineData(300)]
    [InlineData(600)]
    public void Rings_of_any_size_show_true_edges(double diameter)
    {
        SegmentRing ring = Example.Open with { Diameter = AnyPlan.Mm(diameter), InnerDiameter = AnyPlan.Mm(0.8 * diameter) };
        Plan plan = Example.PlanOf(ring);
        ReadLine[] lines = Outlines(plan);
        AssertWedge(plan.Rings[0].Strip.Wedge, lines[..4]);
        double[] rims = [.. lines.Select(l => l.Length).Where(l => Math.Abs(l - plan.Rings[0].Glued.RimEdge) < Tolerance)];
        Assert.NotEmpty(rims);
    }

    [Fact]
    public void A_wedge_larger_than_the_paper_shows_the_end_of_its_rim_at_its_true_angle()
    {
        Plan plan = Example.PlanOf(Example.Open with { Segments = 4, Diameter = AnyPlan.Mm(600), InnerDiameter = AnyPlan.Mm(500) });
        ReadLine[] lines = Outlines(plan);
        ReadLine face = lines.Single(l => !l.IsLevel && !l.IsUpright);
        Vector2D along = face.To - face.From;
        Assert.Equal(plan.Rings[0]["mitre"].Value, Math.Atan(Math.Abs(along.X / along.Y)), 1e-4);
    }

    [Fact]
    public void The_correction_stretches_the_outlines()
    {
        Plan plan = Example.PlanOf(Example.Disc);
        ReadLine[] plain = Outlines(plan), stretched = Outlines(plan, new PrintCorrection(1.02, 0.98));
        Assert.Equal(1.02 * Across(plain[7..], p => p.X), Across(stretched[7..], p => p.X), Tolerance);
        Assert.Equal(0.98 * Across(plain[7..], p => p.Y), Across(stretched[7..], p => p.Y), Tolerance);
    }

    // Flats and joint faces from the regular polygon (Machinery's Handbook, table of regular polygons), not from the drawing.
    private static void AssertWedge(WedgeGeometry wedge, ReadLine[] edges)
    {
        double a = Math.PI / wedge.Segments, face = (wedge.OuterApothem - wedge.InnerApothem) / Math.Cos(a);
        double[] expected = [2 * wedge.OuterApothem * Math.Tan(a), face, face];
        if (edges.Length == 4) expected = [.. expected, 2 * wedge.InnerApothem * Math.Tan(a)];
        Assert.Equal(expected.Order(), edges.Select(e => e.Length).Order(), (x, y) => Math.Abs(x - y) < Tolerance);
    }

    private static double Across(ReadLine[] lines, Func<Vector2D, double> axis)
    {
        double[] ends = [.. lines.SelectMany(l => new[] { axis(l.From), axis(l.To) })];
        return ends.Max() - ends.Min();
    }

    private static ReadLine[] Outlines(Plan plan, PrintCorrection? correction = null)
    {
        Packet packet = JobSheet.Packet(plan, MeasureStyle.Millimetres, PaperSize.A4, new DateOnly(2026, 3, 14), correction);
        int page = packet.Sheets.ToList().FindIndex(s => s.Name.EndsWith("true scale", StringComparison.Ordinal));
        using PdfDocument pdf = PdfReader.Document(packet.Pages());
        return [.. PdfReader.Lines(pdf.GetPage(page + 1)).Where(l => Math.Abs(l.Width - PenWidth) < 0.01)];
    }

    // Widths are read in the units of the page's own scale.
    private static double PenWidth => TrueScalePicture.Line.Width;
}
