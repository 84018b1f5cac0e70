namespace Ringwright.Cli.Tests;

public sealed class BadInputTests : IDisposable
{
    private static readonly string Good = File.ReadAllText(Path.Combine(Runs.Examples, "two-wood-disc.json"));
    private readonly Runs _runs = new();

    public void Dispose() => _runs.Dispose();

    [Theory]
    [InlineData("\"segments\": 24", "\"segments\": 2", "3 to 360 can")]
    [InlineData("\"segments\": 24", "\"segments\": 1000", "3 to 360 can")]
    [InlineData("\"segments\": 24", "\"segments\": \"many\"", "whole number")]
    [InlineData("\"19 mm\"", "\"-19 mm\"", "-19 mm cannot be")]
    [InlineData("\"19 mm\"", "\"19 km\"", "character")]
    [InlineData("\"7 mm\"", "\"20 mm\"", "smaller than the diameter")]
    [InlineData("\"bore\": \"7 mm\"", "\"boardWidth\": \"11 mm\"", "at most 9.5 mm")]
    [InlineData("\"version\": 1", "\"version\": 99", "newer Ringwright")]
    public void One_sentence_exit_code_2_and_nothing_written(string good, string bad, string says)
    {
        string file = _runs.Write("piece.json", Good.Replace(good, bad, StringComparison.Ordinal));
        string before = File.ReadAllText(file);
        (int code, string output, string complaints) = Runs.Run("plan", file, "--out", _runs.At("out"));
        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Contains(says, complaints, StringComparison.Ordinal);
        Assert.Single(complaints.TrimEnd().Split('\n'));
        Assert.Equal(before, File.ReadAllText(file));
        Assert.False(Directory.Exists(_runs.At("out")));
    }

    [Fact]
    public void A_bad_plan_leaves_earlier_output_as_it_was()
    {
        string file = _runs.Write("piece.json", Good);
        Runs.Run("plan", file, "--out", _runs.Folder);
        string before = File.ReadAllText(_runs.At("piece.plan.json"));
        _runs.Write("piece.json", Good[..100]);
        (int code, _, string complaints) = Runs.Run("plan", file, "--out", _runs.Folder);
        Assert.Equal(2, code);
        Assert.Contains("ends too early", complaints, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(_runs.At("piece.plan.json")));
    }

    [Fact]
    public void A_huge_file_is_refused_without_reading_it()
    {
        string file = _runs.At("huge.json");
        using (FileStream stream = File.Create(file)) stream.SetLength(500L * 1024 * 1024);
        (int code, _, string complaints) = Runs.Run("plan", file);
        Assert.Equal(2, code);
        Assert.Contains("at most 16 MB", complaints, StringComparison.Ordinal);
    }

    [Fact]
    public void Bytes_that_are_no_text_are_refused()
    {
        File.WriteAllBytes(_runs.At("image.json"), [0x89, 0x50, 0x4e, 0x47, 0xff, 0xfe]);
        Assert.Contains("not text", Runs.Run("plan", _runs.At("image.json")).Complaints, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plan", "nowhere.json")]
    [InlineData("dance")]
    [InlineData("plan")]
    [InlineData("new", "bowl-of-soup", "x.json")]
    [InlineData("new", "disc", "x.json", "--diameter", "wide")]
    [InlineData("new", "disc", "x.json", "--segments", "some")]
    [InlineData("plan", "x.json", "--nonsense")]
    public void Wrong_words_get_a_sentence_and_exit_code_2(params string[] args)
    {
        (int code, _, string complaints) = Runs.Run(args);
        Assert.Equal(2, code);
        Assert.NotEmpty(complaints.Trim());
        Assert.DoesNotContain("   at ", complaints, StringComparison.Ordinal);
        Assert.False(File.Exists("x.json"));
    }

    [Theory]
    [InlineData("plan", "new", "check", "explain", "simulate", "fit", "diagnose", "choose", "reach", "learn")]
    public void Every_command_can_be_asked_what_it_does(params string[] commands) => Assert.All(commands, command =>
    {
        (int code, string output, string complaints) = Runs.Run(command, "--help");
        Assert.Equal((0, ""), (code, complaints));
        Assert.Contains("OPTIONS", output, StringComparison.Ordinal);
    });

    [Fact]
    public void An_unknown_option_is_not_passed_over()
    {
        (int code, string output, string complaints) = Runs.Run("check", Path.Combine(Runs.Examples, "two-wood-disc.json"), "--nonsense");
        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Contains("nonsense", complaints, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_figure_is_answered_with_the_known_ones()
    {
        (int code, _, string complaints) = Runs.Run("explain", Path.Combine(Runs.Examples, "two-wood-disc.json"), "colour");
        Assert.Equal(2, code);
        Assert.Contains("board-width", complaints, StringComparison.Ordinal);
    }

    [Fact]
    public void New_never_overwrites()
    {
        string file = _runs.Write("mine.json", "precious");
        (int code, _, string complaints) = Runs.Run("new", "disc", file);
        Assert.Equal(2, code);
        Assert.Contains("left as it is", complaints, StringComparison.Ordinal);
        Assert.Equal("precious", File.ReadAllText(file));
    }

    [Theory]
    [InlineData("disc")]
    [InlineData("ring")]
    public void New_pieces_can_be_planned_at_once(string kind)
    {
        Assert.Equal(0, Runs.Run("new", kind, _runs.At("a.json"), "--units", "in", "--name", "Try").Code);
        Assert.Equal(0, Runs.Run("new", "shop", _runs.At("shop.json"), "--units", "in").Code);
        (int code, string output, _) = Runs.Run("plan", _runs.At("a.json"), "--shop", _runs.At("shop.json"));
        Assert.Equal(0, code);
        Assert.StartsWith("Try", output, StringComparison.Ordinal);
    }
}
