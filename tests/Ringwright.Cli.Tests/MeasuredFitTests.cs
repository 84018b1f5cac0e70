using System.Globalization;
using System.Text.Json;

namespace Ringwright.Cli.Tests;

public sealed class MeasuredFitTests : IDisposable
{
    private static readonly string Disc = Path.Combine(Runs.Examples, "two-wood-disc.json");
    private static readonly string Walnut = Path.Combine(Runs.Examples, "walnut-ring.json");
    private static readonly string Measured = Path.Combine(Runs.Examples, "measured-disc.csv");
    private readonly Runs _runs = new();

    public void Dispose() => _runs.Dispose();

    // Widths square to the middle line, at 8.5 and 1.5 mm from the centre; the upper side wider in angle by lean degrees.
    private string Readings(int wedges, double degrees, double? lean = null)
    {
        string Widths(double angle)
        {
            double slope = 2 * Math.Tan(angle * Math.PI / 360), rim = 8.5 * 2 * Math.Tan(Math.PI / 24);
            return string.Create(CultureInfo.InvariantCulture, $"{rim:0.000000},{rim - (7 * slope):0.000000}");
        }

        string heading = "number,wood,rim,tip" + (lean is null ? "" : ",rim above,tip above");
        IEnumerable<string> lines = Enumerable.Range(1, wedges).Select(i => $"{i},maple,{Widths(degrees)}" + (lean is { } more ? "," + Widths(degrees + more) : ""));
        return _runs.Write("wedges.csv", string.Join('\n', lines.Prepend(heading)));
    }

    [Fact]
    public void Right_wedges_close()
    {
        string output = Runs.Run("fit", Disc, "--measured", Readings(24, 15), "--depth", "7").Output;
        Assert.StartsWith("Disc: these wedges close. Under a band no joint is open by more than 0 mm", output, StringComparison.Ordinal);
    }

    /// <summary>By hand: 24 wedges each 0.1° too narrow miss 2.4°; shared by the joints each opens by R E/N at the rim, gathered by R E, R the distance of the rim corner.</summary>
    [Fact]
    public void Narrow_wedges_open_at_the_rim_by_what_the_formula_says()
    {
        JsonElement fit = Runs.Json("fit", Disc, "--measured", Readings(24, 14.9), "--depth", "7 mm");
        double closing = 2.4 * Math.PI / 180, radius = 9.5 / Math.Cos(Math.PI / 24);
        Assert.Equal(closing, fit.GetProperty("closingError").GetDouble(), 1e-5);
        Assert.Equal(radius * closing / 24, fit.GetProperty("worstGap").GetDouble(), 0.02 * radius * closing / 24);
        Assert.Equal(radius * closing, fit.GetProperty("gatheredGap").GetDouble(), 0.02 * radius * closing);
        Assert.Equal(24, fit.GetProperty("joints").GetArrayLength());
        JsonElement correction = fit.GetProperty("diagnosis").GetProperty("correction");
        Assert.Equal("awayFromSquare", correction.GetProperty("move").GetString());
        Assert.InRange(correction.GetProperty("fenceAngleAfter").GetDouble() - (Math.PI / 24), 0.8 * closing / 48, closing / 48);
    }

