using Ringwright.Core.Fitting;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Core.Sawing;
using Ringwright.Core.Tests.Planning;

namespace Ringwright.Core.Tests.Fitting;

/// <summary>Caliper readings of rings whose segments are not all alike, and of staves.</summary>
public class MeasuredKindTests
{
    private static readonly Shop Shop = Shop.Starting;

    private static MixedRing Mixed(bool spacers) => new()
    {
        Name = "Feature",
        Thickness = AnyPiece.Mm(16),
        Diameter = AnyPiece.Mm(200),
        InnerDiameter = AnyPiece.Mm(164),
        Repeats = 6,
        Parts = spacers
            ? [new() { Wood = "maple", Share = 2 }, new() { Wood = "wenge", Thickness = AnyPiece.Mm(1.5) }, new() { Wood = "cherry", Share = 1 }, new() { Wood = "wenge", Thickness = AnyPiece.Mm(1.5) }]
            : [new() { Wood = "maple", Share = 2 }, new() { Wood = "cherry", Share = 1 }],
    };

    private static StaveRing Mug(double lean) => new()
    {
        Name = "Mug",
        Segments = 12,
        Lean = Angle.FromDegrees(lean),
        Thickness = AnyPiece.Mm(100),
        Diameter = AnyPiece.Mm(110),
        InnerDiameter = AnyPiece.Mm(66),
        Woods = ["oak", "walnut"],
    };

    private static RingPlan Plan(Ring ring, Shop? shop = null) => Planner.Plan(new Piece { Name = "Test", Units = LengthUnit.Millimetre, Rings = [ring] }, shop ?? Shop).Rings[0];

    // A wedge of this geometry, its angle off by an error about its own rim edge.
    private static MeasuredWedge Wedge(int number, WedgeGeometry wedge, double error = 0)
    {
        double tip = wedge.RimEdge - (2 * wedge.Depth * Math.Tan(wedge.HalfAngle + (error / 2)));
        return new(new CaliperReading(number, "any", wedge.RimEdge, tip));
    }

