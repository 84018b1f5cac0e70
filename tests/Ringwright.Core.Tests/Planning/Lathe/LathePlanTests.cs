using CsCheck;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Profiles;

namespace Ringwright.Core.Tests.Planning.Lathe;

public class LathePlanTests
{
    private static readonly Piece Bowl = DocumentJson.ReadPiece(File.ReadAllText(Path.Combine(SolutionFolder.Path, "examples", "feature-bowl.json")));

    private static readonly Gen<Plan> AnyHollow =
        from kind in Gen.Int[0, 3].Select(i => new[] { PieceKind.Bowl, PieceKind.Vase, PieceKind.Box, PieceKind.Platter }[i])
        from diameter in Gen.Double[60, 300]
        from slender in Gen.Double[0.3, 1.5]
        from segments in Gen.Int[6, 30]
        from rings in Gen.Int[3, 9]
        from allowance in Gen.Double[0.5, 4]
        from left in Gen.Double[0, 3]
        from cut in Gen.Double[0.5, 3]
        select Stack(kind, diameter, slender * diameter, segments, rings, allowance, left, cut);

    [Fact]
    public void Each_pass_leaves_no_more_wall_than_the_one_before() => AnyHollow.Sample(plan =>
        LathePlan.Of(plan).Rings.All(r =>
            r[LathePass.Glued].Thickness >= r[LathePass.OutsideRoughed].Thickness - 1e-9
            && r[LathePass.OutsideRoughed].Thickness >= r[LathePass.InsideRoughed].Thickness - 1e-9
            && r[LathePass.InsideRoughed].Thickness >= r[LathePass.Finished].Thickness - 1e-9));

    // Against the exact walls of the form, read at many heights; the section leaves them by 0.02 mm at most.
    [Fact]
    public void The_finished_wall_is_the_forms() => AnyHollow.Sample(plan =>
    {
        TurnedForm form = plan.Form!;
        foreach (RingPasses ring in LathePlan.Of(plan).Rings)
        {
            double from = Math.Max(ring.Ring.Bottom, form.Bottom), to = Math.Min(ring.Ring.Top, form.Top);
            double least = Enumerable.Range(0, 201).Select(i => from + (i * (to - from) / 200)).SelectMany(z => new[] { (z, Side.Above), (z, Side.Below) })
                .Where(p => (p.z > from || p.Item2 == Side.Above) && (p.z < to || p.Item2 == Side.Below))
                .Min(p => form.Outer(p.z, p.Item2) - form.Inner(p.z, p.Item2));
            double read = ring[LathePass.Finished].Thickness;
            Assert.True(read <= least + 0.05 && read >= least - (0.02 * form.Height), $"{read} {least}");
        }
    });

    // The glued ring as a polygon, moved off the axis across one of its flats.
    [Fact]
    public void A_ring_off_the_axis_by_less_than_its_room_still_holds_the_wall() => AnyHollow.Sample(plan =>
    {
        foreach (RingPasses ring in LathePlan.Of(plan).Rings.Where(r => r.CentreWithin > 0))
        {
            double outer = ring.Ring.Section!.Levels.Max(l => l.Outer), inner = ring.Ring.Section.Levels.Min(l => l.Inner);
            BlankRadii blank = ring.Ring.BlankAt(ring.Ring.Bottom);
            double flat = blank.OuterFlat, corner = blank.InnerCorner;
            bool Holds(double off) => flat - off >= outer - 1e-9 && (corner == 0 || corner + off <= inner + 1e-9);
            Assert.True(Holds(ring.CentreWithin));
            Assert.False(Holds(ring.CentreWithin + 1e-6));
        }
    });

    [Fact]
    public void Every_formula_gives_its_figure() => AnyHollow.Sample(plan =>
    {
        foreach (Figure figure in LathePlan.Of(plan).Figures.Where(f => f.Why.Evaluates))
        {
            double value = FormulaReader.Evaluate(figure.Why.Formula, figure.Why.Inputs.ToDictionary(i => i.Symbol, i => i.Value));
            Assert.Equal(figure.Value, value, 1e-9 * Math.Max(1, Math.Abs(figure.Value)));
        }
    });

