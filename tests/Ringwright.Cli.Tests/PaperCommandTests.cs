using System.Text.Json;

namespace Ringwright.Cli.Tests;

/// <summary>Paper and files as typed: packet, templates, gauges, labels, pictures, spreadsheet.</summary>
public sealed class PaperCommandTests : IDisposable
{
    private static readonly string Ring = Path.Combine(Runs.Examples, "walnut-ring.json");

    private readonly Runs _runs = new();

    [Fact]
    public void A_packet_is_printed_as_asked()
    {
        (int code, string output, string complaints) = Runs.Run("plan", Ring, "--out", _runs.Folder, "--duplex", "--correction", "1.003,0.998", "--sheets", "cover,record");
        Assert.Equal((0, ""), (code, complaints));
        Assert.Contains(".figures.xlsx", output, StringComparison.Ordinal);
        Assert.Equal("%PDF"u8, File.ReadAllBytes(_runs.At("walnut-ring.job-sheet.pdf")).AsSpan(0, 4));
        Assert.Equal("PK"u8, File.ReadAllBytes(_runs.At("walnut-ring.figures.xlsx")).AsSpan(0, 2));
    }

    [Fact]
    public void What_the_rulers_measured_is_taken_as_a_correction_too() =>
        Assert.Equal(0, Runs.Run("templates", Ring, "--out", _runs.Folder, "--kinds", "wedge", "--correction", "99.7 mm,100.2 mm").Code);

    [Theory]
    [InlineData("plan", "--sheets", "covers", "cover, cautions")]
    [InlineData("plan", "--correction", "1.2,1", "5 %")]
    [InlineData("plan", "--correction", "1", "two factors")]
    [InlineData("plan", "--correction", "0 mm,100 mm", "nothing")]
    [InlineData("templates", "--kinds", "wedges", "wedge, quarter")]
    [InlineData("templates", "--kinds", "outside", "no such template")]
    [InlineData("templates", "--format", "doc", "pdf, svg or dxf")]
    [InlineData("templates", "--ring", "nowhere", "there is no ring")]
    [InlineData("gauges", "--bed", "5 mm", "60 mm to 1000 mm")]
    [InlineData("gauges", "--format", "obj", "stl or 3mf")]
    [InlineData("labels", "--grid", "3by7", "such as 3x7")]
    [InlineData("labels", "--grid", "9x40", "at least")]
    [InlineData("labels", "--margins", "3 mm", "two lengths")]
    [InlineData("labels", "--skip", "21", "0 to 20")]
    [InlineData("labels", "--link", "shop", "no address")]
    [InlineData("picture", "--view", "all", "piece, unrolled")]
    [InlineData("picture", "--wedge", "2", "no wedge 2")]
    public void What_cannot_be_is_refused_in_one_sentence_and_nothing_is_written(string command, string option, string value, string says)
    {
        string[] where = command is "labels" ? ["--out", _runs.At("labels.pdf")] : command is "picture" ? [] : ["--out", _runs.At("out")];
        (int code, _, string complaints) = Runs.Run([command, Ring, option, value, .. where]);
        Assert.Equal(2, code);
        Assert.Contains(says, complaints, StringComparison.Ordinal);
        Assert.Single(complaints.Trim().Split('\n'));
        Assert.Empty(Directory.EnumerateFileSystemEntries(_runs.Folder));
    }

    [Theory]
    [InlineData("svg", "<svg")]
    [InlineData("dxf", "  0\r\nSECTION")]
    public void Templates_are_files_of_their_own_for_a_laser(string format, string start)
    {
        (int code, string output, string complaints) = Runs.Run("templates", Ring, "--out", _runs.Folder, "--format", format);
        Assert.Equal((0, ""), (code, complaints));
        string[] files = Directory.GetFiles(_runs.Folder);
        Assert.Equal(7, files.Length); // gauge, block, quarter, disc, plate, wedge, lap guide
        Assert.All(files, file => Assert.StartsWith(start, File.ReadAllText(file), StringComparison.Ordinal));
        Assert.Contains("never leave a burning beam alone", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Gauges_have_the_plan_s_angles()
    {
        JsonElement[] gauges = [.. Runs.Json("gauges", Ring, "--out", _runs.Folder).GetProperty("gauges").EnumerateArray()];
        Assert.Equal(2, gauges.Length);
        Assert.Equal(2 * Math.PI / 16, gauges[0].GetProperty("angle").GetDouble(), 1e-12);
        Assert.Equal(Math.PI / 16, gauges[1].GetProperty("angle").GetDouble(), 1e-12);
        foreach (JsonElement gauge in gauges)
        {
            byte[] stl = File.ReadAllBytes(gauge.GetProperty("file").GetString()!);
            Assert.Equal(84 + (50 * BitConverter.ToInt32(stl, 80)), stl.Length);
        }
    }

    [Fact]
    public void Labels_are_printed_from_the_first_free_place()
    {
        (int code, string output, string complaints) = Runs.Run("labels", Ring, "--out", _runs.At("labels.pdf"), "--grid", "2x2", "--skip", "3", "--margins", "10 mm,12 mm", "--gaps", "0 mm,0 mm");
        Assert.Equal((0, ""), (code, complaints));
        Assert.Contains("3 stickers on 2 sheets", output, StringComparison.Ordinal); // the ring, walnut, cherry
    }

    [Fact]
    public void Every_view_that_is_listed_is_drawn_in_every_format()
    {
        string[] views = [.. Runs.Run("picture", Ring).Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Trim().Split(' ')[0])];
        Assert.Contains("fence", views);
        foreach (string view in views) Assert.Equal(0, Runs.Run("picture", Ring, "--view", view, "--out", _runs.At($"{view}.svg")).Code);
        foreach (string ending in new[] { "png", "pdf" }) Assert.Equal(0, Runs.Run("picture", Ring, "--view", "wedge", "--out", _runs.At($"wedge.{ending}"), "--colour").Code);
        Assert.Equal(views.Length + 2, Directory.GetFiles(_runs.Folder).Length);
    }

    public void Dispose() => _runs.Dispose();
}
