using Ringwright.Core.Sawing;

namespace Ringwright.Core.Tests.Sawing;

/// <summary>What a jig does to the wedges must follow from how it holds the board.</summary>
public class JigTests
{
    private const double Lean = 0.4 * Example.Degree;

    [Theory]
    [InlineData(10, 10)]
    [InlineData(20, 0)]
    [InlineData(0, 20)]
    [InlineData(13.2, 6.8)]
    public void On_two_fences_only_the_sum_counts(double first, double second)
    {
        SawRun run = SawSimulator.Run(Example.Job(Example.Sled(first * Example.Degree, second * Example.Degree)));
        Assert.All(run.Wedges, wedge => Assert.Equal(20 * Example.Degree, wedge.Angle, 13));
        Assert.Equal(2 * Math.PI, Example.SumOfAngles(run), 12);
    }

    [Fact]
    public void Opposite_errors_of_two_fences_cancel_and_equal_ones_add()
    {
        const double error = 0.2 * Example.Degree;
        var opposite = new TwoFenceSled(new(Example.Half, error), new(Example.Half, -error));
        var equal = new TwoFenceSled(new(Example.Half, error), new(Example.Half, error));
        Assert.All(SawSimulator.Run(Example.Job(opposite)).Wedges, w => Assert.Equal(2 * Example.Half, w.Angle, 13));
        Assert.All(SawSimulator.Run(Example.Job(equal)).Wedges, w => Assert.Equal((2 * Example.Half) + (2 * error), w.Angle, 13));
    }

    [Fact]
    public void On_a_flipped_board_the_fences_error_doubles()
    {
        const double error = 0.2 * Example.Degree;
        SawRun run = SawSimulator.Run(Example.Job(new FlippedMitre(new(Example.Half, error))));
        Assert.All(run.Wedges, wedge => Assert.Equal(2 * (Example.Half + error), wedge.Angle, 13));
    }

    [Fact]
    public void Never_turned_over_lean_shears_the_wedge_and_its_section_is_the_same_at_every_height()
    {
        foreach (SawnWedge wedge in SawSimulator.Run(Example.Leaning(Example.Sled(), Lean)).Wedges)
        {
            Assert.Equal(2 * Example.Half, wedge.Angle, 13);
            Assert.Equal(0, wedge.Taper, 14);
            Assert.Equal(wedge.RimLength(0), wedge.RimLength(Example.Thickness), 11);
            Assert.Equal(wedge.TipLength(0), wedge.TipLength(Example.Thickness), 11);
            Assert.Equal(Math.Sin(Lean), Math.Abs(wedge.PlusFace.Normal.Z), 14);
        }
    }

    // Each face leans by tan(lean)/cos(angle) along the edge: unequal angles leave the difference, second order in all.
    [Fact]
    public void With_unequal_fences_the_shear_leaves_the_angle_and_changes_the_size_by_the_difference_of_secants()
    {
        double expected = Example.Thickness * Math.Tan(Lean) * ((1 / Math.Cos(20 * Example.Degree)) - 1);
        SawRun run = SawSimulator.Run(Example.Leaning(Example.Sled(20 * Example.Degree, 0), Lean));
        Assert.All(run.Wedges, wedge =>
        {
            Assert.Equal(20 * Example.Degree, wedge.Angle, 13);
            Assert.Equal(expected, Math.Abs(wedge.RimLength(0) - wedge.RimLength(Example.Thickness)), 10);
        });
    }

    [Fact]
    public void Flipped_lean_narrows_every_wedge_upwards_as_it_fell()
    {
        double expected = 2 * Example.Thickness * Math.Tan(Lean) / Math.Cos(Example.Half);
        SawRun run = SawSimulator.Run(Example.Leaning(Example.Mitre(), Lean));
        Assert.All(run.Wedges, wedge =>
        {
            Assert.Equal(2 * Example.Half, wedge.Angle, 13);
            Assert.Equal(expected, wedge.RimLength(0) - wedge.RimLength(Example.Thickness), 10);
            Assert.Equal(2 * Math.Tan(Lean), wedge.Taper, 12);
        });
    }

