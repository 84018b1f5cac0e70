using CsCheck;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Tests.Planning.Gluing;

public class StackTests
{
    private static SegmentRing Ring(string name, int segments, double shift, double diameter = 100, double height = 20) => new()
    {
        Name = name,
        Segments = segments,
        Diameter = AnyPiece.Mm(diameter),
        InnerDiameter = AnyPiece.Mm(0.7 * diameter),
        Thickness = AnyPiece.Mm(height),
        Shift = shift,
        Woods = ["oak"],
    };

    private static GluePlan Glue(params Ring[] rings) => GluePlan.Of(Planner.Plan(new() { Name = "Stack", Rings = [.. rings] }, Shop.Starting));

    [Fact]
    public void Laid_like_bricks_the_mark_stands_over_the_middle_of_an_edge()
    {
        StackJoint joint = Glue(Ring("a", 12, 0), Ring("b", 12, 0.5)).Stack[0];
        double edge = 103 * Math.Tan(Math.PI / 12);
        Assert.Equal(Math.PI / 12, joint.Turn!.Value, 1e-12);
        Assert.Equal((0, edge / 2), (joint.Joint, joint.Along), new Close());
        Assert.Equal(edge, joint.Edge, 1e-9);
        Assert.StartsWith("Joint 1 over the middle of the rim edge after joint 1", joint.Mark.In(MeasureStyle.Millimetres), StringComparison.Ordinal);
    }

    [Fact]
    public void Not_turned_it_stands_over_joint_1() =>
        Assert.Equal("Joint 1 straight over joint 1.", Glue(Ring("a", 18, 0.25), Ring("b", 18, 0.25)).Stack[0].Mark.In(MeasureStyle.Millimetres));

    // The mark is where the ray through the upper joint meets the lower polygon, corner by corner.
    [Fact]
    public void The_mark_lies_on_the_lower_rim_under_the_upper_joint() => Gen.Select(Gen.Int[3, 40], Gen.Int[3, 40], Gen.Double[-3, 3], Gen.Double[-3, 3]).Sample(t =>
    {
        (int n, int m, double shift, double other) = t;
        StackJoint joint = Glue(Ring("a", n, shift), Ring("b", m, other)).Stack[0];
        double flat = 51.5, corner = flat / Math.Cos(Math.PI / n);
        Vector2D At(int j) => Vector2D.Polar(corner, (j + 0.5 + shift) * 2 * Math.PI / n);
        Vector2D from = At(joint.Joint), to = At(joint.Joint + (joint.Along >= 0 ? 1 : -1));
        Vector2D on = from + ((Math.Abs(joint.Along) / (to - from).Length) * (to - from));
        double mark = (0.5 + other) * 2 * Math.PI / m;
        Assert.Equal(0, RimMarks.Wrap(Math.Atan2(on.Y, on.X) - mark), 1e-9);
        Assert.True(Math.Abs(joint.Along) <= (joint.Edge / 2) + 1e-9);
    });

    [Fact]
    public void A_deep_hollow_is_turned_in_two_sections_divided_evenly()
    {
        GluePlan glue = Glue([Layer(), .. Enumerable.Range(1, 15).Select(i => Ring($"r{i}", 12, 0))]);
        Assert.Equal(300, glue.Find("hollow")!.Value, 1e-9);
        Assert.Equal(160, glue.Find("hollow-in-sections")!.Value, 1e-9);
        Assert.Equal(15, glue.Stack.Length);
        Assert.True(glue.Stack[^1].Joins);
        Assert.Equal([7, 8], new[] { glue.Stack[^1].Lower, glue.Stack[^1].Upper });
        Assert.Equal([true, true, true, true, true, true, true], glue.Stack.Where(s => s.FromTop).Select(s => s.Lower >= 8));
        Assert.Equal(Enumerable.Range(0, 15), glue.Stack.Select(s => s.Lower).Order());
    }

    [Fact]
    public void A_shallow_one_grows_from_the_bottom()
    {
        GluePlan glue = Glue([Layer(), .. Enumerable.Range(1, 5).Select(i => Ring($"r{i}", 12, 0))]);
        Assert.Equal([0, 1, 2, 3, 4], glue.Stack.Select(s => s.Lower));
        Assert.DoesNotContain(glue.Stack, s => s.FromTop || s.Joins);
    }

    // A circle to centre by lies on wood below and is not covered.
    [Fact]
    public void The_centring_circle_lies_on_the_face_below()
    {
        StackJoint wider = Glue(Ring("a", 12, 0, 100), Ring("b", 12, 0, 110)).Stack[0], narrower = Glue(Ring("a", 12, 0, 100), Ring("b", 12, 0, 90)).Stack[0];
        Assert.Equal(Centring.InnerCircle, wider.Centring);
        Assert.Equal(Centring.OuterCircle, narrower.Centring);
        Assert.InRange(wider.Circle, 67, 103);
        Assert.Equal(93 / Math.Cos(Math.PI / 12), narrower.Circle, 1e-9);
    }

    private static SolidLayer Layer() => new() { Name = "Base", Diameter = AnyPiece.Mm(100), Thickness = AnyPiece.Mm(10), Wood = "oak" };

    private sealed class Close : IEqualityComparer<(int, double)>
    {
        public bool Equals((int, double) x, (int, double) y) => x.Item1 == y.Item1 && Math.Abs(x.Item2 - y.Item2) < 1e-9;

        public int GetHashCode((int, double) obj) => obj.Item1;
    }
}
