using Ringwright.Core.Sawing;

namespace Ringwright.Core.Tests.Sawing;

public class BadSawInputTests
{
    private static readonly SawJob Good = Example.Job(Example.Sled());

    public static TheoryData<SawJob, string> Bad => new()
    {
        { Good with { Wanted = 0 }, "wedges wanted" },
        { Good with { Board = Good.Board with { Length = double.NaN } }, "board length" },
        { Good with { Board = Good.Board with { Width = -3 } }, "board width" },
        { Good with { Board = Good.Board with { Thickness = 0.1 } }, "board thickness" },
        { Good with { Board = Good.Board with { WidthChange = -12.6 } }, "board width at the far end" },
        { Good with { Board = Good.Board with { ThicknessChange = 40 } }, "board thickness at the far end" },
        { Good with { Saw = Good.Saw with { Kerf = -0.1 } }, "kerf" },
        { Good with { Saw = Good.Saw with { Kerf = double.PositiveInfinity } }, "kerf" },
        { Good with { Saw = Good.Saw with { StopDistance = 0 } }, "stop distance" },
        { Good with { Saw = Good.Saw with { BladeLean = 1 } }, "blade lean" },
        { Good with { Saw = Good.Saw with { HoldingLength = double.NaN } }, "holding length" },
        { Good with { Saw = Good.Saw with { Jig = Example.Sled(0, 0) } }, "wedge angle" },
        { Good with { Saw = Good.Saw with { Jig = Example.Mitre(-0.1) } }, "first fence: angle" },
        { Good with { Saw = Good.Saw with { Jig = new TwoFenceSled(new(0.2), new(0.2, 0.3)) } }, "second fence: error" },
        { Good with { Variation = new() { SeatingDeviation = -0.001 } }, "seating error: deviation" },
        { Good with { Variation = new() { StopDeviation = 2 } }, "stop error: deviation" },
        { Good with { Variation = new() { KerfDeviation = 0.2 } }, "kerf wander: deviation" },
        { Good with { Sander = new(new(0.2), -1) }, "sander: oversize" },
        { Good with { Sanding = Sanding.Both(new(-0.1, 0)) }, "sanding, -y face: removal at the rim" },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void Bad_input_is_told_by_its_place(SawJob job, string where)
    {
        var bad = Assert.Throws<BadInputException>(() => SawSimulator.Run(job));
        Assert.StartsWith(where, bad.Where, StringComparison.Ordinal);
        Assert.DoesNotContain("\n", bad.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_sentence_says_what_would_be_right()
    {
        var bad = Assert.Throws<BadInputException>(() => SawSimulator.Run(Good with { Saw = Good.Saw with { Kerf = -0.1 } }));
        Assert.Equal("kerf: -0.1 mm is out of range; give 0 to 50 mm.", bad.Message);
    }

    [Fact]
    public void A_board_too_short_for_one_wedge_is_an_answer_not_an_error()
    {
        SawRun run = SawSimulator.Run(Good with { Saw = Good.Saw with { HoldingLength = 299 } });
        Assert.Equal(StopReason.LengthUsedUp, run.Reason);
        Assert.Empty(run.Wedges);
        Assert.StartsWith("0 of 18 wedges", run.Explanation, StringComparison.Ordinal);
    }

    [Fact]
    public void A_test_cut_needs_a_board_long_enough_for_it()
    {
        SawSetup saw = Good.Saw with { HoldingLength = 290 };
        Assert.Equal("test cut", Assert.Throws<BadInputException>(() => TestCut.Pictures(Good.Board, saw, 0.4)).Where);
        Assert.Equal("test cut: stop offset", Assert.Throws<BadInputException>(() => TestCut.Pictures(Good.Board, Good.Saw, 0)).Where);
    }
}
