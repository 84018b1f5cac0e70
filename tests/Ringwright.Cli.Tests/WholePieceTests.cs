using System.Text.Json;

namespace Ringwright.Cli.Tests;

/// <summary>From a shape to a stack, a pattern and a solid, as typed.</summary>
public sealed class WholePieceTests : IDisposable
{
    private readonly Runs _runs = new();

    public static TheoryData<string> Examples => [.. Directory.GetFiles(Runs.Examples, "*.json").Where(f => File.ReadAllText(f).Contains("ringwright/piece", StringComparison.Ordinal)).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_can_be_made(string example)
    {
        (int code, string output, string complaints) = Runs.Run("check", Path.Combine(Runs.Examples, example));
        Assert.Equal("", complaints);
        Assert.DoesNotContain("Cannot be", output, StringComparison.Ordinal);
        Assert.True(code is 0 or 1, output);
    }

    [Theory]
    [InlineData("bowl")]
    [InlineData("vase")]
    [InlineData("platter")]
    [InlineData("box")]
    [InlineData("spindle")]
    [InlineData("pen-barrel")]
    public void A_new_piece_of_every_kind_is_turned_from_its_rings(string kind)
    {
        string file = _runs.At("new.json");
        Assert.Equal(0, Runs.Run("new", kind, file, "--woods", "walnut,maple").Code);
        JsonElement solid = Runs.Json("solid", file);
        double volume = solid.GetProperty("volume").GetDouble(), wanted = solid.GetProperty("figures").GetProperty("wood-left").GetDouble();
        // The walls' chords leave the curve by 0.025 mm at most.
        Assert.Equal(1, volume / wanted, 2e-3);
        Assert.True(volume < solid.GetProperty("blankVolume").GetDouble());
    }

    [Fact]
    public void Stack_shows_the_widths_and_writes_a_piece_that_fills_the_shape()
    {
        string bowl = _runs.At("bowl.json"), stacked = _runs.At("stacked.json");
        Runs.Run("new", "bowl", bowl, "--diameter", "200 mm", "--height", "90 mm");
        (int code, string output, _) = Runs.Run("stack", bowl, "--heights", "15 mm, 20 mm", "--segments", "18", "--out", stacked);
        Assert.Equal(0, code);
        Assert.Contains("fewest rings:", output, StringComparison.Ordinal);
        Assert.Contains("chosen", output, StringComparison.Ordinal);
        Assert.Contains("18 segments", Runs.Run("plan", stacked).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pattern_is_laid_and_counted()
    {
        string vase = _runs.At("vase.json"), painted = _runs.At("painted.json");
        Runs.Run("new", "vase", vase, "--segments", "12");
        (int code, string output, _) = Runs.Run("pattern", vase, "--lay", "spiral maple,walnut,cherry 1", "--lay", "band 3-4 checker oak,wenge", "--out", painted);
        Assert.Equal(0, code);
        Assert.Contains("oak", output, StringComparison.Ordinal);
        using JsonDocument piece = JsonDocument.Parse(File.ReadAllText(painted));
        Assert.Equal(["oak", "wenge"], piece.RootElement.GetProperty("rings")[2].GetProperty("woods").EnumerateArray().Select(w => w.GetString()).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_pattern_passes_by_what_is_not_segmented()
    {
        (int code, string output, string complaints) = Runs.Run("pattern", Path.Combine(Runs.Examples, "board-bowl.json"), "--lay", "repeat maple,walnut");
        Assert.Equal((0, ""), (code, complaints));
        Assert.Contains("walnut", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pattern needs a step", "--lay", "twirl maple", "is no step")]
    [InlineData("a change needs something to change", "--lay", "mirror 2", "there is none yet")]
    [InlineData("a picture must be there", "--image", "nowhere.png", "name the woods at hand")]
    public void Patterns_that_cannot_be_are_refused_in_one_sentence(string what, string option, string value, string says)
    {
        string vase = _runs.At("vase.json");
        Runs.Run("new", "vase", vase);
        (int code, _, string complaints) = Runs.Run("pattern", vase, option, value);
        Assert.Equal(2, code);
        Assert.Contains(says, complaints, StringComparison.Ordinal);
        Assert.True(complaints.Trim().Split('\n').Length == 1, what);
    }

    [Fact]
    public void Solids_are_written_in_three_formats()
    {
        string[] files = [_runs.At("b.glb"), _runs.At("b.stl"), _runs.At("b.3mf")];
        (int code, _, string complaints) = Runs.Run("solid", Path.Combine(Runs.Examples, "bead.json"), "--out", files[0], "--out", files[1], "--out", files[2]);
        Assert.Equal((0, ""), (code, complaints));
        Assert.Equal("glTF"u8, File.ReadAllBytes(files[0]).AsSpan(0, 4));
        Assert.Equal("PK"u8, File.ReadAllBytes(files[2]).AsSpan(0, 2));
        byte[] stl = File.ReadAllBytes(files[1]);
        Assert.Equal(84 + (50 * BitConverter.ToInt32(stl, 80)), stl.Length);
    }

    [Fact]
    public void A_solid_of_no_known_kind_is_refused_before_any_work()
    {
        (int code, _, string complaints) = Runs.Run("solid", Path.Combine(Runs.Examples, "bead.json"), "--out", _runs.At("b.obj"));
        Assert.Equal(2, code);
        Assert.Contains(".glb, .stl or .3mf", complaints, StringComparison.Ordinal);
    }

    public void Dispose() => _runs.Dispose();
}
