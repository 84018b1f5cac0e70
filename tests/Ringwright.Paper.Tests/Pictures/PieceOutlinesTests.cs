using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Pictures.Pieces;
using Ringwright.Paper.Tests.JobSheets;

namespace Ringwright.Paper.Tests.Pictures;

public class PieceOutlinesTests
{
    private static readonly Plan Stack = AnyPiece.Stack(3, 80, 12, LengthUnit.Millimetre);

    [Fact]
    public void Laid_flat_the_pieces_cover_each_ring_once()
    {
        FlatOutlines flat = PieceOutlines.Flat(Stack);
        double covered = flat.Woods.SelectMany(w => w.Outlines).Sum(o => Area(o));
        Assert.Equal(flat.Rows.Sum(r => 2 * r.Half * (r.High - r.Low)), covered, 1e-6);
        Assert.Equal(Math.PI * 80 * 12, 2 * flat.Rows[0].Half * (flat.Rows[0].High - flat.Rows[0].Low), 1e-6);
    }

    [Fact]
    public void The_middle_of_every_piece_is_found_where_it_is_drawn()
    {
        FlatOutlines flat = PieceOutlines.Flat(Stack);
        foreach (FlatRow row in flat.Rows)
            for (int k = 0; k < row.Segments.Length; k++)
            {
                (double from, double to) = row.Segments[k];
                double middle = (from + to) / 2, x = (middle - (2 * Math.PI * Math.Round(middle / (2 * Math.PI)))) / Math.PI * row.Half;
                Assert.Equal((row.Ring, k), flat.At(new Vector2D(x, (row.Low + row.High) / 2)));
            }

        Assert.Null(flat.At(new Vector2D(0, flat.Rows[^1].High + 1)));
        Assert.Null(flat.At(new Vector2D(flat.Rows[0].Half + 1, 1)));
    }

    // The section's area times the way of its centroid is the volume (Pappus' theorem); the form integrates it in closed form.
    [Fact]
    public void The_cut_half_turned_around_the_axis_is_the_turned_piece()
    {
        Plan bowl = AnyPiece.Of(PieceKind.Bowl, 180, 80, 5, 24, 2, LengthUnit.Millimetre, false)!;
        double turned = PieceOutlines.Side(bowl).Cut.Sum(o => 2 * Math.PI * Moment(o));
        Assert.Equal(1, turned / bowl.Form!.Volume, 0.01);
        Assert.Equal(bowl.Rings.Length, PieceOutlines.Side(bowl).Blanks.Length);
    }

    // A shoulder has two levels at one height, where a strip's side may cross a joint too.
    [Theory]
    [InlineData(0)]
    [InlineData(40)]
    [InlineData(-55)]
    public void From_the_side_leaning_strips_cover_the_left_half_once_also_over_a_shoulder(double recut)
    {
        LaminatedRing band = new() { Name = "Band", Segments = 12, Thickness = AnyPlan.Mm(40), Strips = [new("maple", AnyPlan.Mm(6)), new("walnut", AnyPlan.Mm(3))], Recut = Angle.FromDegrees(recut) };
        (double Diameter, double Height)[] corners = [(150, 0), (150, 18), (110, 18), (120, 30), (90, 40)];
        Shape shape = new() { Outer = [.. corners.Select(c => new ShapePoint { Diameter = AnyPlan.Mm(c.Diameter), Height = AnyPlan.Mm(c.Height), Sharp = true })], Inside = new Bore { Diameter = AnyPlan.Mm(50) } };
        SideOutlines side = PieceOutlines.Side(Planner.Plan(new() { Name = "Stepped", Rings = [band], Shape = shape }, Shop.Starting));
        double half = corners.Zip(corners.Skip(1), (low, high) => (low.Diameter + high.Diameter) / 4 * (high.Height - low.Height)).Sum();
        Assert.Equal(half, side.Woods.SelectMany(w => w.Outlines).Sum(o => Area(o)), 1e-4 * half);
    }

    private static double Area(IReadOnlyList<Vector2D> outline) => Math.Abs(Pairs(outline).Sum(p => p.A.Cross(p.B)) / 2);

    private static double Moment(IReadOnlyList<Vector2D> outline) => Math.Abs(Pairs(outline).Sum(p => (p.A.X + p.B.X) * p.A.Cross(p.B)) / 6);

    private static IEnumerable<(Vector2D A, Vector2D B)> Pairs(IReadOnlyList<Vector2D> outline) => outline.Select((a, i) => (a, outline[(i + 1) % outline.Count]));
}
