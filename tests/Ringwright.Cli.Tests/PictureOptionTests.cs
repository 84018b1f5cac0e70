using System.Text;
using System.Xml.Linq;

namespace Ringwright.Cli.Tests;

public sealed class PictureOptionTests : IDisposable
{
    private static readonly string Disc = Path.Combine(Runs.Examples, "two-wood-disc.json");
    private readonly Runs _runs = new();

    public void Dispose() => _runs.Dispose();

    private string Texts(string name, params string[] args)
    {
        (int code, string output, string complaints) = Runs.Run([.. args, "--picture", _runs.At(name)]);
        Assert.Equal("", complaints);
        Assert.Equal(0, code);
        Assert.Contains(name, output, StringComparison.Ordinal);
        var svg = XElement.Parse(File.ReadAllText(_runs.At(name)));
        return string.Join('\n', svg.Descendants().Where(e => e.Name.LocalName is "text" or "title").Select(e => e.Value));
    }

    [Fact]
    public void Diagnose_draws_the_fence_before_and_after()
    {
        string texts = Texts("fence.svg", "diagnose", Disc, "--read", "gathered rim 0.5 mm");
        Assert.Contains("Dashed: before. Heavy: after.", texts, StringComparison.Ordinal);
        Assert.Contains("Move each of the two fences away", texts, StringComparison.Ordinal);
    }

    [Fact]
    public void Fit_draws_its_first_ring_with_a_stated_factor_and_numbered_joints()
    {
        string texts = Texts("fit.svg", "fit", Disc, "--rings", "20");
        Assert.Contains("times as large as they are", texts, StringComparison.Ordinal);
        Assert.Matches(@"\d+: 0\.\d+ mm at the (rim|centre)", texts);
        Assert.Matches(@"\n(6|12|18)\n", texts);
    }

    [Fact]
    public void Reach_draws_every_cell_with_its_reason_and_a_legend_in_sentences()
    {
        string texts = Texts("reach.svg", "reach", "--segments", "12,24,48", "--diameters", "8,20,40");
        Assert.Equal(3, texts.Split('\n').Count(t => t == "T") - 1); // 24 and 48 at 8 mm, 48 at 20 mm, and the legend
        Assert.Equal(1, texts.Split('\n').Count(t => t == "G") - 1);
        Assert.Contains("these hands hold and sand", texts, StringComparison.Ordinal);
        Assert.Contains("across flats", texts, StringComparison.Ordinal);
    }

    [Fact]
    public void Simulate_draws_the_setting_and_three_cuts()
    {
        string texts = Texts("saw.svg", "simulate", Disc);
        foreach (string name in new[] { "Too far", "Right", "Not far enough", "rule at 300 mm" }) Assert.Contains(name, texts, StringComparison.Ordinal);
    }

    [Fact]
    public void Pattern_draws_the_outside_laid_flat_with_the_pieces_of_each_wood()
    {
        Assert.Equal(0, Runs.Run("new", "box", _runs.At("box.json"), "--segments", "12", "--name", "Tea box").Code);
        string texts = Texts("flat.svg", "pattern", _runs.At("box.json"), "--lay", "spiral maple,walnut 1");
        Assert.Contains("Tea box: the outside laid flat", texts, StringComparison.Ordinal);
        Assert.Matches(@"walnut, \d+ pieces", texts);
        Assert.DoesNotContain("padauk", texts, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a.png", "\u0089PNG")]
    [InlineData("a.PDF", "%PDF")]
    [InlineData("a.svg", "<svg")]
    public void The_name_says_the_kind_of_file(string name, string start)
    {
        Assert.Equal(0, Runs.Run("reach", "--picture", _runs.At(name), "--json").Code);
        Assert.StartsWith(start, Encoding.Latin1.GetString(File.ReadAllBytes(_runs.At(name))), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("simulate")]
    [InlineData("fit")]
    public void A_name_that_is_no_picture_is_refused_before_the_work(string command)
    {
        (int code, string output, string complaints) = Runs.Run(command, Disc, "--picture", _runs.At("picture.jpg"));
        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Contains(".svg, .png or .pdf is needed", complaints, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(_runs.Folder));
    }

    [Fact]
    public void A_map_too_large_to_read_is_not_drawn()
    {
        (int code, string output, string complaints) = Runs.Run("reach", "--segments", "6-200", "--picture", _runs.At("map.svg"));
        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Contains("at most 120 by 120", complaints, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_stays_json_when_a_picture_is_written()
    {
        Assert.True(Runs.Json("fit", Disc, "--rings", "20", "--picture", _runs.At("fit.png")).TryGetProperty("rings", out _));
        Assert.True(File.Exists(_runs.At("fit.png")));
    }
}
