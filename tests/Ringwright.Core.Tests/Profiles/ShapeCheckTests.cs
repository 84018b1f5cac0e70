using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Core.Profiles;
using static Ringwright.Core.Tests.Profiles.AnyShape;

namespace Ringwright.Core.Tests.Profiles;

public class ShapeCheckTests
{
    private static readonly Shape Good = Walled(6, 10, At(100, 0), At(120, 40), At(110, 80));
    private static readonly Wall GoodWall = (Wall)Good.Inside!;

    public static TheoryData<Shape, string> Bad => new()
    {
        { Good with { Outer = default }, "outer curve: it has 0 points; at least two make a curve." },
        { Good with { Outer = [At(10, 0)] }, "outer curve: it has 1 points" },
        { Good with { Outer = [.. Enumerable.Range(0, 501).Select(i => At(50, i))] }, "outer curve: it has 501 points; at most 500" },
        { Good with { Outer = [At(100, 0), At(100, 50), At(90, 40)] }, "outer curve, point 3, height: 40 mm is lower than the point before at 50 mm" },
        { Good with { Outer = [At(100, 0), At(0, 50)] }, "outer curve, point 2, diameter: 0 mm cannot be" },
        { Good with { Outer = [At(-100, 0), At(10, 50)] }, "outer curve, point 1, diameter: -100 mm cannot be" },
        { Good with { Outer = [At(100, -1), At(10, 50)] }, "outer curve, point 1, height: -1 mm cannot be" },
        { Good with { Outer = [At(100, 0), At(100, 0), At(90, 40)] }, "outer curve, point 2: it is at the same place" },
        { Good with { Outer = [At(100, 0), At(100, 20), At(50, 20), At(90, 20), At(90, 40)] }, "outer curve, point 4: at height 20 mm the curve runs from 100 mm to 50 mm and back to 90 mm" },
        { Good with { Outer = [At(100, 10), At(60, 10)] }, "outer curve: all its points are at one height" },
        { Good with { Outer = [At(100, 0), null!] }, "outer curve, point 2: it is null" },
        { Good with { Inside = GoodWall with { Thickness = Mm(0) } }, "wall, thickness: 0 mm cannot be" },
        { Good with { Inside = GoodWall with { Thickness = Mm(70) } }, "wall, thickness: it is as thick as the piece everywhere, so nothing is hollow" },
        { Good with { Inside = GoodWall with { Floor = Mm(80) } }, "floor: 80 mm is not below the top at 80 mm" },
        { Good with { Inside = GoodWall with { Floor = Mm(0) } }, "floor: 0 mm is not above the bottom" },
        { Good with { Inside = GoodWall with { Along = [Along(5, 40), Along(6, 40)] } }, "wall, along 2, height: 40 mm is not above 40 mm" },
        { Good with { Inside = GoodWall with { Along = [Along(5, 40), Along(15, 50)] } }, "wall, along 2, thickness: from 5 mm to 15 mm it changes as fast as the height" },
        { Walled(20, 10, At(100, 0), At(120, 40), At(30, 80)), "inside: the hollow from height 10 mm to" },
        { Good with { Inside = new Bore { Diameter = Mm(100) } }, "inside: at height 0 mm it is not smaller than the outside of 100 mm" },
        { Good with { Inside = new Bore { Diameter = Mm(-3) } }, "bore, diameter: -3 mm cannot be" },
        { Good with { Inside = new Bore { Diameter = Mm(7), Tube = Mm(79), EndTrim = Mm(1) } }, "bore, tube: a tube of 79 mm and the trim at both ends need 81 mm, but the piece is 80 mm high" },
        { Good with { Inside = new Hollow { Points = [At(0, 10), At(119, 40), At(100, 80)] } }, "" },
        { Good with { Inside = new Hollow { Points = [At(0, 10), At(125, 40), At(100, 80)] } }, "inside: at height" },
        { Good with { Inside = new Hollow { Points = [At(40, 10), At(50, 40)] } }, "inside: the hollow from height 10 mm to 40 mm is closed" },
        { Good with { Inside = new Hollow { Points = [At(40, 90), At(50, 95)] } }, "inner curve, point 1, height: 90 mm is not below the top" },
        { Good with { Inside = new Hollow { Points = [At(0, 10), At(0, 80)] } }, "inside: it has no width anywhere" },
        { Good with { Inside = new Hollow { Points = [At(40, 10)] } }, "inner curve: it has 1 points" },
        { Good with { Holding = Hold(HoldingKind.Tenon, 101, 5) }, "tenon, diameter: 101 mm is wider than the foot of 100 mm" },
        { Good with { Holding = Hold(HoldingKind.Recess, 100, 5) }, "recess, diameter: 100 mm is wider than the foot of 100 mm" },
        { Good with { Holding = Hold(HoldingKind.Recess, 50, 10) }, "recess, length: 10 mm deep it breaks through the floor at 10 mm" },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void Each_wrong_thing_has_its_sentence(Shape shape, string sentence)
    {
        if (sentence.Length == 0)
        {
            ShapeCheck.Check(shape);
            return;
        }

        Assert.StartsWith(sentence, Assert.Throws<BadInputException>(() => ShapeCheck.Check(shape)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_crossing_between_the_points_is_found() =>
        Assert.StartsWith("inside: at height", Assert.Throws<BadInputException>(() => ShapeCheck.Check(new Shape
        {
            Outer = [At(100, 0), At(60, 50), At(100, 100)],
            Inside = new Hollow { Points = [At(90, 0), At(80, 100)] },
        })).Message, StringComparison.Ordinal);

    /// <summary>Below the step the outside is narrower than the hollow above it, so the step would part the piece in two.</summary>
    [Fact]
    public void A_step_that_parts_the_piece_is_found() =>
        Assert.StartsWith("inside: at height 20 mm", Assert.Throws<BadInputException>(() => ShapeCheck.Check(new Shape
        {
            Outer = [At(50, 0), At(50, 20, true), At(120, 20, true), At(120, 40)],
            Inside = new Hollow { Points = [At(20, 0), At(20, 20, true), At(90, 20, true), At(90, 40)] },
        })).Message, StringComparison.Ordinal);

    /// <summary>Every kind over the whole range of sizes, shallow platters and needle-like vases among them.</summary>
    [Fact]
    public void Every_starting_shape_can_be_turned()
    {
        double[] sizes = [8, 9.3, 12.5, 31.7, 80, 254, 1000, 3000];
        foreach (PieceKind kind in Enum.GetValues<PieceKind>())
            foreach (double diameter in sizes)
                foreach (double height in sizes)
                {
                    Shape shape = StartingShapes.Of(kind, Mm(diameter), Mm(height));
                    var form = TurnedForm.Of(shape);
                    Assert.Equal((0, height), (form.Bottom, form.Top));
                    Assert.Equal(diameter / 2, form.Extents(0, height).MaxOuter, 12);
                    if (kind is PieceKind.Disc or PieceKind.Spindle) Assert.True(form.IsSolid);
                    else Assert.InRange(form.Thinnest()!.Value.Thickness, 0.2, 1500);
                }
    }

    [Fact]
    public void Sizes_without_a_starting_shape_are_told() =>
        Assert.Equal("height: there is no starting shape for 2 mm; 8 mm to 3000 mm can be.", Assert.Throws<BadInputException>(() => StartingShapes.Of(PieceKind.Bowl, Mm(200), Mm(2))).Message);

    private static WallPoint Along(double thickness, double height) => new() { Thickness = Mm(thickness), Height = Mm(height) };

    private static Holding Hold(HoldingKind kind, double diameter, double length) => new() { Kind = kind, Diameter = Mm(diameter), Length = Mm(length) };
}
