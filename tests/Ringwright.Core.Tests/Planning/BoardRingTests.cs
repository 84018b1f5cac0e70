using System.Collections.Immutable;
using CsCheck;
using NetTopologySuite.Geometries;
using Ringwright.Core.Fitting;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Tests.Planning;

public class BoardRingTests
{
    private static readonly AnyBowl Bowl = AnyBowl.Of(20, 40, [16, 15, 16], [10, 10, 10], 1.5, 1.2, 12, dome: false);

    private static Plan? PlanOf(AnyBowl bowl)
    {
        try
        {
            return Planner.Plan(bowl.Piece, bowl.Shop);
        }
        catch (BadInputException)
        {
            return null;
        }
    }

    private static BoardGroupPlan? BoardOf(AnyBowl bowl) => PlanOf(bowl)?.Rings.First(r => r.Board is not null).Board;

    [Fact]
    public void Every_formula_gives_its_figure_and_none_is_not_a_number() =>
        AnyBowl.Any.Sample(bowl =>
        {
            foreach (RingPlan ring in PlanOf(bowl)?.Rings ?? []) FormulaReader.AssertAll(ring);
        });

    // NetTopologySuite measures the sections: neighbours stand exactly a kerf apart, and nothing of the board is lost or counted twice.
    [Fact]
    public void Rings_slots_and_middle_fill_the_board_and_neighbours_stand_a_kerf_apart() =>
        AnyBowl.Any.Sample(bowl =>
        {
            if (BoardOf(bowl) is not BoardGroupPlan board) return;
            Polygon[] parts = [.. board.Rings.Select(r => Section(r.Narrow, r.Wide, board.Thickness)), Section(new(board.Middle.Narrow, 0), new(board.Middle.Wide, 0), board.Thickness)];
            for (int i = 1; i < parts.Length; i++) Assert.Equal(board.Kerf, parts[i - 1].Distance(parts[i]), 1e-9);
            double slots = board.Rings.Sum(r => r.Inside.KerfAcross * board.Thickness);
            Assert.Equal(board.Disc * board.Thickness, parts.Sum(p => p.Area) + slots, 1e-6);
        });

    [Fact]
    public void Each_ring_holds_its_wall_with_the_wood_left_for_turning() =>
        AnyBowl.Any.Sample(bowl =>
        {
            if (BoardOf(bowl) is not BoardGroupPlan board) return;
            double[] faces = bowl.Interfaces;
            int n = board.Rings.Length;
            for (int i = 0; i < n; i++) // the largest first
            {
                SawnBoardRing ring = board.Rings[i];
                double q = ring.Ring.Allowance!.Value.Millimetres, narrow = faces[n - 1 - i], wide = faces[n - i];
                Assert.True(ring.Wide.Outer >= wide + q - 1e-9 && ring.Narrow.Outer >= narrow + q - 1e-9);
                Assert.True(ring.Narrow.Inner <= narrow - bowl.Walls[n - 1 - i] - q + 1e-9);
                Assert.True(ring.Wide.Inner <= wide - bowl.Walls[i == 0 ? n - 1 : n - i] - q + 1e-9); // the rim's as thick as below it
                Assert.Equal(ring.Inside.Tilt, Math.Atan((ring.Wide.Inner - ring.Narrow.Inner) / board.Thickness), 1e-12);
            }
        });

    // Blind search over tilts and places, with the conditions written down anew.
    [Fact]
    public void What_is_refused_no_tilt_can_part_and_fewer_tilts_would_not_do() =>
        AnyBowl.Any.Sample(bowl =>
        {
            double[] grid = [.. Enumerable.Range(0, 451).Select(i => i * Math.PI / 1800)];
            int cuts = bowl.Interfaces.Length - 1;
            bool[][] fits = [.. Enumerable.Range(0, cuts).Select(c => grid.Select(tilt => Fits(bowl, c, tilt)).ToArray())];
            BoardGroupPlan? board = BoardOf(bowl);
            if (board is null) Assert.Contains(fits, cut => !cut.Any(f => f));
            else if (board.Tilts.Count() > 1) Assert.DoesNotContain(grid, tilt => fits.All(cut => cut[Array.IndexOf(grid, tilt)]));
        });

