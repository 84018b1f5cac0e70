using CsCheck;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Profiles;

namespace Ringwright.Core.Tests.Planning;

public class StackFinderTests
{
    private static readonly Gen<(PieceKind Kind, double Diameter, double Height)> Sizes =
        from kind in Gen.OneOf(Gen.Const(PieceKind.Bowl), Gen.Const(PieceKind.Vase), Gen.Const(PieceKind.Box), Gen.Const(PieceKind.Platter), Gen.Const(PieceKind.Spindle))
        from diameter in Gen.Double[80, 260]
        from height in Gen.Double[40, 240]
        select (kind, diameter, height);

    [Fact]
    public void A_stack_found_for_a_starting_shape_can_be_made_and_holds_the_shape() => Sizes.Sample(size =>
    {
        Shape shape = StartingShapes.Of(size.Kind, AnyPiece.Mm(size.Diameter), AnyPiece.Mm(size.Height));
        StackSuggestion stack = StackFinder.Find(Request(shape), Roomy);
        Plan plan = Planner.Plan(new Piece { Name = "Found", Kind = size.Kind, Shape = shape, Rings = stack.Rings }, Roomy);
        Assert.DoesNotContain(plan.Findings, f => f.Weight == Weight.Stop);
        // Written and read again it is the same piece.
        Piece again = DocumentJson.ReadPiece(DocumentJson.Write(plan.Piece));
        Assert.Equal(DocumentJson.Write(plan.Piece), DocumentJson.Write(again));
    });

    [Fact]
    public void The_heights_are_the_best_of_all_sequences()
    {
        Shape shape = StartingShapes.Of(PieceKind.Bowl, AnyPiece.Mm(160), AnyPiece.Mm(60));
        TurnedForm form = TurnedForm.Of(shape);
        StackSuggestion stack = StackFinder.Find(Request(shape) with { RingWorth = 0 }, Roomy);
        Assert.Equal(AllSequences(shape, form.Top, [], Request(shape).Heights).Min(), stack.Wood, 0);
        Assert.Equal(stack.Wood, stack.LeastWood.Wood, 6);
        Assert.Equal((int)Math.Ceiling(form.Top / 25), stack.FewestRings.Rings);
    }

    [Fact]
    public void A_ring_that_costs_much_makes_fewer_rings()
    {
        Shape shape = StartingShapes.Of(PieceKind.Bowl, AnyPiece.Mm(200), AnyPiece.Mm(100));
        StackSuggestion cheap = StackFinder.Find(Request(shape) with { RingWorth = 0 }, Roomy);
        StackSuggestion dear = StackFinder.Find(Request(shape) with { RingWorth = 0.5 }, Roomy);
        Assert.True(dear.Rings.Length < cheap.Rings.Length);
        Assert.True(dear.Wood > cheap.Wood);
    }

    [Fact]
    public void Few_widths_are_ripped_within_the_extra_wood_that_is_accepted()
    {
        Shape shape = StartingShapes.Of(PieceKind.Vase, AnyPiece.Mm(120), AnyPiece.Mm(220));
        StackSuggestion strict = StackFinder.Find(Request(shape) with { ExtraWood = 0 }, Roomy);
        StackSuggestion easy = StackFinder.Find(Request(shape) with { ExtraWood = 0.1 }, Roomy);
        Assert.Equal(0, strict.Widths[strict.Chosen].Extra, 6);
        Assert.True(easy.Widths[easy.Chosen].Widths.Length < strict.Widths[strict.Chosen].Widths.Length);
        Assert.True(easy.Widths[easy.Chosen].Extra <= 0.1 * easy.Wood);
    }

