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

    [Theory]
    [InlineData("two-wood-disc", null, "/MediaBox [0 0 595", "19 mm")]
    [InlineData("walnut-ring", null, "/MediaBox [0 0 612", "in</text>")]
    [InlineData("two-wood-disc", "Letter", "/MediaBox [0 0 612", "19 mm")]
    [InlineData("walnut-ring", "a4", "/MediaBox [0 0 595", "in</text>")]
    public void Writes_job_sheet_and_picture_on_the_paper_that_goes_with_the_piece(string piece, string? paper, string page, string drawn)
    {
        string[] options = paper is null ? [] : ["--paper", paper];
        (int code, string output, _) = Runs.Run(["plan", Path.Combine(Runs.Examples, piece + ".json"), "--out", _runs.At("out"), .. options]);
        Assert.Equal(0, code);
        string pdf = File.ReadAllText(_runs.At($"out/{piece}.job-sheet.pdf"), System.Text.Encoding.Latin1);
        Assert.StartsWith("%PDF", pdf, StringComparison.Ordinal);
        Assert.Contains(page, pdf, StringComparison.Ordinal);
        string picture = File.ReadAllText(_runs.At($"out/{piece}.ring.svg"));
        Assert.Contains(drawn, System.Xml.Linq.XElement.Parse(picture).ToString(System.Xml.Linq.SaveOptions.DisableFormatting), StringComparison.Ordinal);
        Assert.Contains($"{piece}.job-sheet.pdf", output, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_paper_is_refused_before_anything_is_written()
    {
        (int code, string output, string complaints) = Runs.Run("plan", Disc, "--out", _runs.At("out"), "--paper", "a3");
        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Contains("a4 or letter", complaints, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_runs.At("out")));
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
