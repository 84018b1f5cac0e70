using System.Text.Json;

namespace Ringwright.Cli.Tests;

public sealed class PlanCommandTests : IDisposable
{
    private static readonly string Disc = Path.Combine(Runs.Examples, "two-wood-disc.json");
    private readonly Runs _runs = new();

    public void Dispose() => _runs.Dispose();

    [Fact]
    public void Prints_the_answer_first_and_the_numbers_to_set()
    {
        (int code, string output, string complaints) = Runs.Run("plan", Disc);
        Assert.Equal(0, code);
        Assert.Empty(complaints);
        Assert.StartsWith("It closes at the first try", output.Split('\n')[1], StringComparison.Ordinal);
        Assert.Contains("9.5 mm", output, StringComparison.Ordinal);
        Assert.Contains("7.5°", output, StringComparison.Ordinal);
        Assert.DoesNotContain("\u001b", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Speaks_inches_when_asked()
    {
        (_, string output, _) = Runs.Run("plan", Disc, "--units", "in");
        Assert.Contains("≈ 3/8 in (0.374)", output, StringComparison.Ordinal);
        (_, output, _) = Runs.Run("plan", Disc, "--units", "in", "--decimals");
        Assert.Contains("0.374 in", output, StringComparison.Ordinal);
        Assert.DoesNotContain("3/8", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Writes_plan_and_cut_list()
    {
        (int code, string output, _) = Runs.Run("plan", Disc, "--out", _runs.At("out"));
        Assert.Equal(0, code);
        using JsonDocument plan = JsonDocument.Parse(File.ReadAllText(_runs.At("out/two-wood-disc.plan.json")));
        Assert.Equal("Two-wood disc", plan.RootElement.GetProperty("piece").GetString());
        Assert.Equal(3, File.ReadAllLines(_runs.At("out/two-wood-disc.cut-list.csv")).Length);
        Assert.Contains("two-wood-disc.plan.json", output, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(_runs.At("out"), "*.part"));
    }

    [Fact]
    public void Explains_a_figure_with_formula_values_and_source()
    {
        (int code, string output, _) = Runs.Run("explain", Disc, "board-width");
        Assert.Equal(0, code);
        Assert.Contains("board-width = Ao − Ai", output, StringComparison.Ordinal);
        Assert.Contains("Source:", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Lists_all_figures_without_a_name()
    {
        (_, string output, _) = Runs.Run("explain", Disc);
        Assert.True(output.Split('\n').Length > 20);
    }

    [Fact]
    public void Check_says_the_verdict()
    {
        (int code, string output, _) = Runs.Run("check", Disc);
        Assert.Equal(0, code);
        Assert.Contains("It closes at the first try", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_answers_1_when_something_will_probably_go_wrong()
    {
        string file = _runs.Write("jump.json", File.ReadAllText(Disc).Replace("\"segments\": 24", "\"segments\": 25", StringComparison.Ordinal));
        Assert.Equal(1, Runs.Run("check", file).Code);
    }
}
