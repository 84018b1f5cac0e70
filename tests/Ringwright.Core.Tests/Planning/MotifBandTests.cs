using CsCheck;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Core.Sawing;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Tests.Planning;

public class MotifBandTests
{
    private static readonly LaminatedRing Band = new()
    {
        Name = "Band",
        Segments = 12,
        Diameter = AnyPiece.Mm(150),
        InnerDiameter = AnyPiece.Mm(110),
        Thickness = AnyPiece.Mm(24),
        Strips = [new("maple", AnyPiece.Mm(6)), new("walnut", AnyPiece.Mm(3))],
        Recut = Angle.FromDegrees(30),
        Mirrored = true,
    };

    private static readonly Gen<LaminatedRing> Any =
        from n in Gen.Int[3, 48]
        from diameter in Gen.Double[60, 300]
        from inner in Gen.Double[0.4, 0.85]
        from height in Gen.Double[8, 40]
        from recut in Gen.OneOf(Gen.Const(0.0), Gen.Double[-60, 60])
        from strips in Gen.Select(Gen.Int[0, 2], Gen.Double[1, 15]).Array[1, 5]
        from mirrored in Gen.Bool
        select new LaminatedRing
        {
            Name = "Band",
            Segments = n,
            Diameter = AnyPiece.Mm(diameter),
            InnerDiameter = AnyPiece.Mm(inner * diameter),
            Thickness = AnyPiece.Mm(height),
            Recut = Angle.FromDegrees(recut),
            Mirrored = mirrored,
            Strips = [.. strips.Select(s => new Strip(new[] { "maple", "walnut", "cherry" }[s.Item1], AnyPiece.Mm(s.Item2)))],
        };

    private static readonly Shop LongBoards = Shop.Starting with { Boards = new() { Length = AnyPiece.Mm(2500) } };

    private static RingPlan Plan(LaminatedRing ring, Shop? shop = null) => Planner.Plan(new() { Name = "Test", Rings = [ring] }, shop ?? LongBoards).Rings[0];

    [Fact]
    public void Every_formula_gives_its_figure() =>
        Gen.Select(Any, AnyPiece.Shop).Sample((ring, shop) => FormulaReader.AssertAll(Plan(ring, shop with { Boards = new() { Length = AnyPiece.Mm(2500) } })));

    // The pieces of a segment fill it and do not overlap: their volumes, clipped out of it by their planes, add up to it.
    [Fact]
    public void The_pieces_fill_their_segment() =>
        Any.Sample(ring =>
        {
            RingPlan plan = Plan(ring);
            double height = ring.Thickness.Millimetres;
            foreach (IGrouping<SegmentJoints?, LaidSegment> segment in plan.Layout.GroupBy(l => l.Within))
            {
                double middle = (segment.Key!.Value.From.Direction + segment.Key.Value.To.Direction) / 2;
                double sum = segment.Sum(piece => Solid(plan.Glued, middle, height, piece).Volume);
                Assert.Equal(plan.Glued.Area * height, sum, 1e-6 * plan.Glued.Area * height);
            }

            Assert.Equal(ring.Segments, plan.Layout.GroupBy(l => l.Within).Count());
        }, iter: 40);

    // Its frame lays each strip's own faces on its glue lines, and its grain along them, within the length it was crosscut to.
    [Fact]
    public void Every_piece_lies_within_its_strip() =>
        Any.Sample(ring =>
        {
            RingPlan plan = Plan(ring);
            foreach (LaidSegment piece in plan.Layout)
            {
                double middle = (piece.Within!.Value.From.Direction + piece.Within.Value.To.Direction) / 2;
                StripNeed kind = plan.Lamination!.Kinds.First(k => k.Wood == piece.Wood && Math.Abs(Thickness(piece) - k.Thickness) < 1e-6);
                ConvexSolid wood = Solid(plan.Glued, middle, ring.Thickness.Millimetres, piece).ToLocal(piece.Frame);
                if (wood.IsEmpty) continue;
                (double low, double high) = wood.Extent(new(0, 0, 1));
                Assert.InRange(low, -1e-6, high);
                Assert.InRange(high, low, kind.Thickness + 1e-6);
                (double near, double far) = wood.Extent(new(1, 0, 0));
                double start = 5 + (piece.Cut * (kind.Height + 1.2));
                Assert.InRange(near, start - 1e-6, far);
                Assert.InRange(far, near, start + kind.Height + 1e-6);
                (double left, double right) = wood.Extent(new(0, 1, 0));
                Assert.InRange(left, -1e-6, right);
                Assert.InRange(right, left, plan["strip-width"].Value + 1e-6);
            }
        }, iter: 40);

    // On the joint's plane, neighbours of a matched zigzag show the same woods at every height: the lines meet in peaks.
    [Fact]
    public void Lines_of_a_matched_zigzag_meet_at_every_joint() =>
        Any.Sample(ring =>
        {
            RingPlan plan = Plan(ring with { Mirrored = true, Segments = 2 * ((ring.Segments + 1) / 2) });
            if (!plan.Lamination!.Matched) return;
            double radius = plan.Glued.OuterApothem / Math.Cos(plan.Glued.HalfAngle);
            for (int i = 0; i < plan.Ring.Around; i++)
            {
                double joint = (i + 0.5) * 2 * plan.Glued.HalfAngle;
                for (double z = 0.0371; z < ring.Thickness.Millimetres; z += 1.3713)
                    Assert.Equal(WoodBeside(plan, i, radius, joint - 1e-9, z), WoodBeside(plan, (i + 1) % plan.Ring.Around, radius, joint + 1e-9, z));
            }
        }, iter: 40);

