using CsCheck;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Pictures.Pieces;
using Ringwright.Paper.Tests.JobSheets;

namespace Ringwright.Paper.Tests.Pictures;

public class PiecePictureTests
{
    private static readonly Room Wide = new(180, 240);
    private static readonly Plan Bowl = AnyPiece.Of(PieceKind.Bowl, 180, 80, 5, 24, 2, LengthUnit.Millimetre, false)!;
    private static readonly Plan Layered = Planner.Plan(
        new()
        {
            Name = "Layered",
            Rings =
            [
                new SolidLayer { Name = "Base", Diameter = AnyPlan.Mm(80), Thickness = AnyPlan.Mm(20), Wood = "oak" },
                new SegmentRing { Name = "Wall", Segments = 8, Diameter = AnyPlan.Mm(60), InnerDiameter = AnyPlan.Mm(40), Thickness = AnyPlan.Mm(30), Woods = ["maple"] },
            ],
        },
        Shop.Starting);

    [Fact]
    public void Any_piece_keeps_its_texts_apart_and_inside_its_room() =>
        AnyPiece.Plans.Sample(
            plan =>
            {
                if (plan is null) return;
                foreach (Drawing picture in new[] { PiecePicture.Draw(plan, MeasureStyle.For(plan.Piece.Units), Wide).Drawing, UnrolledPicture.Draw(plan, MeasureStyle.For(plan.Piece.Units), Wide).Drawing })
                {
                    Assert.True(picture.Width <= Wide.Width && picture.Height <= Wide.Height);
                    LayoutChecks.AssertClean(picture, new(0, 0, picture.Width, picture.Height));
                }
            },
            iter: 40);

    [Fact]
    public void Enough_of_the_random_pieces_can_be_made()
    {
        int made = 0;
        AnyPiece.Plans.Sample(plan => { if (plan is not null) Interlocked.Increment(ref made); }, iter: 40);
        Assert.InRange(made, 15, 40);
    }

    [Fact]
    public void The_sizes_around_the_piece_are_those_of_its_shape()
    {
        string[] texts = Texts(PiecePicture.Draw(Bowl, MeasureStyle.Millimetres, Wide).Drawing);
        Assert.Contains("80 mm", texts);
        Assert.Contains("rim, widest Ø 180 mm", texts);
        Assert.Contains("foot Ø 77.4 mm", texts);
        Assert.Contains("thinnest", texts);
        Assert.Contains(Caliper(Bowl.Form!.Thinnest()!.Value.Thickness), texts);
        Assert.All(Bowl.Rings, ring => Assert.Contains(ring.Ring.Name, texts));
    }

    [Fact]
    public void A_piece_without_a_shape_has_its_rings_sizes()
    {
        string[] texts = Texts(PiecePicture.Draw(Layered, MeasureStyle.Millimetres, Wide).Drawing);
        Assert.Contains("foot, widest Ø 80 mm", texts);
        Assert.Contains("rim Ø 60 mm", texts);
        Assert.Contains("inside Ø 40 mm", texts);
        Assert.Contains("50 mm", texts);
        Assert.DoesNotContain("thinnest", texts);
    }

    // Eight segments around 60 mm: joints 22.5° and 67.5° beside the line of sight, r sin 22.5° and r sin 67.5° left of the axis.
    [Fact]
    public void Joints_stand_where_they_are_seen_from_outside()
    {
        ScaledPicture picture = PiecePicture.Draw(Layered, MeasureStyle.Millimetres, Wide);
        Assert.Equal(1, picture.Scale.Ratio);
        double axis = Marks(picture.Drawing).OfType<Mark.Stroke>().Single(s => ReferenceEquals(s.Pen, Pens.Centre)).Outline.Contours[0].Start.X;
        double[] seen = [.. Upright(Lines(picture.Drawing), 30).Select(x => axis - x).Order()];
        Assert.Equal(2, seen.Length);
        Assert.Equal(30 * Math.Sin(Math.PI / 8), seen[0], 1e-9);
        Assert.Equal(30 * Math.Sin(3 * Math.PI / 8), seen[1], 1e-9);
    }

