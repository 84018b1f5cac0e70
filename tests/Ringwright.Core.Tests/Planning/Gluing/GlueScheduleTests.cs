using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Tests.Planning.Gluing;

public class GlueScheduleTests
{
    public static TheoryData<string> Pieces => [.. Directory.GetFiles(Path.Combine(SolutionFolder.Path, "examples"), "*.json").Where(f => File.ReadAllText(f).Contains("\"ringwright/piece\"", StringComparison.Ordinal)).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Pieces))]
    public void Examples_have_a_schedule_that_can_be_kept(string file)
    {
        Piece piece = DocumentJson.ReadPiece(File.ReadAllText(Path.Combine(SolutionFolder.Path, "examples", file)));
        Shop small = DocumentJson.ReadShop(File.ReadAllText(Path.Combine(SolutionFolder.Path, "examples/small-shop.json")));
        foreach (Shop shop in new[] { Shop.Starting, small })
        {
            var schedule = GlueSchedule.Quick(GluePlan.Of(Planner.Plan(piece, shop)));
            Assert.True(schedule.Work.IsFeasible());
            Assert.InRange(schedule.Work.LowerBound, 0, schedule.Work.Makespan);
            Assert.Equal(schedule.Tasks.Length, schedule.InOrder.Count());
        }
    }

    // One disc of 12: 8 min of gluing, a day to cure, 10 min to flatten.
    [Fact]
    public void A_single_disc_takes_its_glue_a_day_and_its_flattening()
    {
        var disc = new WedgeDisc { Name = "Disc", Segments = 12, Diameter = AnyPiece.Mm(20), Thickness = AnyPiece.Mm(20), Woods = ["oak"] };
        var schedule = GlueSchedule.Quick(GluePlan.Of(Planner.Plan(new() { Name = "Disc", Rings = [disc] }, Shop.Starting)));
        Assert.Equal(8 + (24 * 60) + 10, schedule.Work.Makespan);
        Assert.True(schedule.Work.IsShortest);
        Assert.Equal(18, schedule.Hands);
        Assert.Equal(24 * 60, schedule.Waiting);
    }

    [Fact]
    public void In_sessions_the_hands_work_by_day_only()
    {
        Shop shop = Shop.Starting with { Gluing = new() { Session = Duration.Parse("30 min"), BandClamps = 4 } };
        WedgeDisc Disc(int i) => new() { Name = $"Disc {i}", Segments = 12, Diameter = AnyPiece.Mm(20), Thickness = AnyPiece.Mm(20), Woods = ["oak"] };
        var schedule = GlueSchedule.Quick(GluePlan.Of(Planner.Plan(new() { Name = "Stack", Rings = [Disc(1), Disc(2), Disc(3), Disc(4), Disc(5)] }, shop)));
        Assert.True(schedule.Work.IsFeasible());
        Assert.All(schedule.InOrder, t => Assert.InRange((t.Start % 1440) + t.Task.Hands, 0, 30));
        Assert.StartsWith("day 2, 0:", schedule.Clock(1445), StringComparison.Ordinal);
    }

    [Fact]
    public void More_clamps_are_advised_where_they_are_what_is_waited_for()
    {
        Piece piece = DocumentJson.ReadPiece(File.ReadAllText(Path.Combine(SolutionFolder.Path, "examples/picture-vase.json")));
        Shop small = DocumentJson.ReadShop(File.ReadAllText(Path.Combine(SolutionFolder.Path, "examples/small-shop.json")));
        var schedule = GlueSchedule.Quick(GluePlan.Of(Planner.Plan(piece, small)));
        Assert.Contains("4 band clamps", Assert.Single(schedule.Helps()).In(MeasureStyle.Millimetres), StringComparison.Ordinal);
    }
}