    private static MeasuredRing Measure(RingPlan plan, params double[] errors)
    {
        var kinds = MeasuredRing.KindsOf(plan);
        return MeasuredRing.Of(plan, Shop.Sled, [.. kinds.Select((k, i) => Wedge(i + 1, plan.Batches[k].Glued, errors.Length > k ? errors[k] : 0))], MeasuredRing.UsualDepth(plan));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Right_wedges_of_two_widths_close_with_their_spacers_between(bool spacers)
    {
        MeasuredRing ring = Measure(Plan(Mixed(spacers)));
        Assert.Equal(0, ring.Fit.Summary.ClosingError, 1e-9);
        Assert.Equal(0, ring.Fit.Summary.WorstGap, 1e-5);
        Assert.Equal([6, 6], ring.Kinds.Select(k => k.Places.Length));
        Assert.All(ring.Kinds, k => Assert.False(k.Diagnosis.Correction.IsWorthwhile));
    }

    /// <summary>By hand: six wedges 0.2° too narrow miss 1.2° together; each of their two faces is corrected by 0.1° (geometry; the readings' small uncertainty pulls a little towards none).</summary>
    [Fact]
    public void Only_the_width_that_is_off_is_to_be_corrected_and_its_fences_are_named()
    {
        RingPlan plan = Plan(Mixed(spacers: false));
        double off = -0.2 * Math.PI / 180;
        MeasuredRing ring = Measure(plan, 0, off);
        Assert.Equal(-6 * off, ring.Fit.Summary.ClosingError, 1e-6);
        Assert.False(ring.Kinds[0].Diagnosis.Correction.IsWorthwhile);
        FenceCorrection correction = ring.Kinds[1].Diagnosis.Correction;
        Assert.True(correction.IsWorthwhile);
        Assert.Equal(FenceMove.AwayFromSquare, correction.Move);
        Assert.InRange(correction.FenceAngle, 0.9 * -off / 2, -off / 2);
        // The fences of this width stand at half of its own angle, not at that of the ring's mean.
        Assert.Equal(plan.Batches[1].Glued.HalfAngle, correction.FenceAngleNow, 1e-9);
        Assert.Same(ring.Kinds[1], ring.Urgent);
        Assert.Equal(ring.Kinds[1].Wanted + off, ring.Kinds[1].Mean, 1e-9);
        Assert.StartsWith("Wedge 2: the 6 of this width should have", ring.Kinds[1].Says(plan).In(MeasureStyle.Millimetres), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(8)]
    [InlineData(-12)]
    public void Right_staves_close_and_stand_as_planned(double lean)
    {
        RingPlan plan = Plan(Mug(lean));
        MeasuredRing ring = MeasuredRing.Of(plan, Shop.Sled, [.. Enumerable.Range(1, 12).Select(n => Stave(n, plan.Stave!.Value, 0))], MeasuredRing.UsualDepth(plan));
        Assert.Equal(0, ring.Fit.Summary.ClosingError, 1e-9);
        Assert.Equal(0, ring.Fit.Summary.WorstGap, 1e-5);
        Assert.Equal(lean * Math.PI / 180, ring.Lean!.Value, 1e-9);
        Assert.False(ring.Diagnosis.Correction.IsWorthwhile);
        Assert.StartsWith("Leave the blade as it is", ring.Diagnosis.Advice[0].In(MeasureStyle.Millimetres), StringComparison.Ordinal);
    }

    /// <summary>By hand: an upright stave's angle is twice the blade's tilt, so staves 0.2° too narrow ask for 0.1° more tilt.</summary>
    [Fact]
    public void Narrow_staves_ask_for_more_tilt()
    {
        RingPlan plan = Plan(Mug(0));
        MeasuredRing ring = MeasuredRing.Of(plan, Shop.Sled, [.. Enumerable.Range(1, 12).Select(n => new MeasuredWedge(Stave(n, plan.Stave!.Value, -0.2 * Math.PI / 180).Below))], MeasuredRing.UsualDepth(plan));
        FenceCorrection correction = ring.Diagnosis.Correction;
        Assert.True(correction.IsTilt);
        Assert.Equal(FenceMove.AwayFromSquare, correction.Move);
        Assert.InRange(correction.FenceAngle * 180 / Math.PI, 0.08, 0.1);
        Assert.Equal(15 * Math.PI / 180, correction.FenceAngleNow, 1e-9);
        Assert.StartsWith("Move the blade away from square by", ring.Diagnosis.Advice[0].In(MeasureStyle.Millimetres), StringComparison.Ordinal);
        Assert.Null(ring.Lean);
    }

    /// <summary>Staves as the simulated saw leaves them with wrong settings, read by an exact caliper at both ends: the same closing error as of their true solids.</summary>
    [Theory]
    [InlineData(0, 1)]
    [InlineData(8, 1)]
    [InlineData(8, 4)]
    [InlineData(-12, 3)]
    public void Widths_at_both_ends_tell_what_the_solids_do(double lean, ulong seed)
    {
        Shop exact = Shop with { Saw = Shop.Saw with { KerfSd = default }, Sanding = Shop.Sanding with { Unevenness = default }, Hands = new() { AngleSd = default, SettingSd = Angle.FromDegrees(0.3), StopSd = default } };
        RingPlan plan = Plan(Mug(lean), exact);
        DryFitResult solids = DryFitSolver.Fit(RingJobs.Pieces(plan, exact, seed, ErrorCause.Setting).AsSpan());
        MeasuredWedge[] read = [.. RingJobs.Saw(plan, exact, seed, ErrorCause.Setting).Select((stave, i) => Read(i + 1, stave, lean))];
        MeasuredRing ring = MeasuredRing.Of(plan, exact.Sled, read, MeasuredRing.UsualDepth(plan));
        Assert.True(Math.Abs(solids.Summary.ClosingError) > 0.2 * Math.PI / 180);
        Assert.Equal(solids.Summary.ClosingError, ring.Fit.Summary.ClosingError, 0.03 * Math.Abs(solids.Summary.ClosingError));
        Assert.Equal(solids.Summary.ClosingError > 0 ? FenceMove.AwayFromSquare : FenceMove.TowardsSquare, ring.Diagnosis.Correction.Move);
        Assert.Equal(solids.Summary.WorstGap, ring.Fit.Summary.WorstGap, 0.05 * solids.Summary.WorstGap);
    }

    [Fact]
    public void What_cannot_be_measured_so_is_refused_with_a_sentence()
    {
        RingPlan plan = Plan(Mug(8));
        BadInputException once = Assert.Throws<BadInputException>(() => MeasuredRing.Of(plan, Shop.Sled, [.. Enumerable.Range(1, 12).Select(n => new MeasuredWedge(Stave(n, plan.Stave!.Value, 0).Below))], MeasuredRing.UsualDepth(plan)));
        Assert.Contains("one end only", once.Message, StringComparison.Ordinal);
        Assert.Contains("12", Assert.Throws<BadInputException>(() => MeasuredRing.Of(Plan(Mixed(false)), Shop.Sled, [], 10)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("gathered rim 0.4 mm", "rim", 1)]
    [InlineData("gathered centre 0.4 mm", "centre", 1)]
    [InlineData("joint 3 rim 0.02 mm", "rim", 24)]
    [InlineData("half centre 0.1 mm", "centre", 4)]
    public void A_reading_of_the_dry_ring_is_a_closure_that_teaches_the_same_error(string text, string at, double parts)
    {
        RingPlan plan = Plan(new WedgeDisc { Name = "Disc", Segments = 24, Diameter = AnyPiece.Mm(120), Tip = AnyPiece.Mm(2), Thickness = AnyPiece.Mm(20), Woods = ["maple"] });
        FitObservation reading = ReadingText.Read(text, "test", LengthUnit.Millimetre);
        LoggedClosure closure = ReadClosure.Of(plan, Shop.Sled, [reading])!;
        Assert.Equal(at == "rim" ? OpenAt.Rim : OpenAt.Centre, closure.At);
        double gap = double.Parse(text.Split(' ')[^2], System.Globalization.CultureInfo.InvariantCulture);
        DiagnosedRing ring = DiagnosedRing.Of(plan, Shop.Sled);
        double reach = parts == 1 && at == "rim" ? ring.RimRadius : ring.RimRadius - ring.TipRadius;
        Assert.Equal(parts * gap / reach, closure.Gap.Millimetres / closure.Reach.Millimetres, 1e-5);
        // Learning takes it.
        HandBelief before = ShopLearning.Believe(new() { Name = "None", Runs = [] }, Shop.Sled.Kind), after = ShopLearning.Believe(new() { Name = "One", Runs = [new() { Sled = Shop.Sled.Kind, Closures = [closure] }] }, Shop.Sled.Kind);
        Assert.Equal(before.Angle.Evidence.Wedges + 24, after.Angle.Evidence.Wedges);
        Assert.Null(ReadClosure.Of(plan, Shop.Sled, [ReadingText.Read("wedge 14.9°", "test", LengthUnit.Millimetre)]));
        Assert.Equal(0, ReadClosure.Of(plan, Shop.Sled, [ReadingText.Read("gathered rim closed", "test", LengthUnit.Millimetre)])!.Gap.Millimetres);
    }

    // Read at the two edges of each end; an error of the angle turns the faces about the outer edge.
    private static MeasuredWedge Stave(int number, StaveGeometry stave, double error)
    {
        CaliperReading At(double z)
        {
            double outer = stave.Width(stave.OuterApothem(z));
            return new(number, "any", outer, outer - (2 * stave.Thickness / Math.Cos(stave.Lean) * Math.Tan(stave.HalfAngle + (error / 2))));
        }

        return new(At(stave.Bottom), At(stave.Top));
    }

    // The four edges of a stave's two ends, as the saw left its solid.
    private static MeasuredWedge Read(int number, SawnWedge stave, double lean)
    {
        ConvexSolid solid = stave.Solid.ToOuter(stave.InBoard);
        double outward = stave.Marks.Up == BoardSide.Top ? 1 : -1;
        CaliperReading End(int tag)
        {
            int face = solid.Tags.IndexOf(tag);
            Vector3D[] corners = [.. solid.FaceCorners(face).ToArray().Select(c => solid.Corners.ToArray()[c]).OrderByDescending(c => outward * c.Z)];
            return new(number, "any", (corners[0] - corners[1]).Length, (corners[2] - corners[3]).Length);
        }

        (int wide, int narrow) = stave.Marks.RimEdge == BoardEdge.Edge1 ? (FaceTag.Edge1, FaceTag.Edge2) : (FaceTag.Edge2, FaceTag.Edge1);
        return lean >= 0 ? new(End(narrow), End(wide)) : new(End(wide), End(narrow));
    }
}
