using Ringwright.Web.Floor;

namespace Ringwright.Web.Tests.Floor;

/// <summary>What taps at the saw come to.</summary>
public class CutTallyTests
{
    private const string Cut = "1/maple";

    [Fact]
    public void Wedges_fall_are_lost_and_found_bad()
    {
        CutTally tally = CutTally.Of(Marks(MarkKind.Sawn, MarkKind.Sawn, MarkKind.Lost, MarkKind.Bad), Cut);
        Assert.Equal((1, 2, 3, 3), (tally.Good, tally.Lost, tally.Sawn, tally.InBoard));
        Assert.Equal(0, tally.SparesLeft(12, 14));
        Assert.Equal(1, tally.SparesLeft(12, 15));
    }

    [Fact]
    public void Undo_takes_back_one_mark_after_the_other()
    {
        List<Mark> marks = [.. Marks(MarkKind.Sawn, MarkKind.Lost)];
        for (int i = 0; i < 2; i++) marks.Add(new("u" + i, Cut, MarkKind.Undone, 100 + i, CutTally.Of(marks, Cut).Last!.Id));
        Assert.Equal(CutTally.None, CutTally.Of(marks, Cut));
    }

    [Fact]
    public void The_order_in_which_marks_arrive_does_not_matter()
    {
        Mark[] marks = [.. Marks(MarkKind.Sawn, MarkKind.Sawn, MarkKind.Board, MarkKind.Lost)];
        Assert.Equal(CutTally.Of(marks, Cut), CutTally.Of(marks.Reverse(), Cut));
        Assert.Equal(1, CutTally.Of(marks, Cut).InBoard);
    }

    [Fact]
    public void What_is_recorded_is_not_recorded_again_and_stays_counted()
    {
        CutTally tally = CutTally.Of(Marks(MarkKind.Sawn, MarkKind.Lost, MarkKind.Recorded, MarkKind.Sawn), Cut);
        Assert.Equal((2, 1, 1, 0), (tally.Good, tally.Lost, tally.NewCuts, tally.NewLost));
        Assert.Null(CutTally.Of(Marks(MarkKind.Sawn, MarkKind.Recorded), Cut).Last);
    }

    [Fact]
    public void Other_wedges_are_not_counted_and_nothing_good_cannot_be_bad()
    {
        Assert.Equal(CutTally.None, CutTally.Of(Marks(MarkKind.Sawn), "1/walnut"));
        Assert.Equal(CutTally.None, CutTally.Of(Marks(MarkKind.Bad), Cut));
    }

    [Fact]
    public void What_is_taken_back_can_be_done_again()
    {
        Mark[] marks = [.. Marks(MarkKind.Sawn, MarkKind.Sawn), new("u", Cut, MarkKind.Undone, 50, "m1"), new("again", Cut, MarkKind.Undone, 5, "u")];
        Assert.Equal(2, CutTally.Of(marks, Cut).Good);
        // Two that take each other back, which nobody makes, take nothing else with them.
        Assert.Equal(2, CutTally.Of([.. Marks(MarkKind.Sawn, MarkKind.Sawn), new("a", Cut, MarkKind.Undone, 5, "b"), new("b", Cut, MarkKind.Undone, 6, "a")], Cut).Good);
    }

    [Fact]
    public void Cuts_of_a_tablet_that_was_away_are_still_new_to_the_record()
    {
        Mark recorded = new("r", Cut, MarkKind.Recorded, 100) { Cuts = 2, Lost = 0 };
        CutTally tally = CutTally.Of([.. Marks(MarkKind.Sawn, MarkKind.Sawn), recorded, new("late", Cut, MarkKind.Lost, 50)], Cut);
        Assert.Equal((2, 1, 1, 1), (tally.Good, tally.Lost, tally.NewCuts, tally.NewLost));
    }

    [Fact]
    public void A_cleared_count_begins_anew_and_its_cuts_can_still_be_recorded()
    {
        CutTally tally = CutTally.Of(Marks(MarkKind.Sawn, MarkKind.Lost, MarkKind.Cleared, MarkKind.Sawn), Cut);
        Assert.Equal((1, 0, 1, 3, 1), (tally.Good, tally.Lost, tally.InBoard, tally.NewCuts, tally.NewLost));
        Assert.Equal(MarkKind.Cleared, CutTally.Of(Marks(MarkKind.Sawn, MarkKind.Cleared), Cut).Last!.Kind);
    }

    private static IEnumerable<Mark> Marks(params MarkKind[] kinds) => kinds.Select((kind, i) => new Mark("m" + i, Cut, kind, i));
}