    // Machinery's Handbook, length of the point of twist drills with 118° points: 0.300 times the diameter (from memory).
    [Fact]
    public void The_drills_point_is_the_handbooks()
    {
        LathePlan lathe = Of(Bowl);
        Assert.Equal(0.3004, lathe.Find("bore-point")!.Value / lathe.Find("bore-drill")!.Value, 5e-5);
    }

    // Found by fuzzing: 1.1 mm of radius are less than the 1.5 mm that roughing leaves, so no wall is roughed inside.
    [Fact]
    public void A_hole_narrower_than_the_finish_allowance_is_not_roughed()
    {
        LathePlan lathe = Of(new() { Name = "Bead", Rings = [new WedgeDisc { Name = "Disc", Segments = 6, Diameter = AnyPiece.Mm(23.8), Thickness = AnyPiece.Mm(10), Woods = ["walnut"], Bore = AnyPiece.Mm(2.2) }] });
        Assert.Null(lathe.Find("wall-roughed"));
        Assert.NotNull(lathe.Find("wall-finished"));
    }

    // Found by fuzzing: the shape is solid, and the disc's wedges still leave an opening at its centre.
    [Fact]
    public void A_solid_shape_of_wedges_with_a_tip_has_no_floor_to_reach()
    {
        Piece piece = new()
        {
            Name = "Spindle",
            Shape = new() { Outer = [new() { Diameter = AnyPiece.Mm(5.1), Height = AnyPiece.Mm(0) }, new() { Diameter = AnyPiece.Mm(5.1), Height = AnyPiece.Mm(12) }] },
            Rings = [new WedgeDisc { Name = "Disc", Segments = 18, Thickness = AnyPiece.Mm(12), Woods = ["wenge"], Tip = AnyPiece.Mm(0.5) }],
        };
        Assert.Null(Of(piece).Find("hollow-depth"));
    }

    [Fact]
    public void The_drill_stops_above_the_floor_by_the_finish_allowance()
    {
        LathePlan lathe = Of(Bowl);
        double tip = 108 - lathe.Find("bore-depth")!.Value - lathe.Find("bore-point")!.Value;
        Assert.Equal(11 + 1.5, tip, 1e-9);
    }

    // Section modulus of a round of 2 in: π·d³/32 = 0.7854 in³ (Machinery's Handbook, from memory); 5 MPa at a lever of 120 mm.
    [Fact]
    public void A_tenon_bears_what_beam_bending_says()
    {
        Piece piece = Bowl with { Shape = Bowl.Shape! with { Holding = new() { Kind = HoldingKind.Tenon, Diameter = Length.Parse("2 in"), Length = AnyPiece.Mm(8) } } };
        Figure bears = Of(piece).Find("holding-bears")!;
        double tension = bears.Why.Inputs.First(i => i.Symbol == "σt").Value, lever = bears.Why.Inputs.First(i => i.Symbol == "L").Value;
        Assert.Equal(108, lever, 1e-9);
        Assert.Equal(tension * 0.7854 * 25.4 * 25.4 * 25.4 / lever, bears.Value, 1e-4 * bears.Value);
    }

