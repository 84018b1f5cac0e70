using CsCheck;
using Ringwright.Core.Fitting;
using Ringwright.Stock.Choosing;

namespace Ringwright.Stock.Tests.Choosing;

public class ChooserTests
{
    private static readonly string[] Woods = ["maple", "walnut", "cherry"];

    private static readonly Gen<WedgeChoiceInput> Inputs =
        from length in Gen.Int[0, 3]
        from repeats in Gen.Int[2, 5]
        from spares in Gen.Int[0, 5]
        from seed in Gen.Int[0, 99_999]
        from halves in Gen.Bool
        from bias in Gen.Double[-3, 3]
        let places = Math.Max(4, Math.Max(1, length) * repeats)
        let even = halves && places % 2 == 0
        let pattern = length == 0 || places % length != 0 ? null : Woods[..length]
        select Readings.Make(places, spares, seed, pattern, even ? Closing.Halves : Closing.Whole, bias);

    private static WedgeChoice Choose(WedgeChoiceInput input) => new WedgeChooser().Choose(input, cancel: TestContext.Current.CancellationToken);

    [Fact]
    public void A_choice_uses_each_wedge_once_and_keeps_the_pattern() => Inputs.Sample(
        input =>
        {
            var choice = Choose(input);
            var numbers = choice.Ring.Select(p => p.Wedge.Number).Concat(choice.LeftOver);
            return choice.Ring.Count == input.Places
                && numbers.Order().SequenceEqual(input.Wedges.Select(w => w.Number).Order())
                && choice.Ring.All(p => input.Suits(p.Wedge, p.Place - 1));
        },
        iter: 40);

    [Fact]
    public void A_choice_is_never_worse_than_taking_wedges_as_they_come() => Inputs.Sample(
        input =>
        {
            var choice = Choose(input);
            double step = choice.Before.WorstGap > input.GapStep ? Math.Ceiling(choice.Before.WorstGap / input.GapStep) * input.GapStep : input.GapStep;
            return choice.After.WorstGap <= step + 1e-9;
        },
        iter: 40);

    [Fact]
    public void Numbers_on_the_wedges_and_their_order_on_the_bench_do_not_matter() => Inputs.Sample(
        input =>
        {
            var shuffled = input with { Wedges = [.. input.Wedges.Select(w => w with { Number = 1000 - w.Number }).Reverse()] };
            return BruteForce.Score(input, Choose(input).RingOf()) == BruteForce.Score(shuffled, Choose(shuffled).RingOf());
        },
        iter: 40);

    [Fact]
    public void The_same_readings_give_the_same_ring() => Inputs.Sample(
        input => Choose(input).Ring.SequenceEqual(Choose(input).Ring), iter: 20);

    [Fact]
    public void The_ring_starts_at_its_smallest_number_when_any_place_will_do()
    {
        var ring = Choose(Readings.Make(12, 2, 4)).Ring.Select(p => p.Wedge.Number).ToList();
        Assert.Equal(ring.Min(), ring[0]);
        Assert.True(ring[1] < ring[^1]);
    }

    [Fact]
    public void Equal_wedges_close_with_the_error_of_one_times_their_number()
    {
        double angle = 2 * Math.PI / 12 + 0.001;
        double rim = 1 + 20 * Math.Tan(angle / 2);
        var input = new WedgeChoiceInput
        {
            Places = 12,
            Radius = 25,
            Depth = 10,
            Wedges = [.. Enumerable.Range(1, 14).Select(i => new CaliperReading(i, "ash", rim, 1))],
        };
        var choice = Choose(input);
        Assert.Equal(25 * 0.012, choice.After.WorstGap, 9);
        Assert.Equal(25 * 0.001, choice.After.EvenGap, 9);
        Assert.False(choice.After.OpenAtRim);
        Assert.Equal(0, choice.After.Wander, 9);
        Assert.Equal([13, 14], choice.LeftOver);
        Assert.Equal(0, choice.Gain, 9);
        Assert.Contains("no gain", choice.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_gain_that_the_caliper_cannot_tell_is_called_so()
    {
        var sharp = Readings.Make(12, 3, 2) with { CaliperSd = 0.0001 };
        Assert.True(Choose(sharp).CaliperCanTell);
        Assert.Contains("more than", Choose(sharp).Sentence, StringComparison.Ordinal);
        var blunt = sharp with { CaliperSd = 0.5 };
        Assert.False(Choose(blunt).CaliperCanTell);
        Assert.Contains("less than the caliper can tell", Choose(blunt).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Progress_comes_in_stages_and_a_cancelled_choice_stops()
    {
        var seen = new List<ChoiceProgress>();
        new WedgeChooser().Choose(Readings.Make(12, 2, 1), new Listener(seen.Add), TestContext.Current.CancellationToken);
        Assert.Equal([0, 1.0 / 3, 2.0 / 3, 1], seen.Select(p => p.Share));
        Assert.True(seen[^1].WorstGap <= seen[0].WorstGap);

        using var source = new CancellationTokenSource();
        var stop = new Listener(p =>
        {
            if (p.Share > 0) source.Cancel();
        });
        Assert.ThrowsAny<OperationCanceledException>(() => new WedgeChooser().Choose(Readings.Make(12, 2, 1), stop, source.Token));
    }

    private sealed class Listener(Action<ChoiceProgress> heard) : IProgress<ChoiceProgress>
    {
        public void Report(ChoiceProgress value) => heard(value);
    }
}
