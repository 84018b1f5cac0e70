using Ringwright.Web.Bench;

namespace Ringwright.Web.Tests.Bench;

public class HistoryTests
{
    [Fact]
    public void Steps_can_be_undone_and_made_again()
    {
        History<int> history = new History<int>(1).To(2).To(3);
        Assert.Equal(2, history.Undone().Now);
        Assert.Equal(1, history.Undone().Undone().Now);
        Assert.Equal(3, history.Undone().Undone().Redone().Redone().Now);
    }

    [Fact]
    public void Steps_go_back_to_the_first_and_the_long_past_is_folded()
    {
        var folded = new HashSet<int>();
        int unfolded = 0;
        var history = new History<int>(1, s => { Assert.True(folded.Add(s)); return -s; }, s => { unfolded++; return -s; });
        int steps = History<int>.Whole * 10;
        for (int i = 2; i <= steps; i++)
        {
            history = history.To(i);
            if (i % 7 == 0) history = history.Undone().Redone();
        }

        Assert.InRange(folded.Count, steps - History<int>.Whole - 51, steps - History<int>.Whole);
        for (int back = 0; back < steps - 1; back++)
        {
            Assert.Equal(steps - back, history.Now);
            history = history.Undone();
        }

        Assert.Equal((1, false, folded.Count), (history.Now, history.CanUndo, unfolded));
    }

    [Fact]
    public void Forth_again_from_the_long_past_all_states_come_back()
    {
        int steps = History<int>.Whole * 3;
        var history = new History<int>(1, s => -s, s => -s);
        for (int i = 2; i <= steps; i++) history = history.To(i);
        while (history.CanUndo) history = history.Undone();
        for (int i = 1; i < steps; i++, history = history.Redone()) Assert.Equal(i, history.Now);
        Assert.Equal((steps, false), (history.Now, history.CanRedo));
    }

    [Fact]
    public void At_either_end_nothing_happens()
    {
        var history = new History<int>(1);
        Assert.False(history.CanUndo);
        Assert.False(history.CanRedo);
        Assert.Same(history, history.Undone());
        Assert.Same(history, history.Redone());
    }

    [Fact]
    public void A_new_step_after_undo_drops_what_was_undone()
    {
        History<int> history = new History<int>(1).To(2).Undone().To(3);
        Assert.False(history.CanRedo);
        Assert.Equal(1, history.Undone().Now);
    }

    [Fact]
    public void A_run_of_keystrokes_is_one_step()
    {
        History<string> history = new History<string>("").To("1", "field").To("19", "field").To("19 mm", "field");
        Assert.Equal("", history.Undone().Now);
    }

    [Fact]
    public void Another_field_or_a_pause_begins_a_new_step()
    {
        History<string> history = new History<string>("").To("a", "one").To("b", "two").Sealed().To("c", "two");
        Assert.Equal("b", history.Undone().Now);
        Assert.Equal("a", history.Undone().Undone().Now);
    }

    [Fact]
    public void Typing_after_undo_does_not_swallow_the_state_it_began_from()
    {
        History<string> history = new History<string>("").To("a", "field").Sealed().To("b", "field").Undone().To("c", "field");
        Assert.Equal("a", history.Undone().Now);
    }
}