    [Fact]
    public void Strips_are_enough_for_every_board() =>
        Any.Sample(ring =>
        {
            Lamination board = Plan(ring).Lamination!;
            double glued = board.Kinds.Sum(k => k.Count * k.Thickness), needed = Plan(ring)["lamination-length"].Value * Math.Cos(board.Angle);
            return glued >= needed && board.Kinds.All(k => k.Height * Math.Cos(board.Angle) >= board.Thickness && k.Sticks >= 1);
        });

    // By hand: strips of 9 mm in all leaning 30° come again after 9 / cos 30° = 10.3923 mm; the 6 mm strip is shifted 6 tan 30° = 3.4641 mm.
    [Fact]
    public void A_band_worked_by_hand()
    {
        RingPlan plan = Plan(Band);
        Assert.Equal(10.3923, plan["pattern-repeat"].Value, 5e-5);
        Assert.Equal(3.4641, plan["strip-1-stagger"].Value, 5e-5);
        Assert.Equal(((24.5 + 3) / Math.Cos(Math.PI / 6)) + 3.4641, plan["strip-1-height"].Value, 5e-5);
        Assert.Equal(0, plan["pitch-matched"].Value / plan["pattern-repeat"].Value % 1, 1e-9);
        Assert.Equal(plan["pitch-matched"].Value, plan["strip-per-wedge"].Value, 1e-9);
    }

    [Fact]
    public void Lines_all_one_way_take_every_second_wedge()
    {
        RingPlan zigzag = Plan(Band), oneWay = Plan(Band with { Mirrored = false });
        Assert.Equal(2 * zigzag["pitch-bare"].Value, oneWay["pitch-bare"].Value, 1e-9);
        Assert.Contains(oneWay.Steps, s => s.In(MeasureStyle.Millimetres).Contains("every second one", StringComparison.Ordinal));
        Assert.All(oneWay.Layout, piece => Assert.Equal(Math.PI / 6, piece.From.Tilt, 1e-12));
        Assert.Contains(zigzag.Layout, piece => piece.From.Tilt < 0);
    }

    [Fact]
    public void A_pattern_too_long_to_match_is_told_with_both_numbers()
    {
        RingPlan plan = Plan(Band with { Strips = [new("maple", AnyPiece.Mm(60)), new("walnut", AnyPiece.Mm(60))] });
        Assert.False(plan.Lamination!.Matched);
        Assert.Contains(plan.Findings, f => f.Weight == Weight.Doubt && f.Sentence.In(MeasureStyle.Millimetres).Contains("do not match", StringComparison.Ordinal));
        Assert.Equal(plan["pitch-bare"].Value, plan["strip-per-wedge"].Value, 1e-9);
    }

    // Two cuts to each wedge: 2 N faces, each with its own error (4 N − 2 r with r = N).
    [Fact]
    public void Wedges_with_wood_left_out_between_them_share_no_cut() =>
        Assert.Equal(12, Plan(Band)["closing-spread"].Why.Inputs.Single(i => i.Symbol == "r").Value);

    [Fact]
    public void Peaks_of_an_odd_ring_are_told() =>
        Assert.Contains(Plan(Band with { Segments = 11 }).Findings, f => f.Sentence.In(MeasureStyle.Millimetres).Contains("even number", StringComparison.Ordinal));

    private static double Thickness(LaidSegment piece) => piece.To.Offset - piece.From.Offset;

    private static ConvexSolid Solid(WedgeGeometry wedge, double middle, double height, LaidSegment piece)
    {
        ConvexSolid solid = new BoardBlank(2000, 2000, height).Solid().ToLocal(Frame3D.Identity with { Origin = new(1000, 1000, 0) });
        var radial = new Vector3D(Math.Cos(middle), Math.Sin(middle), 0);
        solid = solid.Clip(new(radial, wedge.OuterApothem), 0).Clip(new(-radial, -wedge.InnerApothem), 0);
        foreach (JointPlane from in new[] { piece.From, piece.Within!.Value.From }) solid = solid.Clip(Before(from).Complement, 0);
        foreach (JointPlane to in new[] { piece.To, piece.Within!.Value.To }) solid = solid.Clip(Before(to), 0);
        return solid;
    }

    // cos(tilt) · t − sin(tilt) · z ≤ offset
    private static HalfSpace Before(JointPlane plane) => new(
        new(-Math.Cos(plane.Tilt) * Math.Sin(plane.Direction), Math.Cos(plane.Tilt) * Math.Cos(plane.Direction), -Math.Sin(plane.Tilt)), plane.Offset);

    private static string WoodBeside(RingPlan plan, int segment, double radius, double angle, double z)
    {
        double middle = segment * 2 * plan.Glued.HalfAngle;
        var at = new Vector3D(radius * Math.Cos(angle), radius * Math.Sin(angle), z);
        LaidSegment[] here = [.. plan.Layout.Where(l => Math.Abs(((l.Within!.Value.From.Direction + l.Within.Value.To.Direction) / 2) - middle) < 1e-9)];
        return here.Where(l => Before(l.From).Distance(at) >= -1e-7 && Before(l.To).Distance(at) <= 1e-7).Select(l => l.Wood).Order(StringComparer.Ordinal).First();
    }
}