    [Fact]
    public void Most_random_bowls_are_planned_and_some_need_several_tilts()
    {
        int planned = 0, several = 0;
        AnyBowl.Any.Sample(bowl =>
        {
            if (BoardOf(bowl) is not BoardGroupPlan board) return;
            planned++;
            if (board.Tilts.Count() > 1) several++;
        });
        Assert.InRange(planned, 20, 100);
        Assert.InRange(several, 1, 100);
    }

    // The triangle of sides 3, 4 and 5 (Euclid, Elements I.48): a step of 15 in 20 is a slope of 25, and a kerf of 1.2 is 1.5 level.
    [Fact]
    public void A_step_of_three_in_four_is_the_classic_triangle()
    {
        var cut = new BoardCut(Math.Atan(0.75), 20 * 0.75, 1.2 / 0.8, 50);
        Assert.Equal((65, 48.5, 63.5), (cut.InsideWide, cut.OutsideNarrow, cut.OutsideWide));
        SawnBoardRing ring = BoardOf(Bowl)!.Rings[0];
        Assert.Equal(20 * Math.Tan(ring.Inside.Tilt), ring.Inside.Step, 12);
        Assert.InRange(ring.Inside.Tilt, ring.Range.LeastTilt, ring.Range.MostTilt);
    }

    // Common practice, no source: the step is at least wall and slot together, and one tilt does for all.
    [Fact]
    public void An_even_bowl_takes_one_tilt_in_whole_degrees()
    {
        BoardGroupPlan board = BoardOf(Bowl)!;
        double degrees = double.RadiansToDegrees(Assert.Single(board.Tilts));
        Assert.Equal(Math.Round(degrees), degrees, 9);
        Assert.All(board.Rings, r => Assert.True(r.Inside.Step >= 10 + 3 + r.Inside.KerfAcross - 1e-9));
    }

    [Fact]
    public void A_collision_is_refused_with_the_inner_diameter_that_does()
    {
        AnyBowl thick = AnyBowl.Of(20, 50, [16, 16], [18, 18], 1.5, 1.2, 12, dome: false);
        BadInputException e = Assert.Throws<BadInputException>(() => Planner.Plan(thick.Piece, thick.Shop));
        Assert.Equal("ring Ring 1, board", e.Where);
        Assert.Contains("collides with Ring 0", e.Problem, StringComparison.Ordinal);
        double inner = double.Parse(e.Right.Split(' ').First(w => char.IsDigit(w[0])), System.Globalization.CultureInfo.InvariantCulture);
        ImmutableArray<Ring> rings = thick.Piece.Rings;
        Piece mended = thick.Piece with { Rings = rings.SetItem(2, (BoardRing)rings[2] with { InnerDiameter = AnyPiece.Mm(inner) }) };
        Assert.NotNull(Planner.Plan(mended, thick.Shop));
        Piece less = thick.Piece with { Rings = rings.SetItem(2, (BoardRing)rings[2] with { InnerDiameter = AnyPiece.Mm(inner - 0.1) }) };
        Assert.Throws<BadInputException>(() => Planner.Plan(less, thick.Shop));
    }

    [Theory]
    [InlineData("segments")]
    [InlineData("thickness")]
    [InlineData("woods")]
    public void Rings_of_one_board_are_of_the_same_wedges(string field)
    {
        var ring = (BoardRing)Bowl.Piece.Rings[1];
        BoardRing other = field switch
        {
            "segments" => ring with { Segments = 6 },
            "thickness" => ring with { Thickness = AnyPiece.Mm(21) },
            _ => ring with { Woods = ["oak"] },
        };
        BadInputException e = Assert.Throws<BadInputException>(() => Planner.Plan(Bowl.Piece with { Rings = Bowl.Piece.Rings.SetItem(1, other) }, Bowl.Shop));
        Assert.Equal($"ring Ring 0, {field}", e.Where);
    }

    [Fact]
    public void The_wedges_are_planned_once_with_the_largest_ring()
    {
        Plan plan = PlanOf(Bowl)!;
        Assert.Equal([0, 0, 0, 1], plan.Rings.Select(r => r.Batches.Length));
        Assert.Equal(12, plan.Rings.SelectMany(r => r.Woods).Where(w => w.Wood != "oak").Sum(w => w.Needed));
        BadInputException e = Assert.Throws<BadInputException>(() => FitForecast.Of(plan.Rings[1], Bowl.Shop, 20, 1));
        Assert.Contains("planned with ring Ring 2", e.Message, StringComparison.Ordinal);
        Assert.NotNull(FitForecast.Of(plan.Rings[^1], Bowl.Shop, 20, 1));
    }