    [Fact]
    public void Large_rings_get_more_segments_when_the_rim_edge_is_given()
    {
        Shape shape = StartingShapes.Of(PieceKind.Bowl, AnyPiece.Mm(250), AnyPiece.Mm(100));
        StackSuggestion stack = StackFinder.Find(Request(shape) with { Segments = null, RimEdge = 30 }, Roomy);
        Plan plan = Planner.Plan(new Piece { Name = "Found", Shape = shape, Rings = stack.Rings }, Roomy);
        Assert.All(plan.Rings, r => Assert.True(r.Glued.RimEdge <= 30));
        Assert.True(plan.Rings.Max(r => r.Ring.Around) > plan.Rings.Min(r => r.Ring.Around));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(5)]
    public void Woods_that_take_turns_come_round_evenly(int woods)
    {
        string[] names = ["walnut", "maple", "cherry", "oak", "padauk"];
        StackSuggestion found = StackFinder.Find(Request(StartingShapes.Of(PieceKind.Bowl, AnyPiece.Mm(250), AnyPiece.Mm(100))) with { Segments = null, Woods = [.. names.Take(woods)] }, Roomy);
        Assert.All(found.Rings, ring => Assert.Equal(0, ring.Around % woods));
    }

    [Fact]
    public void Heights_that_add_up_only_nearly_make_no_ring_above_the_shape()
    {
        Shape shape = StartingShapes.Of(PieceKind.Vase, AnyPiece.Mm(120), AnyPiece.Mm(220));
        StackSuggestion stack = StackFinder.Find(Request(shape) with { Heights = [220 / 12.0] }, Roomy);
        Assert.Equal(12, stack.Rings.Length);
        Assert.DoesNotContain(Planner.Plan(new Piece { Name = "Found", Shape = shape, Rings = stack.Rings }, Roomy).Findings, f => f.Weight == Weight.Stop);
    }

    [Theory]
    [InlineData(0.0, "cannot be a ring's height")]
    [InlineData(double.NaN, "cannot be a ring's height")]
    public void A_height_that_cannot_be_is_refused(double height, string says)
    {
        Shape shape = StartingShapes.Of(PieceKind.Bowl, AnyPiece.Mm(160), AnyPiece.Mm(60));
        Assert.Contains(says, Assert.Throws<BadInputException>(() => StackFinder.Find(Request(shape) with { Heights = [height] }, Roomy)).Message, StringComparison.Ordinal);
    }

    private static Shop Roomy => Shop.Starting with { Boards = new() { Length = Length.FromMillimetres(2400) } };

    private static StackRequest Request(Shape shape) => new() { Shape = shape, Heights = [15, 20, 25], Segments = 16, Woods = ["walnut", "maple"] };

    // Wood of every sequence of heights that reaches the top and needs its last ring, each found as a stack of its own.
    private static IEnumerable<double> AllSequences(Shape shape, double top, double[] begun, IReadOnlyList<double> heights)
    {
        if (begun.Sum() >= top)
        {
            yield return WoodOf(shape, begun);
            yield break;
        }

        foreach (double height in heights)
            foreach (double wood in AllSequences(shape, top, [.. begun, height], heights)) yield return wood;
    }

    // From the plan itself: strip per wedge times wedges times width times board thickness.
    private static double WoodOf(Shape shape, double[] heights)
    {
        double z = 0, wood = 0;
        TurnedForm form = TurnedForm.Of(shape);
        double allowance = Roomy.Wanted.Allowance.Millimetres;
        foreach (double height in heights)
        {
            WallExtents wall = form.Extents(z, Math.Min(z + height, form.Top));
            bool disc = wall.MinInner <= allowance;
            Ring ring = disc
                ? new WedgeDisc { Name = "R", Segments = 16, Thickness = AnyPiece.Mm(height), Diameter = AnyPiece.Mm(2 * wall.MaxOuter), Woods = ["oak"] }
                : new SegmentRing { Name = "R", Segments = 16, Thickness = AnyPiece.Mm(height), Diameter = AnyPiece.Mm(2 * wall.MaxOuter), InnerDiameter = AnyPiece.Mm(2 * wall.MinInner), Woods = ["oak"] };
            RingPlan plan = Planner.Plan(new Piece { Name = "P", Rings = [ring] }, Roomy).Rings[0];
            wood += 16 * plan.Strip.Pitch * plan.Glued.Depth * plan["board-thickness"].Value;
            z += height;
        }

        return wood;
    }
}