    [Fact]
    public void Wedges_read_at_both_sides_show_where_they_differ()
    {
        string output = Runs.Run("fit", Disc, "--measured", Readings(24, 15, lean: -0.2), "--depth", "7").Output;
        Assert.Contains("rim below", output, StringComparison.Ordinal);
        Assert.Matches(@"below, above +(−?0|−?0\.000\d)°, 4\.(8|80\d+|79\d+)°", output);
        Assert.DoesNotContain("rim below", Runs.Run("fit", Disc, "--measured", Readings(24, 15), "--depth", "7").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_order_of_a_choice_can_be_laid()
    {
        string order = string.Join(',', Enumerable.Range(1, 24).Reverse());
        JsonElement first = Runs.Json("fit", Disc, "--measured", Measured, "--depth", "7", "--order", order).GetProperty("joints")[0];
        Assert.Equal([24, 23], first.GetProperty("wedges").EnumerateArray().Select(w => w.GetInt32()));
    }

    /// <summary>By hand: the cherry wedges of 20° are 0.3° too narrow, the maple ones of 40° right; widths from apothems by 2 a tan(angle/2).</summary>
    [Fact]
    public void Of_two_widths_the_one_that_is_off_is_named()
    {
        string Line(int number)
        {
            (string wood, double angle, double apex, double off) = number % 2 == 1 ? ("maple", 40, 0.75 / Math.Sin(Math.PI / 9), 0) : ("cherry", 20, 0.75 / Math.Sin(Math.PI / 18), -0.3);
            double rim = 2 * (102 - apex) * Math.Tan(angle * Math.PI / 360);
            return string.Create(CultureInfo.InvariantCulture, $"{number},{wood},{rim:0.000000},{rim - (40 * Math.Tan((angle + off) * Math.PI / 360)):0.000000}");
        }

        string readings = _runs.Write("mixed.csv", string.Join('\n', Enumerable.Range(1, 12).Select(Line).Prepend("number,wood,rim,tip")));
        JsonElement fit = Runs.Json("fit", Path.Combine(Runs.Examples, "mixed-ring.json"), "--measured", readings, "--depth", "20 mm");
        Assert.Equal(6 * 0.3 * Math.PI / 180, fit.GetProperty("closingError").GetDouble(), 1e-4);
        JsonElement[] kinds = [.. fit.GetProperty("kinds").EnumerateArray()];
        Assert.Equal(2, kinds.Length);
        double[] changes = [.. kinds.Select(k => (k.GetProperty("correction").GetProperty("fenceAngleAfter").GetDouble() * 180 / Math.PI) - (k.GetProperty("wanted").GetDouble() * 90 / Math.PI))];
        Assert.Equal(0, changes[0], 0.01);
        Assert.InRange(changes[1], 0.13, 0.15);
    }

    [Fact]
    public void The_example_says_what_to_do_and_can_be_drawn()
    {
        string output = Runs.Run("fit", Disc, "--measured", Measured, "--depth", "7 mm", "--picture", _runs.At("ring.png")).Output;
        Assert.Contains("Move each of the two fences away from square", output, StringComparison.Ordinal);
        Assert.True(new FileInfo(_runs.At("ring.png")).Length > 10_000);
    }

    [Fact]
    public void Wedges_that_do_not_belong_to_the_ring_are_refused()
    {
        Refused("there are 12, and the ring has 24", Disc, "--measured", Readings(12, 15), "--depth", "7");
        Refused("inside the wedge", Walnut, "--measured", Readings(16, 15), "--depth", "7", "--units", "mm");
        Refused("at most the wedge's depth", Disc, "--measured", Readings(24, 15), "--depth", "20");
    }

    [Fact]
    public void Words_that_do_not_go_together_are_refused()
    {
        Refused("only with --measured", Disc, "--depth", "7");
        Refused("only with --measured", Disc, "--order", "1,2");
        Refused("no reading of wedge 99", Disc, "--measured", Measured, "--order", "99");
        Refused("wedge 3 stands in it twice", Disc, "--measured", Measured, "--order", "3,3");
        Refused("line 2: it has 4 values", Disc, "--measured", _runs.Write("r.csv", "number,wood,rim,tip,rim above,tip above\n1,oak,2,1"));
        Refused("there is no such file", Disc, "--measured", _runs.At("nowhere.csv"));
    }

    private static void Refused(string says, params string[] args)
    {
        (int code, string output, string complaints) = Runs.Run(["fit", .. args]);
        Assert.Equal(2, code);
        Assert.Empty(output);
        Assert.Contains(says, complaints, StringComparison.Ordinal);
        Assert.Single(complaints.TrimEnd().Split('\n'));
    }
}
