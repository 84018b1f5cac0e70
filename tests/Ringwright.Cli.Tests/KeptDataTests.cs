using System.Globalization;
using System.Text.Json;

namespace Ringwright.Cli.Tests;

/// <summary>Where the data folder is, is the same for the whole process: these tests run when no others do.</summary>
[CollectionDefinition(nameof(KeptDataTests), DisableParallelization = true)]
public sealed class KeptDataAlone;

/// <summary>The commands on the user's data folder, which here is one of the test's own.</summary>
[Collection(nameof(KeptDataTests))]
public sealed class KeptDataTests : IDisposable
{
    private readonly Runs _runs = new();

    public KeptDataTests() => Environment.SetEnvironmentVariable("RINGWRIGHT_DATA", _runs.At("data"));

    public void Dispose()
    {
        Environment.SetEnvironmentVariable("RINGWRIGHT_DATA", Runs.NoData);
        _runs.Dispose();
    }

    [Fact]
    public void A_job_that_is_done_puts_its_rests_back_on_the_kept_rack_and_can_be_undone()
    {
        Assert.Equal(2, Runs.Run("boards", Path.Combine(Runs.Examples, "two-wood-disc.json"), "--done").Code);
        Assert.Equal(2, Runs.Run("boards", Path.Combine(Runs.Examples, "two-wood-disc.json"), "--kept").Code); // empty
        Assert.Equal(0, Runs.Run("rack", "take", Path.Combine(Runs.Examples, "small-rack.json")).Code);
        Assert.Equal(0, Runs.Run("boards", Path.Combine(Runs.Examples, "two-wood-disc.json"), "--kept", "--done").Code);
        string after = Runs.Run("rack", "list").Output;
        Assert.Contains("from P1", after, StringComparison.Ordinal);
        Assert.Equal(0, Runs.Run("rack", "undo").Code);
        Assert.DoesNotContain("from P1", Runs.Run("rack", "list").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_piece_is_taken_in_found_written_out_and_planned()
    {
        Assert.Equal("Piece 1 added, “Two-wood disc”.\n", Good("pieces", "take", Example("two-wood-disc")));
        Good("pieces", "take", Example("walnut-ring"));
        Assert.Equal([1], Runs.Json("pieces", "list", "padauk").GetProperty("pieces").EnumerateArray().Select(p => p.GetProperty("number").GetInt32()));
        Good("pieces", "write", "1", _runs.At("back.json"));
        Assert.Equal(0, Runs.Run("check", _runs.At("back.json")).Code);
        string list = Good("pieces", "list");
        Assert.StartsWith("2 pieces\n", list, StringComparison.Ordinal);
        Assert.Contains("Two-wood disc", list, StringComparison.Ordinal);
    }

    [Fact]
    public void Versions_are_kept_listed_and_gone_back_to()
    {
        Good("pieces", "take", Example("two-wood-disc"));
        Good("pieces", "keep", "1", "as drawn");
        Good("pieces", "take", Example("bead"), "--into", "1");
        JsonElement versions = Runs.Json("pieces", "versions", "1").GetProperty("versions");
        Assert.Equal(2, versions.GetArrayLength());
        string first = versions[1].GetProperty("version").GetInt64().ToString(CultureInfo.InvariantCulture);
        Assert.Equal("as drawn", versions[1].GetProperty("name").GetString());
        Good("pieces", "restore", "1", first);
        Assert.Contains("Two-wood disc", Good("pieces", "list"), StringComparison.Ordinal);
        Assert.Equal(3, Runs.Json("pieces", "versions", "1").GetProperty("versions").GetArrayLength());
    }

    [Fact]
    public void Pieces_are_renamed_duplicated_removed_and_put_back()
    {
        Good("pieces", "take", Example("two-wood-disc"));
        Good("pieces", "rename", "1", "Small disc");
        Assert.Equal(2, Runs.Json("pieces", "duplicate", "1").GetProperty("number").GetInt64());
        Good("pieces", "remove", "1");
        Assert.Contains("Small disc (2)", Good("pieces", "list"), StringComparison.Ordinal);
        Assert.Contains("Small disc", Good("pieces", "list", "--removed"), StringComparison.Ordinal);
        Good("pieces", "put-back", "1");
        Assert.StartsWith("2 pieces", Good("pieces", "list"), StringComparison.Ordinal);
    }

    [Fact]
    public void Shops_are_taken_in_used_and_written_out()
    {
        string shop = Example("small-shop");
        Good("shops", "take", shop);
        Good("new", "shop", _runs.At("club.json"), "--name", "Club");
        Good("shops", "take", _runs.At("club.json"));
        Good("shops", "use", "2");
        Assert.Equal([("Club", true), ("Small shop with a bandsaw", false)], Runs.Json("shops", "list").GetProperty("shops").EnumerateArray().Select(s => (s.GetProperty("name").GetString()!, s.GetProperty("inUse").GetBoolean())));
        Good("shops", "remove", "1");
        Good("shops", "put-back", "1");
        Good("shops", "write", "1", _runs.At("back.json"));
        Assert.Contains("\"kerf\": \"0.9 mm\"", File.ReadAllText(_runs.At("back.json")), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_shop_named_the_one_in_use_is_taken_and_said()
    {
        string piece = Example("two-wood-disc");
        string starting = Good("plan", piece);
        Good("shops", "take", Example("small-shop"));
        (int code, string kept, string note) = Runs.Run("plan", piece);
        Assert.Equal(0, code);
        Assert.Equal("Shop: “Small shop with a bandsaw”, the one in use in your data folder; --shop names another.\n", note);
        Assert.NotEqual(starting, kept);
        Assert.Equal(Good("plan", piece, "--shop", Example("small-shop")), kept);
        // An answer for a program is JSON and nothing else.
        (_, string json, note) = Runs.Run("reach", "--segments", "12", "--diameters", "20", "--json");
        using (JsonDocument.Parse(json)) Assert.Contains("Small shop", note, StringComparison.Ordinal);
        (_, _, note) = Runs.Run("diagnose", piece, "--read", "half rim 0.3 mm");
        Assert.Contains("Small shop", note, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_made_in_a_folder_without_data()
    {
        Good("check", Example("two-wood-disc"));
        Assert.False(Directory.Exists(_runs.At("data")));
    }

    [Fact]
    public void Settings_are_listed_set_and_used_where_something_is_printed()
    {
        Assert.Contains("print.paper", Good("settings", "list"), StringComparison.Ordinal);
        Assert.Equal("as usual\n", Good("settings", "get", "print.paper"));
        Assert.Equal("print.paper is letter.\n", Good("settings", "set", "print.paper", "letter"));
        Good("settings", "set", "print.correction", "99.7 mm,100.2 mm");
        Good("settings", "set", "print.duplex", "yes");
        Assert.Equal("letter", Runs.Json("settings", "get", "print.paper").GetProperty("value").GetString());
        Assert.Equal(JsonValueKind.Null, Runs.Json("settings", "list").GetProperty("settings").EnumerateArray().First(s => s.GetProperty("name").GetString() == "print.grid").GetProperty("value").ValueKind);
        (int code, _, string note) = Runs.Run("plan", Example("two-wood-disc"), "--out", _runs.At("kept"));
        Assert.Equal((0, "Printed as your settings say: print.paper letter, print.correction 99.7 mm,100.2 mm, print.duplex yes.\n"), (code, note));
        Assert.Contains("/MediaBox [0 0 612", Pdf("kept"), StringComparison.Ordinal);
        // What is told goes before what is kept.
        (_, _, note) = Runs.Run("plan", Example("two-wood-disc"), "--out", _runs.At("told"), "--paper", "a4");
        Assert.DoesNotContain("paper", note, StringComparison.Ordinal);
        Assert.DoesNotContain("/MediaBox [0 0 612", Pdf("told"), StringComparison.Ordinal);
        foreach (string name in (string[])["print.paper", "print.correction"]) Assert.Equal($"{name} is as usual.\n", Good("settings", "set", name));
        Assert.Equal("print.duplex is as usual.\n", Good("settings", "set", "print.duplex", "no"));
        Assert.Equal("", Runs.Run("plan", Example("two-wood-disc")).Complaints);
    }

    [Fact]
    public void The_rack_is_filled_changed_undone_and_written()
    {
        Good("rack", "add", "A1", "--wood", "maple", "--length", "600 mm", "--width", "3 1/2 in", "--thickness", "25", "--moisture", "8.5", "--defect", "120 mm to 150 mm, knot");
        Good("rack", "change", "a1", "--length", "450 mm");
        JsonElement board = Runs.Json("rack", "list").GetProperty("boards")[0];
        Assert.Equal((450, 88.9, 25, 8.5), (board.GetProperty("length").GetDouble(), board.GetProperty("width").GetDouble(), board.GetProperty("thickness").GetDouble(), board.GetProperty("moisture").GetDouble()));
        Assert.Equal("Undone: board A1 changed.\n", Good("rack", "undo"));
        Assert.Contains("600 mm", Good("rack", "list"), StringComparison.Ordinal);
        Good("rack", "redo");
        Good("rack", "write", _runs.At("rack.json"));
        Good("rack", "remove", "A1");
        Good("rack", "take", _runs.At("rack.json"));
        Assert.Contains("knot", File.ReadAllText(_runs.At("rack.json")), StringComparison.Ordinal);
        Assert.Contains("450 mm", Good("rack", "list"), StringComparison.Ordinal);
        Assert.Equal(4, Runs.Json("rack", "changes").GetProperty("changes").GetArrayLength());
    }

    [Fact]
    public void A_ring_that_was_laid_dry_is_added_and_learned_from()
    {
        string disc = Path.Combine(Runs.Examples, "two-wood-disc.json");
        Assert.StartsWith("Run 1 added", Good("record", "dry-ring", disc, "--read", "gathered rim 0.4 mm"), StringComparison.Ordinal);
        Good("record", "write", _runs.At("dry.csv"));
        Assert.Contains("24 wedges, 2 boards, 0.4 mm at rim", File.ReadAllText(_runs.At("dry.csv")), StringComparison.Ordinal);
        Assert.Contains("learned from 24 wedges", Good("learn"), StringComparison.Ordinal);
    }

    [Fact]
    public void Runs_are_recorded_exchanged_as_json_and_csv_and_learned_from()
    {
        Assert.StartsWith("2 of 2 runs added.", Good("record", "take", Path.Combine(Runs.Examples, "bench-record.json")), StringComparison.Ordinal);
        Good("record", "write", _runs.At("record.csv"));
        Assert.StartsWith("0 of 2 runs added; 2 were there already.", Good("record", "take", _runs.At("record.csv")), StringComparison.Ordinal);
        Assert.Equal(Good("learn", Path.Combine(Runs.Examples, "bench-record.json")), Good("learn"));
        Good("record", "add", "--wedge-angle", "15°", "--measured", "15.02°, 15.01°", "--sawn", "26", "--lost", "1", "--note", "Maple");
        JsonElement runs = Runs.Json("record", "list").GetProperty("runs");
        Assert.Equal((3, 2), (runs.GetArrayLength(), runs[2].GetProperty("measured").GetInt32()));
        Good("record", "write", _runs.At("record.json"));
        Assert.NotEqual(Good("learn", Path.Combine(Runs.Examples, "bench-record.json")), Good("learn", _runs.At("record.json")));
        Good("record", "remove", "3");
        Assert.StartsWith("2 runs", Good("record", "list"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("none with this number", "pieces", "write", "7", "x.json")]
    [InlineData("no such file", "pieces", "take", "nowhere.json")]
    [InlineData("--width: it is missing", "rack", "add", "A1", "--wood", "maple", "--length", "600 mm")]
    [InlineData("no stretch", "rack", "add", "A1", "--wood", "maple", "--length", "600", "--width", "80", "--thickness", "20", "--defect", "knot")]
    [InlineData("no board has the label", "rack", "change", "A1", "--length", "1 m")]
    [InlineData("nothing was measured", "record", "add")]
    [InlineData("3 lost of 2 sawn", "record", "add", "--sawn", "2", "--lost", "3")]
    [InlineData("Unknown command", "pieces", "dance")]
    [InlineData("there is none called “print.colour”", "settings", "get", "print.colour")]
    [InlineData("a4 or letter is needed; such as a4", "settings", "set", "print.paper", "a3")]
    [InlineData("more than 5 %", "settings", "set", "print.correction", "2,1")]
    [InlineData("yes or no", "settings", "set", "print.duplex", "perhaps")]
    [InlineData("no number of stickers", "settings", "set", "print.skip", "-4")]
    public void Wrong_words_get_a_sentence_and_change_nothing(string says, params string[] args)
    {
        (int code, string output, string complaints) = Runs.Run(args);
        Assert.Equal((2, ""), (code, output));
        Assert.Contains(says, complaints, StringComparison.Ordinal);
        Assert.Single(complaints.TrimEnd().Split('\n'));
    }

    [Fact]
    public void A_data_folder_that_cannot_be_is_a_file_fault()
    {
        Environment.SetEnvironmentVariable("RINGWRIGHT_DATA", Path.Combine(_runs.Write("file", ""), "data"));
        (int code, _, string complaints) = Runs.Run("pieces", "list");
        Assert.Equal(3, code);
        Assert.Contains("cannot be written", complaints, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_done_to_open_the_file_is_told()
    {
        Good("pieces", "take", Example("two-wood-disc"));
        File.WriteAllText(Path.Combine(_runs.At("data"), "ringwright.db"), "not a database");
        Assert.Contains("was damaged and is kept as", Good("pieces", "list"), StringComparison.Ordinal);
    }

    private string Pdf(string folder) => System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(Path.Combine(_runs.At(folder), "two-wood-disc.job-sheet.pdf")));

    private static string Example(string name) => Path.Combine(Runs.Examples, name + ".json");

    private static string Good(params string[] args)
    {
        (int code, string output, string complaints) = Runs.Run(args);
        Assert.Equal((0, ""), (code, complaints));
        return output;
    }
}
