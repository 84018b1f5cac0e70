using System.Text.Json;

namespace Ringwright.Cli.Tests;

public sealed class SawAndFitCommandTests : IDisposable
{
    private static readonly string Disc = Path.Combine(Runs.Examples, "two-wood-disc.json");
    private readonly Runs _runs = new();

    public void Dispose() => _runs.Dispose();

    private static JsonElement Json(params string[] args) => Runs.Json(args);

    [Fact]
    public void Simulate_without_errors_gives_the_planned_wedges()
    {
        JsonElement run = Json("simulate", Disc, "--ideal", "--wedges", "5");
        Assert.Equal(5, run.GetProperty("wedges").GetArrayLength());
        Assert.All(run.GetProperty("wedges").EnumerateArray(), w => Assert.Equal(Math.PI / 12, w.GetProperty("angle").GetDouble(), 1e-12));
    }

    [Fact]
    public void Simulate_says_how_to_judge_the_first_cut() =>
        Assert.Contains("too near", Runs.Run("simulate", Disc).Output, StringComparison.Ordinal);

    [Theory]
    [InlineData("stave-ring.json", "Body")]
    [InlineData("leaning-stave-mug.json", "Staves")]
    public void Staves_are_sawn_and_fitted_too(string file, string ring)
    {
        string piece = Path.Combine(Runs.Examples, file);
        JsonElement run = Json("simulate", piece, "--ring", ring, "--ideal");
        Assert.NotEqual(0, run.GetProperty("wedges").GetArrayLength());
        Assert.All(run.GetProperty("wedges").EnumerateArray(), w => Assert.Equal(Math.PI / 6, w.GetProperty("faceAngle").GetDouble(), 1e-12));
        string told = Runs.Run("simulate", piece, "--ring", ring).Output;
        Assert.Contains("between faces", told, StringComparison.Ordinal);
        Assert.DoesNotContain("wedge", told[..told.IndexOf("Small wedges", StringComparison.Ordinal)], StringComparison.Ordinal); // the cautions are those of every cut
        JsonElement fit = Json("fit", piece, "--ring", ring, "--rings", "20", "--picture", _runs.At("ring.svg"));
        Assert.Equal(0, fit.GetProperty("unsettled").GetInt32());
        Assert.Contains("setting mitre and tilt", Runs.Run("fit", piece, "--ring", ring, "--rings", "20").Output, StringComparison.Ordinal);
        Assert.Equal(2, Runs.Run("simulate", piece, "--ring", ring, "--picture", _runs.At("cut.svg")).Code);
    }

    [Fact]
    public void Fit_gives_the_same_answer_for_the_same_seed()
    {
        string[] args = ["fit", Disc, "--rings", "40", "--seed", "3", "--json"];
        Assert.Equal(Runs.Run(args).Output, Runs.Run(args).Output);
    }

    [Fact]
    public void Reach_gives_a_cell_for_each_size()
    {
        JsonElement map = Json("reach", "--segments", "12-24/12", "--diameters", "10-30/10");
        Assert.Equal(6, map.GetProperty("cells").GetArrayLength());
        Assert.Contains("tiny", Runs.Run("reach").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("19 mm,3/4 in", new[] { 19, 19.05 })]
    [InlineData("1 cm-2 cm/5 mm", new[] { 10.0, 15, 20 })]
    [InlineData("1/2 in-1 in/1/4 in", new[] { 12.7, 19.05, 25.4 })]
    public void Reach_takes_diameters_as_people_write_lengths(string list, double[] diameters)
    {
        JsonElement cells = Json("reach", "--segments", "12", "--diameters", list).GetProperty("cells");
        Assert.Equal(diameters, cells.EnumerateArray().Select(cell => Math.Round(cell.GetProperty("diameter").GetDouble(), 9)));
    }

    [Theory]
    [InlineData("--segments", "many")]
    [InlineData("--segments", "12/4")]
    [InlineData("--diameters", "10 mm-20 mm/0 mm")]
    [InlineData("--segments", "12.5")]
    [InlineData("--segments", "20-10")]
    [InlineData("--diameters", "1-1000000/0.001")]
    public void Reach_refuses_lists_that_are_none(string option, string list) => Assert.Equal(2, Runs.Run("reach", option, list).Code);

    [Fact]
    public void Learn_writes_a_shop_that_the_next_plan_uses_and_names()
    {
        string shop = _runs.At("shop.json");
        Assert.Equal(0, Runs.Run("learn", Path.Combine(Runs.Examples, "bench-record.json"), "--out", shop).Code);
        Assert.Contains("learned from the record", Runs.Run("explain", Disc, "closing-spread", "--shop", shop).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Choose_keeps_the_pattern_and_never_makes_it_worse()
    {
        JsonElement choice = Json("choose", Path.Combine(Runs.Examples, "caliper-readings.csv"), "--segments", "12", "--depth", "8 mm", "--radius", "9.5 mm", "--woods", "maple,padauk");
        Assert.Equal(12, choice.GetProperty("ring").GetArrayLength());
        Assert.Equal(4, choice.GetProperty("leftOver").GetArrayLength());
        Assert.All(choice.GetProperty("ring").EnumerateArray(), p => Assert.Equal(p.GetProperty("place").GetInt32() % 2 == 1 ? "maple" : "padauk", p.GetProperty("wood").GetString()));
        Assert.True(choice.GetProperty("worstGap").GetDouble() <= choice.GetProperty("worstGapBefore").GetDouble());
    }

    [Theory]
    [InlineData("rim,tip\n1,2", "the heading is missing")]
    [InlineData("number,wood,rim,tip\n1,oak,2", "it has 3 values")]
    [InlineData("number,wood,rim,tip\none,oak,2,1", "is no wedge number")]
    [InlineData("number,wood,rim,tip\n1,oak,wide,1", "character")]
    public void Choose_refuses_readings_with_their_line(string text, string says)
    {
        (int code, _, string complaints) = Runs.Run("choose", _runs.Write("r.csv", text), "--segments", "4", "--depth", "8 mm", "--radius", "9 mm");
        Assert.Equal(2, code);
        Assert.Contains(says, complaints, StringComparison.Ordinal);
    }
}
