using System.Text.Json;

namespace Ringwright.Cli.Tests;

public sealed class DiagnoseCommandTests
{
    private static readonly string Disc = Path.Combine(Runs.Examples, "two-wood-disc.json");

    private static string[] Reads(params string[] readings) => [.. readings.SelectMany(r => new[] { "--read", r })];

    private static string Lines(params string[] args)
    {
        (int code, string output, string complaints) = Runs.Run(args);
        Assert.Equal("", complaints);
        Assert.Equal(0, code);
        return output;
    }

    [Fact]
    public void The_first_line_says_which_fence_which_way_and_how_far()
    {
        string output = Lines(["diagnose", Disc, .. Reads("gathered rim closed", "gathered centre 0.4 mm")]);
        Assert.StartsWith("Move each of the two fences towards square by 0.26", output, StringComparison.Ordinal);
        Assert.Contains("read 300 mm from its pivot", output.Split('\n')[0], StringComparison.Ordinal);
        Assert.Contains("let the blade come to a stop and pull the plug", output, StringComparison.Ordinal);
        Assert.Contains("The wedges are too wide in angle", output, StringComparison.Ordinal);
    }

    /// <summary>By hand: E = −0.4 mm / joint length, each of the 2 N faces takes E / (2 N), the rule at 300 mm shows its tangent. The feeler's noise and the priors shift it by a percent or two.</summary>
    [Fact]
    public void Json_gives_the_move_that_closes_the_ring()
    {
        JsonElement correction = Runs.Json(["diagnose", Disc, .. Reads("gathered rim closed", "gathered centre 0.4 mm")]).GetProperty("correction");
        double joint = 9.5 / Math.Cos(Math.PI / 24), mitre = Math.PI / 24;
        double byHand = 300 * (Math.Tan(mitre - (0.4 / joint / 48)) - Math.Tan(mitre));
        Assert.Equal(byHand, correction.GetProperty("ruleChange").GetDouble(), 0.03 * Math.Abs(byHand));
        Assert.Equal("towardsSquare", correction.GetProperty("move").GetString());
        Assert.True(correction.GetProperty("worthwhile").GetBoolean());
    }

    [Fact]
    public void A_ring_told_by_its_sizes_is_the_ring_of_the_file()
    {
        string[] readings = Reads("half centre 0.2 mm ± 0.02 mm", "wedge 15.1° +- 0.1°");
        Assert.Equal(
            Lines(["diagnose", Disc, .. readings]),
            Lines(["diagnose", "--segments", "24", "--diameter", "19", "--bore", "7 mm", .. readings]));
    }

    [Fact]
    public void Readings_that_contradict_each_other_are_named_as_they_were_typed()
    {
        JsonElement answer = Runs.Json(["diagnose", Disc, .. Reads("joint 3 rim top 0.02 mm", "gathered rim 0.8 mm", "half centre 0.4 mm")]);
        Assert.Equal([3], answer.GetProperty("agreement").GetProperty("contradicted").EnumerateArray().Select(i => i.GetInt32()));
        Assert.Contains("Take it again before you move a fence", answer.GetProperty("says")[0].GetString(), StringComparison.Ordinal);
        Assert.StartsWith("joint 3 under the band, at the rim, top: 0.02 mm", answer.GetProperty("readings")[0].GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_closed_ring_leaves_the_fences_alone()
    {
        string output = Lines(["diagnose", Disc, .. Reads("gathered rim closed", "gathered centre closed")]);
        Assert.StartsWith("Leave the fences as they are", output, StringComparison.Ordinal);
        Assert.DoesNotContain("pull the plug", output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_disc_of_a_sander_has_its_own_words()
    {
        using var runs = new Runs();
        string shop = File.ReadAllText(Path.Combine(Runs.Examples, "small-shop.json")).Replace("two fences", "disc sander", StringComparison.Ordinal);
        string output = Lines(["diagnose", Disc, "--shop", runs.Write("shop.json", shop), .. Reads("gathered rim 0.5 mm")]);
        Assert.StartsWith("Move the sander's fence away from square by", output, StringComparison.Ordinal);
        Assert.Contains("let the disc come to a stop", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nonsense", "“nonsense” is no reading")]
    [InlineData("gathered", "the end of the joint is missing")]
    [InlineData("gathered middle 0.2 mm", "rim or centre is needed")]
    [InlineData("gathered rim", "its value is missing")]
    [InlineData("gathered rim wide", "or “closed”, is needed")]
    [InlineData("gathered rim 0.2 mm ± 0.1 mm ± 0.1 mm", "more than one ±")]
    [InlineData("gathered rim 0.2 mm ± little", "an uncertainty such as ± 0.02 mm is needed")]
    [InlineData("gathered rim 200 mm", "the opening cannot be 200")]
    [InlineData("joint rim 0.2 mm", "“rim” is no joint")]
    [InlineData("joint 25 rim 0.2 mm", "the joint cannot be 25; 1 to 24 can")]
    [InlineData("half rim top 0.2 mm", "an opening such as 0.4 mm")]
    [InlineData("gathered rim 0.2 mm ± 0", "its uncertainty cannot be 0")]
    [InlineData("wedge", "its value is missing")]
    [InlineData("wedge wide", "is needed")]
    [InlineData("wedge 200°", "the wedge angle in degrees cannot be 200")]
    public void A_bad_reading_gets_one_sentence(string reading, string says)
    {
        (int code, string output, string complaints) = Runs.Run(["diagnose", Disc, .. Reads("half rim closed", reading)]);
        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Contains("reading 2", complaints, StringComparison.Ordinal);
        Assert.Contains(says, complaints, StringComparison.Ordinal);
        Assert.Single(complaints.TrimEnd().Split('\n'));
    }

    [Theory]
    [InlineData("nothing that was seen is told", "diagnose", "two-wood-disc.json")]
    [InlineData("not told which ring", "diagnose", "--read", "gathered rim 1 mm")]
    [InlineData("not both", "diagnose", "two-wood-disc.json", "--segments", "12", "--read", "gathered rim 1 mm")]
    [InlineData("there is no ring “Rim”", "diagnose", "two-wood-disc.json", "--ring", "Rim", "--read", "gathered rim 1 mm")]
    [InlineData(".svg, .png or .pdf is needed", "diagnose", "two-wood-disc.json", "--read", "gathered rim 1 mm", "--picture", "x.jpg")]
    public void A_question_that_cannot_be_answered_gets_one_sentence(string says, params string[] args)
    {
        (int code, _, string complaints) = Runs.Run([.. args.Select(a => a == "two-wood-disc.json" ? Disc : a)]);
        Assert.Equal(2, code);
        Assert.Contains(says, complaints, StringComparison.Ordinal);
        Assert.Single(complaints.TrimEnd().Split('\n'));
    }
}
