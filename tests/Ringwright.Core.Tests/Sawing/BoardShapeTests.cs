using Ringwright.Core.Geometry;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Tests.Sawing;

/// <summary>Boards that are not parallel.</summary>
public class BoardShapeTests
{
    private const double Change = 0.6;

    // Edge 2 leans against edge 1 by atan(change / length); a sled takes one cut from each, so every wedge gets it whole.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_board_wider_at_the_far_end_changes_every_wedge_by_the_angle_between_its_edges(bool sled)
    {
        SawJob job = Example.Job(sled ? Example.Sled() : Example.Mitre());
        SawRun run = SawSimulator.Run(job with { Board = job.Board with { WidthChange = Change } });
        double between = Math.Atan(Change / job.Board.Length);
        Assert.All(run.Wedges, wedge => Assert.Equal((2 * Example.Half) - between, wedge.Angle, 12));
    }

    [Fact]
    public void Uneven_thickness_never_matters_to_the_joints_when_the_board_is_not_turned()
    {
        SawJob job = Example.Job(Example.Sled());
        SawRun run = SawSimulator.Run(job with { Board = job.Board with { ThicknessChange = Change } });
        Assert.All(run.Wedges, wedge =>
        {
            Assert.Equal(2 * Example.Half, wedge.Angle, 13);
            Assert.Equal(0, wedge.PlusFace.Normal.Z, 13);
        });
    }

    [Fact]
    public void Uneven_thickness_leans_one_face_of_every_flipped_wedge()
    {
        SawJob job = Example.Job(Example.Mitre());
        SawRun run = SawSimulator.Run(job with { Board = job.Board with { ThicknessChange = Change } });
        double slope = Change / job.Board.Length * Math.Cos(Example.Half);
        Assert.All(run.Wedges, wedge => Assert.Equal(slope, Math.Abs(wedge.Taper), 5));
    }

    [Fact]
    public void The_boards_volume_formula_is_the_solids()
    {
        var board = new BoardBlank(300, 13, 30) { WidthChange = -0.7, ThicknessChange = 1.3 };
        Assert.Equal(board.Volume, board.Solid().Volume, 7);
        Assert.InRange(Geometry.SolidChecks.Proud(board.Solid()), -1, 1e-12);
        foreach (HalfSpace plane in board.Solid().Planes) Assert.Equal(1, plane.Normal.Length, 12);
    }

    [Fact]
    public void A_wedge_remembers_where_in_the_board_it_was()
    {
        SawRun run = SawSimulator.Run(Example.Job(Example.Mitre()));
        double last = double.NegativeInfinity;
        foreach (SawnWedge wedge in run.Wedges)
        {
            ConvexSolid back = wedge.Solid.ToOuter(wedge.InBoard);
            for (int i = 0; i < back.Corners.Length; i++)
                Assert.Equal(0, (back.Corners[i] - wedge.AsSawn.Corners[i]).Length, 10);
            Assert.True(wedge.InBoard.Origin.X > last);
            last = wedge.InBoard.Origin.X;
        }
    }
}