    [Fact]
    public void Small_segments_are_shaded_and_their_joints_left_out()
    {
        Plan fine = AnyPiece.Of(PieceKind.Vase, 120, 220, 40, 240, 2, LengthUnit.Millimetre, false)!;
        ScaledPicture picture = PiecePicture.Draw(fine, MeasureStyle.Millimetres, new(150, 130));
        Assert.True(PiecePicture.IsShaded(fine, picture.Scale.Ratio));
        Assert.False(PiecePicture.IsShaded(Bowl, 1));
        Assert.True(Marks(picture.Drawing).Count() < 700);
    }

    [Fact]
    public void Thousands_of_segments_laid_flat_stay_few_marks_and_cover_their_surface()
    {
        Plan fine = AnyPiece.Of(PieceKind.Vase, 120, 220, 40, 240, 2, LengthUnit.Millimetre, false)!;
        Assert.True(fine.Rings.Sum(r => r.Layout.Length) > 5000);
        ScaledPicture picture = UnrolledPicture.Draw(fine, MeasureStyle.Millimetres, new(250, 180), coloured: true);
        Assert.True(Marks(picture.Drawing).Count() < 200);
        // Pappus: the outside's area is the mean circumference times the length of the outline; here the outline by fine chords.
        double area = 0;
        for (double z = 0; z < 220; z += 0.01)
        {
            double low = fine.Form!.Outer(z), high = fine.Form.Outer(Math.Min(220, z + 0.01), Core.Profiles.Side.Below);
            area += Math.PI * (low + high) * Math.Sqrt(0.0001 + ((high - low) * (high - low)));
        }

        double drawn = Marks(picture.Drawing).OfType<Mark.Fill>().Where(f => f.Outline.Contours.Count > 100).SelectMany(f => f.Outline.Flattened()).Sum(Area);
        Assert.Equal(1, drawn / (area * picture.Scale.Ratio * picture.Scale.Ratio), 1e-3);
    }

    // The flat picture begins at half a turn: in the middle of a segment of twelve, or at a joint where the ring is turned by half of one.
    [Theory]
    [InlineData(0, 26)]
    [InlineData(0.5, 25)]
    public void A_shifted_ring_is_cut_elsewhere_where_the_flat_picture_begins(double shift, int pieces)
    {
        Ring ring = Example.Open with { Segments = 12, Woods = ["maple"] };
        Plan plan = Planner.Plan(new() { Name = "Two", Rings = [ring with { Name = "Low", Shift = shift }, ring with { Name = "High" }] }, Shop.Starting);
        ScaledPicture picture = UnrolledPicture.Draw(plan, MeasureStyle.Millimetres, Wide, coloured: true);
        Assert.Equal(pieces, Marks(picture.Drawing).OfType<Mark.Fill>().Max(f => f.Outline.Contours.Count));
    }

    private static string Caliper(double mm) => MeasureStyle.Millimetres.Length(mm);

    // Strips of a motif band that lean across their segment are cut off at its joints: together they are the strip of wall, laid flat.
    [Theory]
    [InlineData(0, false)]
    [InlineData(35, true)]
    [InlineData(-50, false)]
    public void The_strips_of_a_band_fill_it_without_overlap(double recut, bool mirrored)
    {
        LaminatedRing band = new()
        {
            Name = "Band",
            Segments = 16,
            Diameter = AnyPlan.Mm(160),
            InnerDiameter = AnyPlan.Mm(124),
            Thickness = AnyPlan.Mm(28),
            Strips = [new("maple", AnyPlan.Mm(6)), new("walnut", AnyPlan.Mm(3))],
            Recut = Angle.FromDegrees(recut),
            Mirrored = mirrored,
        };
        Plan plan = Planner.Plan(new() { Name = "Band", Rings = [band] }, Shop.Starting);
        ScaledPicture picture = UnrolledPicture.Draw(plan, MeasureStyle.Millimetres, Wide, coloured: true);
        double drawn = Marks(picture.Drawing).OfType<Mark.Fill>().Where(f => f.Outline.Contours.Count >= 16).SelectMany(f => f.Outline.Flattened()).Sum(Area);
        Assert.Equal(1, drawn / (Math.PI * 160 * 28 * picture.Scale.Ratio * picture.Scale.Ratio), 1e-4);
    }