    [Fact]
    public void Flipped_wedges_as_they_fell_all_open_the_ring_on_one_face()
    {
        SawRun run = SawSimulator.Run(Example.Leaning(Example.Mitre(), Lean));
        for (int i = 1; i < run.Wedges.Length; i++)
            Assert.Equal(2 * Math.Sin(Lean), Opening(run.Wedges[i - 1], run.Wedges[i]), 13);
    }

    [Fact]
    public void Flipped_wedges_mate_when_every_second_one_is_turned_over()
    {
        SawRun run = SawSimulator.Run(Example.Leaning(Example.Mitre(), Lean));
        for (int i = 1; i < run.Wedges.Length; i++)
        {
            SawnWedge a = i % 2 == 0 ? run.Wedges[i - 1].TurnedOver() : run.Wedges[i - 1];
            SawnWedge b = i % 2 == 1 ? run.Wedges[i].TurnedOver() : run.Wedges[i];
            Assert.Equal(a.Marks.Up, b.Marks.Up);
            Assert.Equal(0, Opening(a, b), 13);
        }
    }

    [Fact]
    public void Sheared_wedges_mate_with_every_second_one_and_open_at_top_and_bottom_in_turn_in_the_order_of_sawing()
    {
        SawRun run = SawSimulator.Run(Example.Leaning(Example.Sled(), Lean));
        for (int i = 2; i < run.Wedges.Length; i++)
        {
            Assert.Equal(0, Opening(run.Wedges[i - 2], run.Wedges[i]), 13);
            double here = Opening(run.Wedges[i - 1], run.Wedges[i]);
            Assert.Equal(2 * Math.Sin(Lean), Math.Abs(here), 13);
            Assert.Equal(-here, Opening(run.Wedges[i - 2], run.Wedges[i - 1]), 13);
        }
    }

    [Fact]
    public void Turning_a_wedge_over_keeps_a_shear_and_mirrors_a_taper()
    {
        SawnWedge sheared = SawSimulator.Run(Example.Leaning(Example.Sled(), Lean)).Wedges[4];
        Assert.Equal(sheared.PlusFace.Normal.Z, sheared.TurnedOver().PlusFace.Normal.Z, 13);
        SawnWedge tapered = SawSimulator.Run(Example.Leaning(Example.Mitre(), Lean)).Wedges[4];
        Assert.Equal(-tapered.Taper, tapered.TurnedOver().Taper, 13);
        SawnWedge twice = tapered.TurnedOver().TurnedOver();
        Assert.Equal(tapered.Marks, twice.Marks);
        Assert.Equal(0, (tapered.InBoard.Origin - twice.InBoard.Origin).Length, 12);
    }

    [Fact]
    public void Every_wedge_is_marked_with_its_sides_and_cuts()
    {
        SawRun sled = SawSimulator.Run(Example.Job(Example.Sled(), 1, 2));
        Assert.Equal(new PieceMarks(1, BoardSide.Top, BoardEdge.Edge2, 2, 1), sled.Wedges[0].Marks);
        Assert.Equal(new PieceMarks(2, BoardSide.Top, BoardEdge.Edge1, 2, 3), sled.Wedges[1].Marks);
        SawRun mitre = SawSimulator.Run(Example.Job(Example.Mitre(), 1, 2));
        Assert.Equal(new PieceMarks(1, BoardSide.Bottom, BoardEdge.Edge2, 1, 2), mitre.Wedges[0].Marks);
        Assert.Equal(new PieceMarks(2, BoardSide.Top, BoardEdge.Edge1, 2, 3), mitre.Wedges[1].Marks);
    }

    // The angle, in height, between two faces that should lie on each other: positive opens upwards.
    private static double Opening(SawnWedge a, SawnWedge b) => a.PlusFace.Normal.Z + b.MinusFace.Normal.Z;
}
