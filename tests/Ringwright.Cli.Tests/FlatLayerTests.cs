using System.Text.Json;

namespace Ringwright.Cli.Tests;

/// <summary>A plain layer and the rings of one board, from the shell.</summary>
public sealed class FlatLayerTests : IDisposable
{
    private static readonly string Bowl = Path.Combine(Runs.Examples, "board-bowl.json");
    private readonly Runs _runs = new();

    public void Dispose() => _runs.Dispose();

    [Fact]
    public void The_bowl_is_planned_with_one_tilt_and_all_its_files()
    {
        (int code, string output, string complaints) = Runs.Run("plan", Bowl, "--out", _runs.At("out"));
        Assert.Equal((0, ""), (code, complaints));
        Assert.Contains("3 rings come out of Board A, all cuts at 37°", output, StringComparison.Ordinal);
        Assert.Contains("Saw the round to", output, StringComparison.Ordinal);
        Assert.Contains("On a tilted table", output, StringComparison.Ordinal);
        string[] list = File.ReadAllLines(_runs.At("out/board-bowl.cut-list.csv"));
        Assert.Equal(["Base,walnut", "Rim,cherry"], list[1..].Select(row => string.Join(',', row.Split(',')[..2])));
        Assert.EndsWith("85.4,6.5,,,,,layer", list[1], StringComparison.Ordinal);
        using JsonDocument plan = JsonDocument.Parse(File.ReadAllText(_runs.At("out/board-bowl.plan.json")));
        Assert.Equal(4, plan.RootElement.GetProperty("rings").GetArrayLength());
        foreach (string picture in new[] { "ring-2", "piece", "unrolled" }) Assert.Contains("<title>", File.ReadAllText(_runs.At($"out/board-bowl.{picture}.svg")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("simulate", "Base", "one piece of wood")]
    [InlineData("fit", "Base", "one piece of wood")]
    [InlineData("fit", "Middle", "planned with ring Rim")]
    public void What_has_no_wedges_says_so_in_one_sentence(string command, string ring, string says)
    {
        (int code, _, string complaints) = Runs.Run(command, Bowl, "--ring", ring);
        Assert.NotEqual(0, code);
        Assert.Contains(says, complaints, StringComparison.Ordinal);
        Assert.Single(complaints.Trim().Split('\n'));
    }

    [Fact]
    public void Circles_are_sawn_in_simulation()
    {
        (int code, string output, string complaints) = Runs.Run("simulate", Bowl, "--ring", "Middle");
        Assert.Equal((0, ""), (code, complaints));
        Assert.Contains("every ring holds its turned size", output, StringComparison.Ordinal);
        Assert.Equal(3, Runs.Json("simulate", Bowl, "--ring", "Middle").GetProperty("rings").GetArrayLength());
    }

    [Fact]
    public void The_tilt_is_explained()
    {
        (int code, string output, _) = Runs.Run("explain", Bowl, "step", "--ring", "Middle");
        Assert.Equal(0, code);
        Assert.Contains("T·tan(θ)", output, StringComparison.Ordinal);
    }
}
