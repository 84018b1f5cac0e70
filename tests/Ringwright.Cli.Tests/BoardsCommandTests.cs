using System.Text.Json;
using Ringwright.Core.Boards;
using Ringwright.Core.Documents;

namespace Ringwright.Cli.Tests;

public sealed class BoardsCommandTests : IDisposable
{
    private static readonly string Disc = Path.Combine(Runs.Examples, "two-wood-disc.json");
    private static readonly string SmallRack = Path.Combine(Runs.Examples, "small-rack.json");

    private readonly Runs _runs = new();

    public void Dispose() => _runs.Dispose();

    [Fact]
    public void The_answer_can_be_followed_at_the_saw()
    {
        (int code, string output, string complaints) = Runs.Run("boards", Disc, "--rack", SmallRack);
        Assert.Equal((0, ""), (code, complaints));
        Assert.StartsWith("The rack is enough: 2 of 17 boards are sawn into.", output, StringComparison.Ordinal);
        foreach (string part in (string[])["Make one edge straight, then rip 1 strip 9.5 mm wide", "saw its end square, then", "Back to the rack", "proved: fewer cannot be", "Mind"])
            Assert.Contains(part, output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_rack_afterwards_is_written_and_the_old_one_stays()
    {
        string before = File.ReadAllText(SmallRack), after = _runs.At("after.json");
        Assert.Equal(0, Runs.Run("boards", Disc, "--rack", SmallRack, "--after", after).Code);
        Rack rack = DocumentJson.ReadRack(File.ReadAllText(after));
        Assert.Contains(rack.Boards, b => b.CameFrom == "P1");
        Assert.DoesNotContain(rack.Boards, b => b.Label == "P1");
        Assert.Equal(before, File.ReadAllText(SmallRack));
    }

    [Fact]
    public void As_json_every_strip_has_its_pieces()
    {
        JsonElement json = Runs.Json("boards", Disc, "--rack", SmallRack);
        Assert.True(json.GetProperty("short").GetProperty("proved").GetBoolean());
        Assert.True(json.GetProperty("boards")[0].GetProperty("stretches")[0].GetProperty("strips")[0].GetProperty("pieces")[0].GetProperty("count").GetInt32() > 0);
    }

    [Fact]
    public void What_is_short_is_said_with_what_to_buy()
    {
        string rack = _runs.Write("rack.json", """
            { "format": "ringwright/rack", "version": 1, "name": "One", "boards": [{ "label": "M", "wood": "maple", "length": "300 mm", "width": "60 mm", "thickness": "34 mm" }] }
            """);
        string output = Runs.Run("boards", Disc, "--rack", rack).Output;
        Assert.Contains("there is no padauk on the rack", output, StringComparison.Ordinal);
        Assert.Contains("padauk: a board at least", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_rack_it_says_what_to_buy()
    {
        string output = Runs.Run("boards", Path.Combine(Runs.Examples, "feature-bowl.json")).Output;
        Assert.StartsWith("To buy, or to have at hand:", output, StringComparison.Ordinal);
        Assert.Contains("walnut:", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"300 mm\"", "\"0 mm\"", "rack.json, board M, length: 0 mm cannot be")]
    [InlineData("[{", "[", "")]
    public void A_bad_rack_gets_one_sentence(string good, string bad, string says)
    {
        string text = """{ "format": "ringwright/rack", "version": 1, "name": "One", "boards": [{ "label": "M", "wood": "maple", "length": "300 mm", "width": "60 mm", "thickness": "34 mm" }] }""";
        Refused(says, "boards", Disc, "--rack", _runs.Write("rack.json", text.Replace(good, bad, StringComparison.Ordinal)));
    }

    [Fact]
    public void What_cannot_be_is_refused()
    {
        string empty = _runs.Write("rack.json", """{ "format": "ringwright/rack", "version": 1, "name": "One", "boards": [] }""");
        Refused("rack One: there is no board on it", "boards", Disc, "--rack", empty);
        Refused("--after: it needs a rack to begin with", "boards", Disc, "--after", _runs.At("x.json"));
        Refused("--time-limit: 0 seconds cannot be", "boards", Disc, "--time-limit", "0");
        Refused("--milling", "boards", Disc, "--rack", SmallRack, "--milling", "1 m");
    }

    private static void Refused(string says, params string[] args)
    {
        (int code, _, string complaints) = Runs.Run(args);
        Assert.Equal(2, code);
        Assert.Contains(says, complaints, StringComparison.Ordinal);
        Assert.Single(complaints.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }
}
