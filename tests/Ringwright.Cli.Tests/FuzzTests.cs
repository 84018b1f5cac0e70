using Ringwright.Fuzz;
using Ringwright.Fuzz.Running;

namespace Ringwright.Cli.Tests;

/// <summary>A short run of tests/Ringwright.Fuzz with a fixed seed; the long ones are run by its own command.</summary>
public sealed class FuzzTests
{
    [Theory]
    [InlineData("lengths", 4000)]
    [InlineData("angles", 1500)]
    [InlineData("times", 1500)]
    [InlineData("temperatures", 1500)]
    [InlineData("readings", 1500)]
    [InlineData("patterns", 300)]
    [InlineData("documents", 250)]
    [InlineData("plans", 8)]
    [InlineData("tables", 200)]
    [InlineData("pictures", 200)]
    [InlineData("databases", 15)]
    [InlineData("commands", 10)]
    public void Random_and_mutated_input_is_taken_or_refused_in_one_sentence(string name, int cases)
    {
        using Kind kind = AllKinds.Named(name);
        FuzzReport report = new FuzzRun(kind, seed: 20_260, _ => { }) { Slow = null }.Go(cases);
        Assert.Equal(cases, report.Cases);
        Assert.True(report.Taken > 0 && report.Taken < cases || name is "plans" or "databases" or "commands", report.Line);
        Assert.True(report.Findings.Count == 0, string.Join('\n', report.Findings.Select(f => $"case {f.Case}: {f.What}\n{f.Input}")));
    }

    [Fact]
    public void Every_kind_has_a_short_run() =>
        Assert.Equal(AllKinds.Names.Order(), typeof(FuzzTests).GetMethod(nameof(Random_and_mutated_input_is_taken_or_refused_in_one_sentence))!
            .GetCustomAttributes(typeof(InlineDataAttribute), false).Cast<InlineDataAttribute>().Select(d => (string)d.Data[0]!).Order());

    [Fact]
    public void A_broken_promise_is_found_and_made_as_simple_as_can_be()
    {
        using var kind = new NoSevens();
        FuzzReport report = new FuzzRun(kind, 1, _ => { }).Go(200);
        Finding finding = Assert.Single(report.Findings);
        Assert.Equal("7", finding.Input);
        Assert.True(finding.Times > 10);
        Assert.Contains("no text has a seven", finding.What, StringComparison.Ordinal);
    }

    private sealed class NoSevens : Kind
    {
        public override string Name => "sevens";

        public override string Make(Fuzz.Making.Dice dice) => dice.Digits(dice.From(1, 12));

        public override void Check(string input) => Promise.That(!input.Contains('7', StringComparison.Ordinal), "no text has a seven", $"{input}");
    }
}