    [Fact]
    public void Joints_above_one_another_are_a_doubt_and_half_a_segment_mends_it()
    {
        var ring = (BoardRing)Bowl.Piece.Rings[2];
        Assert.DoesNotContain(PlanOf(Bowl)!.Rings[2].Findings, f => f.Weight == Weight.Doubt);
        Plan plan = Planner.Plan(Bowl.Piece with { Rings = Bowl.Piece.Rings.SetItem(2, ring with { Shift = 3 }) }, Bowl.Shop);
        Assert.Contains(plan.Rings[2].Findings, f => f.Weight == Weight.Doubt && f.Sentence.In(MeasureStyle.Millimetres).Contains("bricks", StringComparison.Ordinal));
    }

    // Takes the wedge out of the strip where it was sawn, through the flat disc, into the ring, turned and perhaps turned over.
    [Fact]
    public void A_wedges_board_laid_into_the_ring_brings_the_sawn_wedge_to_its_place() =>
        AnyBowl.Any.Sample(bowl =>
        {
            if (PlanOf(bowl with { Shop = bowl.Shop with { Sanding = new() { PerFace = AnyPiece.Mm(0) } } }) is not Plan plan) return;
            RingPlan carrier = plan.Rings.Single(r => r.Board is not null && !r.Batches.IsEmpty);
            int perBoard = carrier.Strip.WedgesIn(3000);
            StripPlan strip = carrier.Strip.Saw(3000, perBoard);
            foreach (RingPlan ring in plan.Rings.Where(r => r.Board is not null))
            {
                double height = ring.Ring.Thickness.Millimetres;
                bool up = ring.Board![ring.Ring.Name].WideUp;
                Assert.Equal(ring.Ring.Around, ring.Layout.Length);
                for (int i = 0; i < ring.Layout.Length; i++)
                {
                    LaidSegment laid = ring.Layout[i];
                    double middle = (i + ring.Ring.Shift) * 2 * Math.PI / ring.Ring.Around;
                    Assert.Equal(middle - (Math.PI / ring.Ring.Around), laid.From.Direction, 9);
                    Assert.Equal(middle + (Math.PI / ring.Ring.Around), laid.To.Direction, 9);
                    Assert.Equal(1, laid.Frame.X.Cross(laid.Frame.Y).Dot(laid.Frame.Z), 12);
                    ImmutableArray<Vector2D> place = carrier.Glued.PlanAt(middle).Vertices;
                    foreach (Vector2D corner in strip.Wedges[laid.Cut].Vertices)
                    {
                        Vector3D at = laid.Frame.ToOuter(new Vector3D(corner.X, corner.Y, 2));
                        Assert.Equal(up ? 2 : height - 2, at.Z, 9);
                        Assert.True(place.Min(p => (p - new Vector2D(at.X, at.Y)).Length) < 1e-6);
                    }
                }
            }
        });

    private static bool Fits(AnyBowl bowl, int cut, double tilt)
    {
        // The cut inside the ring between faces i and i + 1; cut 0 is the innermost.
        double[] f = bowl.Interfaces;
        var ring = (BoardRing)bowl.Piece.Rings.First(r => r is BoardRing);
        double q = ring.Allowance!.Value.Millimetres, step = ring.Thickness.Millimetres * Math.Tan(tilt), slot = bowl.Shop.Saw.Kerf.Millimetres / Math.Cos(tilt);
        double most = f[cut] - bowl.Walls[cut] - q;
        int above = cut + 2 < f.Length ? cut + 1 : cut; // the rim is as thick as the wall below it
        most = Math.Min(most, f[cut + 1] - bowl.Walls[above] - q - step);
        double least = cut == 0 ? slot : slot + q + Math.Max(f[cut - 1], f[cut] - step);
        return least <= most;
    }

    private static Polygon Section(FaceRadii narrow, FaceRadii wide, double t) => new(new LinearRing(
        [new(narrow.Inner, 0), new(narrow.Outer, 0), new(wide.Outer, t), new(wide.Inner, t), new(narrow.Inner, 0)]));
}
