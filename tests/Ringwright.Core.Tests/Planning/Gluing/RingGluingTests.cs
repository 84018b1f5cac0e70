using System.Collections.Immutable;
using CsCheck;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Tests.Planning.Gluing;

public class RingGluingTests
{
    private static readonly Gen<(Piece, Shop)> Any =
        from piece in AnyPiece.Piece
        from shop in AnyPiece.Shop
        from open in Gen.Double[3, 20]
        from joint in Gen.Double[0.2, 3]
        from hands in Gen.Double[0, 0.5]
        select (piece, shop with { Adhesive = new() { OpenTime = Duration.FromMinutes(open) }, Gluing = new() { MinutesPerJoint = Math.Min(joint, open), MinutesPerGlueUp = 0 }, Hands = shop.Hands with { AngleSd = Angle.FromDegrees(hands) } });

    private static GluePlan Glue(Ring ring, Shop? shop = null) => GluePlan.Of(Planner.Plan(new() { Name = "Test", Rings = [ring] }, shop ?? Shop.Starting));

    private static SegmentRing Closed(int segments, double diameter = 60) => new() { Name = "Ring", Segments = segments, Diameter = AnyPiece.Mm(diameter), InnerDiameter = AnyPiece.Mm(0.6 * diameter), Thickness = AnyPiece.Mm(20), Woods = ["oak"] };

    private static Shop With(double open, double joint, double angleSd = 0.001) => Shop.Starting with
    {
        Adhesive = new() { OpenTime = Duration.FromMinutes(open) },
        Gluing = new() { MinutesPerJoint = joint, MinutesPerGlueUp = 0 },
        Hands = Shop.Starting.Hands with { AngleSd = Angle.FromDegrees(angleSd), SettingSd = Angle.FromDegrees(0) },
        Sanding = Shop.Starting.Sanding with { Unevenness = AnyPiece.Mm(0) },
    };

    [Fact]
    public void Every_joint_is_glued_once_and_what_is_made_hangs_together() => Any.Sample((piece, shop) =>
    {
        foreach (RingGluing ring in GluePlan.Of(Planner.Plan(piece, shop)).Rings.Where(r => r.Way != GlueWay.PieceByPiece))
        {
            Assert.Equal(Enumerable.Range(0, ring.Pieces), ring.GlueUps.SelectMany(g => g.Joints).Order());
            AssertHangTogether(ring.GlueUps, ring.Pieces);
        }
    });

    [Fact]
    public void No_glue_up_outlasts_the_open_time_but_those_that_cannot_be_smaller() => Any.Sample((piece, shop) =>
    {
        GluePlan glue = GluePlan.Of(Planner.Plan(piece, shop));
        int most = Math.Max(2, (int)glue.Find("joints-at-once")!.Value);
        foreach (RingGluing ring in glue.Rings.Where(r => r.Ring.Spacers.IsEmpty)) Assert.All(ring.GlueUps, g => Assert.InRange(g.Joints.Length, 1, most));
    });

    [Fact]
    public void Figures_follow_from_their_formulas() => Any.Sample((piece, shop) =>
    {
        GluePlan glue = GluePlan.Of(Planner.Plan(piece, shop));
        foreach (Figure figure in glue.Figures.Concat(glue.Rings.SelectMany(r => r.Figures)))
        {
            double value = FormulaReader.Evaluate(figure.Why.Formula, figure.Why.Inputs.ToDictionary(i => i.Symbol, i => i.Value));
            Assert.True(Math.Abs(value - figure.Value) <= 1e-9 * Math.Max(1, Math.Abs(value)), $"{figure.Name} = {figure.Value}, but {figure.Why.Formula} = {value}");
        }
    });

    [Theory]
    [InlineData(12, 12, 1, GlueWay.AtOnce, 1)]        // 12 joints in 12 minutes
    [InlineData(12, 11, 1, GlueWay.Halves, 2)]        // both halves at once, 10 joints; then 2
    [InlineData(24, 12, 1, GlueWay.Halves, 3)]        // two halves of 11 joints
    [InlineData(18, 4, 1, GlueWay.Halves, 7)]         // each half: two runs of 5 and 4 joined, so 3 glue-ups
    [InlineData(13, 12, 1, GlueWay.Runs, 3)]          // no halves of an odd count: two runs of 7 and 6
    [InlineData(8, 1, 1, GlueWay.Halves, 7)]          // one joint at a time: pairs, halves, ring: 2·2 + 2 + 1
    public void The_open_time_decides(int segments, double open, double joint, GlueWay way, int glueUps)
    {
        RingGluing ring = Glue(Closed(segments), With(open, joint)).Rings[0];
        Assert.Equal(way, ring.Way);
        Assert.Equal(glueUps, ring.GlueUps.Length);
    }

