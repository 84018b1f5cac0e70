using System.Text.Json;

namespace Ringwright.Cli.Tests;

/// <summary><c>glue</c> and <c>milling</c> from the shell.</summary>
public class GlueCommandTests
{
    private static string Bowl => Path.Combine(Runs.Examples, "board-bowl.json");

    [Fact]
    public void Glue_says_when_it_is_ready_and_where_the_marks_go()
    {
        (int code, string output, _) = Runs.Run("glue", Bowl);
        Assert.Equal(0, code);
        Assert.StartsWith("Ready to turn after ", output, StringComparison.Ordinal);
        Assert.Contains("Middle on Lower", output, StringComparison.Ordinal);
        Assert.Contains("cured at", output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_schedule_as_json_is_proved_and_every_joint_is_in_it()
    {
        JsonElement glue = Runs.Json("glue", Path.Combine(Runs.Examples, "two-wood-disc.json"));
        JsonElement schedule = glue.GetProperty("schedule");
        Assert.True(schedule.GetProperty("proved").GetBoolean());
        Assert.Equal(schedule.GetProperty("lowerBound").GetInt32(), schedule.GetProperty("minutes").GetInt32());
        JsonElement ring = glue.GetProperty("rings")[0];
        Assert.Equal(Enumerable.Range(1, ring.GetProperty("pieces").GetInt32()), ring.GetProperty("glueUps").EnumerateArray().SelectMany(g => g.GetProperty("joints").EnumerateArray()).Select(j => j.GetInt32()).Order());
    }

    [Fact]
    public void The_picture_is_written()
    {
        using var runs = new Runs();
        (int code, string output, _) = Runs.Run("glue", Bowl, "--picture", runs.At("glue.svg"));
        Assert.Equal(0, code);
        Assert.Contains("glue.svg", output, StringComparison.Ordinal);
        Assert.Contains("hands", File.ReadAllText(runs.At("glue.svg")), StringComparison.Ordinal);
    }

    [Fact]
    public void Milling_lists_thicknesses_and_widths_in_the_units_asked_for()
    {
        (int code, string output, _) = Runs.Run("milling", Path.Combine(Runs.Examples, "feature-bowl.json"), "--units", "in");
        Assert.Equal(0, code);
        Assert.Contains("Plane, from the thickest", output, StringComparison.Ordinal);
        Assert.Contains("jointer", output, StringComparison.OrdinalIgnoreCase);
        JsonElement json = Runs.Json("milling", Path.Combine(Runs.Examples, "feature-bowl.json"));
        Assert.Equal(6, json.GetProperty("planer").GetArrayLength());
    }

    [Theory]
    [InlineData("\"openTime\": \"8 min\"", "\"openTime\": \"2 min\"", "adhesive.openTime")]
    [InlineData("\"openTime\": \"8 min\"", "\"openTime\": 8", "\"10 min\" or \"1 h 30 min\"")]
    [InlineData("\"cureTime\": \"24 h\"", "\"cureTime\": \"30 min\"", "adhesive.cureTime")]
    [InlineData("\"bandClamps\": 2", "\"bandClamps\": 0", "gluing.bandClamps")]
    [InlineData("\"session\": \"4 h\"", "\"session\": \"25 h\"", "gluing.session")]
    [InlineData("\"27 mm\", \"34 mm\"", "\"34 mm\", \"27 mm\"", "milling.roughThicknesses")]
    public void What_cannot_be_is_refused_with_its_field(string good, string bad, string told)
    {
        using var runs = new Runs();
        string shop = File.ReadAllText(Path.Combine(Runs.Examples, "small-shop.json"));
        Assert.Contains(good, shop, StringComparison.Ordinal);
        (int code, _, string complaints) = Runs.Run("glue", Bowl, "--shop", runs.Write("shop.json", shop.Replace(good, bad, StringComparison.Ordinal)));
        Assert.Equal(2, code);
        Assert.Contains(told, complaints, StringComparison.Ordinal);
    }
}