    // The staves lean by 5°: as glued they are narrower below by the height times the tangent, on both radii.
    [Fact]
    public void Leaning_staves_are_dashed_as_they_lean()
    {
        StaveRing staves = new() { Name = "Body", Segments = 12, Diameter = AnyPlan.Mm(104), InnerDiameter = AnyPlan.Mm(66), Thickness = AnyPlan.Mm(100), Lean = Angle.FromDegrees(5), Woods = ["ash"] };
        Plan plan = Planner.Plan(new() { Name = "Mug", Rings = [new SolidLayer { Name = "Base", Diameter = AnyPlan.Mm(88), Thickness = AnyPlan.Mm(10), Wood = "oak" }, staves] }, Shop.Starting);
        ScaledPicture picture = PiecePicture.Draw(plan, MeasureStyle.Millimetres, Wide);
        Vector2D[] blank = [.. Marks(picture.Drawing).OfType<Mark.Stroke>().Where(s => ReferenceEquals(s.Pen, Pens.Hidden)).SelectMany(s => s.Outline.Flattened()).Last()];
        double step = 100 * Math.Tan(Math.PI / 36) * picture.Scale.Ratio;
        Assert.Equal(step, blank[2].X - blank[1].X, 1e-6);
        Assert.Equal(step, blank[3].X - blank[0].X, 1e-6);
    }

    // Least squares, checked by hand: 0, 1 and 2 around their mean; 9 has room.
    [Fact]
    public void Names_beside_the_rings_move_as_little_as_they_must()
    {
        Assert.Equal([-1, 1, 3, 9], RingColumn.Apart([0, 1, 2, 9], 2));
        Assert.Equal([0, 5], RingColumn.Apart([0, 5], 2));
    }

    [Theory]
    [InlineData(60, 1)]
    [InlineData(59, 5)]
    [InlineData(12, 5)]
    [InlineData(11, 10)]
    [InlineData(5, 60)]
    public void Rings_of_one_height_share_a_line_where_there_are_too_many(int most, int longest)
    {
        Ring ring = Example.Open;
        Assert.Equal(longest, RingGroup.Of([.. Enumerable.Repeat(ring, 60)], most).Max(g => g.Rings.Length));
    }

    private static string[] Texts(Drawing drawing) => [.. drawing.TextBoxes.Select(t => t.Text)];

    private static IEnumerable<Mark> Marks(Drawing drawing) => drawing.Marks.SelectMany(m => m is Mark.Placed placed ? Marks(placed.Child) : [m]);

    private static IEnumerable<IReadOnlyList<Vector2D>> Lines(Drawing drawing) => Marks(drawing).OfType<Mark.Stroke>().SelectMany(s => s.Outline.Flattened());

    private static IEnumerable<double> Upright(IEnumerable<IReadOnlyList<Vector2D>> lines, double length) =>
        lines.Where(l => l.Count == 2 && Math.Abs(l[0].X - l[1].X) < 1e-9 && Math.Abs(Math.Abs(l[0].Y - l[1].Y) - length) < 1e-6).Select(l => l[0].X);

    private static double Area(IReadOnlyList<Vector2D> p) => Math.Abs(Enumerable.Range(0, p.Count).Sum(i => p[i].Cross(p[(i + 1) % p.Count]))) / 2;
}