    [Theory]
    [InlineData(24, GlueWay.Halves)]
    [InlineData(18, GlueWay.Halves)] // halves of nine
    [InlineData(23, GlueWay.FitLast)]
    public void A_ring_that_will_not_close_by_itself_is_trued_or_fitted(int segments, GlueWay way)
    {
        RingGluing ring = Glue(Closed(segments, 200), With(60, 1, 0.2)).Rings[0];
        Assert.Equal(way, ring.Way);
        Assert.Equal(2, ring.GlueUps[^1].Joints.Length);
    }

    [Fact]
    public void Eight_staves_of_one_joint_at_a_time_begin_with_pairs_under_a_band_and_wedges_with_rubbed_ones()
    {
        RingGluing ring = Glue(Closed(8), With(1, 1)).Rings[0];
        Assert.Equal(4, ring.GlueUps.Count(g => g.Clamp == GlueClamp.Rubbed && g.Made[0].Count == 2));
        Assert.Equal(["pair", "half"], ring.Stages.Where(s => s.Work == GlueWork.Run).Select(s => RingGlueSteps.RunName(s.Size, ring)));
    }

    [Fact]
    public void Spacers_at_the_ends_of_halves_go_in_when_the_ring_is_closed()
    {
        var ring = new MixedRing
        {
            Name = "Mixed",
            Diameter = AnyPiece.Mm(120),
            InnerDiameter = AnyPiece.Mm(80),
            Thickness = AnyPiece.Mm(15),
            Parts = [new() { Wood = "maple" }, new() { Wood = "wenge", Thickness = AnyPiece.Mm(1) }],
            Repeats = 12,
        };
        RingGluing glued = Glue(ring, With(11, 1)).Rings[0];
        Assert.Equal(24, glued.Pieces);
        Assert.Equal(GlueWay.Halves, glued.Way);
        Assert.Equal([10, 11, 22, 23], glued.GlueUps[^1].Joints);
        Assert.Equal([new GluedRun(0, 11), new GluedRun(12, 11)], glued.GlueUps.Where(g => g.Work == GlueWork.Run).SelectMany(g => g.Made).Where(m => m.Count == 11));
    }

    [Fact]
    public void Open_segments_are_laid_one_by_one_and_layers_are_one_piece()
    {
        var open = new OpenRing { Name = "Open", Segments = 12, Diameter = AnyPiece.Mm(80), InnerDiameter = AnyPiece.Mm(60), Thickness = AnyPiece.Mm(10), Gap = Angle.FromDegrees(5), Woods = ["oak"] };
        var layer = new SolidLayer { Name = "Base", Diameter = AnyPiece.Mm(80), Thickness = AnyPiece.Mm(10), Wood = "oak" };
        GluePlan glue = GluePlan.Of(Planner.Plan(new() { Name = "Two", Rings = [layer, open] }, Shop.Starting));
        Assert.Equal([GlueWay.OnePiece, GlueWay.PieceByPiece], glue.Rings.Select(r => r.Way));
        Assert.Equal(12, glue.Stack[0].Joints);
        Assert.Null(glue.Stack[0].Turn);
    }

    // The strips of all laminated boards as planned, and between the strips of a board one joint less.
    [Fact]
    public void Strips_of_laminated_boards_are_glued_joint_by_joint()
    {
        var band = new LaminatedRing { Name = "Band", Segments = 12, Diameter = AnyPiece.Mm(120), InnerDiameter = AnyPiece.Mm(90), Thickness = AnyPiece.Mm(20), Strips = [new("maple", AnyPiece.Mm(6)), new("wenge", AnyPiece.Mm(3))], Recut = Angle.FromDegrees(0) };
        RingGluing ring = Glue(band).Rings[0];
        int strips = (int)ring.Ring["lamination-repeats"].Value * 2, boards = ring.Ring.Woods[0].Boards;
        Assert.Equal(strips - boards, ring.Boards.Sum(g => g.Joints.Length));
        AssertHangTogether(ring.Boards, strips);
    }

    private static void AssertHangTogether(ImmutableArray<GlueUp> glueUps, int pieces)
    {
        int[] part = [.. Enumerable.Range(0, pieces)];
        for (int g = 0; g < glueUps.Length; g++)
        {
            Assert.All(glueUps[g].After, a => Assert.InRange(a, 0, g - 1));
            foreach (int joint in glueUps[g].Joints)
            {
                (int one, int other) = (part[joint], part[(joint + 1) % pieces]);
                for (int i = 0; i < pieces; i++) part[i] = part[i] == other ? one : part[i];
            }

            foreach (GluedRun run in glueUps[g].Made)
                Assert.Equal(Enumerable.Range(run.First, run.Count), Enumerable.Range(0, pieces).Where(i => part[i] == part[run.First]));
        }
    }
}