    [Fact]
    public void A_narrow_tenon_a_misfit_and_a_small_lathe_are_told()
    {
        Piece narrow = Bowl with { Shape = Bowl.Shape! with { Holding = new() { Kind = HoldingKind.Tenon, Diameter = AnyPiece.Mm(12), Length = AnyPiece.Mm(6) } } };
        Shop shop = Shop.Starting with
        {
            Lathe = new()
            {
                Swing = AnyPiece.Mm(200),
                Between = AnyPiece.Mm(90),
                SlowestTurns = 900,
                Jaws = new() { TenonFrom = AnyPiece.Mm(45), TenonTo = AnyPiece.Mm(65), RecessFrom = AnyPiece.Mm(50), RecessTo = AnyPiece.Mm(75) },
            },
        };
        Plan plan = Planner.Plan(narrow, shop);
        string[] said = [.. LathePlan.Of(plan).Doubts.Select(d => d.Sentence.In(MeasureStyle.Millimetres))];
        Assert.Contains(said, s => s.StartsWith("The blank is 224", StringComparison.Ordinal));
        Assert.Contains(said, s => s.StartsWith("The stack is 108 mm high and the lathe takes 90 mm", StringComparison.Ordinal));
        Assert.Contains(said, s => s.Contains("slowest speed is 900 rpm", StringComparison.Ordinal));
        Assert.Contains(said, s => s.Contains("does not fit the jaws: they grip 45 mm to 65 mm", StringComparison.Ordinal));
        Assert.Contains(said, s => s.Contains("breaks the tenon", StringComparison.Ordinal));
        string[] everywhere = [.. plan.Findings.Select(f => f.Sentence.In(MeasureStyle.Millimetres))];
        Assert.All(said, s => Assert.Contains(s, everywhere));
        Assert.Empty(LathePlan.Of(Planner.Plan(Bowl, Shop.Starting)).Doubts);
    }

    [Theory]
    [InlineData("\"roughCut\": \"0 mm\"", "lathe.roughCut")]
    [InlineData("\"drillPoint\": \"20°\"", "lathe.drillPoint")]
    [InlineData("\"toolForce\": 0", "lathe.toolForce")]
    [InlineData("\"drills\": [\"6 mm\", \"0.1 mm\"]", "lathe.drills")]
    [InlineData("\"jaws\": { \"tenonFrom\": \"60 mm\", \"tenonTo\": \"50 mm\", \"recessFrom\": \"50 mm\", \"recessTo\": \"60 mm\" }", "lathe.jaws.tenonTo")]
    public void A_lathe_that_cannot_be_is_refused_with_its_field(string field, string where)
    {
        string json = $$"""{ "format": "ringwright/shop", "version": 1, "name": "Test", "lathe": { {{field}} } }""";
        Assert.StartsWith(where, Assert.Throws<BadInputException>(() => DocumentJson.ReadShop(json)).Message, StringComparison.Ordinal);
    }

    private static LathePlan Of(Piece piece) => LathePlan.Of(Planner.Plan(piece, Shop.Starting));

    private static Plan Stack(PieceKind kind, double diameter, double height, int segments, int rings, double allowance, double left, double cut)
    {
        Shape shape = StartingShapes.Of(kind, AnyPiece.Mm(Math.Round(diameter, 1)), AnyPiece.Mm(Math.Round(height, 1)));
        var form = TurnedForm.Of(shape);
        double thick = form.Top / rings, floor = form.Corners.Where(z => z < form.Top && form.Inner(z, Side.Above) > 0).DefaultIfEmpty(form.Bottom).First();
        Shop shop = Shop.Starting with
        {
            Wanted = new() { Allowance = AnyPiece.Mm(allowance) },
            Boards = new() { Length = AnyPiece.Mm(2000) },
            Lathe = new() { FinishAllowance = AnyPiece.Mm(left), RoughCut = AnyPiece.Mm(cut) },
        };
        Ring Ring(int i) => i * thick <= floor
            ? new WedgeDisc { Name = $"Ring {i + 1}", Segments = segments, Thickness = AnyPiece.Mm(thick), Woods = ["maple"] }
            : new SegmentRing { Name = $"Ring {i + 1}", Segments = segments, Thickness = AnyPiece.Mm(thick), Woods = ["maple"] };
        return Planner.Plan(new() { Name = "Test", Kind = kind, Shape = shape, Rings = [.. Enumerable.Range(0, rings).Select(Ring)] }, shop);
    }
}
