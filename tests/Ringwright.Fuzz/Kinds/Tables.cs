using Ringwright.Cli;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Fuzz.Making;
using Ringwright.Fuzz.Running;
using Ringwright.Store;

namespace Ringwright.Fuzz.Kinds;

/// <summary>The record as comma-separated values.</summary>
public sealed class Tables : Kind
{
    private static readonly string[] Rightly = [RunLogCsv.Write(DocumentJson.ReadRunLog(Examples.Text("bench-record.json"))), .. Examples.Tables];

    public override string Name => "tables";

    public override string Ending => ".csv";

    public override string Make(Dice dice)
    {
        string table = dice.Chance(0.8) ? Rightly[0] : dice.One(Rightly);
        if (dice.Chance(0.3)) table = table.Replace(',', ';');
        return dice.Chance(0.05) ? table : OddText.Mutate(dice, table);
    }

    public override void Check(string input)
    {
        RunLog log = RunLogCsv.Read(input, "record");
        RunLog again = RunLogCsv.Read(RunLogCsv.Write(log), "record");
        Promise.Same(DocumentJson.Write(log), DocumentJson.Write(again), "what is written reads back as the same");
    }
}

/// <summary>Commands of the shell with odd words and files: an exit code that is documented, and one sentence.</summary>
public sealed class Commands : Kind
{
    private readonly string _folder = Directory.CreateTempSubdirectory("ringwright-fuzz-").FullName;

    public override string Name => "commands";

    public override string Make(Dice dice)
    {
        string[] pieces = [Examples.At("two-wood-disc.json"), Examples.At("walnut-ring.json"), Examples.At("feature-bowl.json"), Examples.At("mixed-ring.json"), Examples.At("stave-ring.json")];
        string piece = dice.One(pieces), shop = Examples.At("small-shop.json");
        string Of(params string[] odd) => dice.Chance(0.4) ? dice.One(odd) : OddText.Mutate(dice, dice.One(odd));
        List<string> words = dice.Below(17) switch
        {
            0 => ["plan", piece, "--sheets", Of("cover", "rings,glue", "all")],
            1 => ["check", piece, "--shop", dice.One([shop, piece, "none.json"])],
            2 => ["explain", piece, Of("board-width", "segments", "rim-edge")],
            3 => ["stack", piece, "--heights", Of("18 mm, 25 mm", "1 in", "0 mm", "3000 mm"), "--rim-edge", Of("25 mm", "1 in")],
            4 => ["pattern", piece, "--lay", Of("spiral maple,walnut 1", "checker maple,walnut", "zigzag maple,walnut 1 6")],
            5 => ["milling", piece, "--units", Of("mm", "in", "inch")],
            6 => ["glue", piece, "--units", Of("mm", "in")],
            7 => ["simulate", piece, "--seed", Of("1", "-1", "99999999999")],
            8 => ["fit", piece, "--rings", Of("3", "0", "-1", "2.5"), "--seed", Of("1")],
            9 => ["diagnose", piece, "--read", Of("gathered rim 0.4 mm", "half centre closed", "joint 3 rim top 0.1 mm", "wedge 14.9°")],
            10 => ["choose", TableFile(dice), "--segments", Of("12", "24"), "--depth", Of("8 mm", "0 mm"), "--radius", Of("9.5 mm")],
            11 => ["fit", piece, "--measured", TableFile(dice)],
            12 => ["reach", "--segments", Of("12-16/4", "24", "3-360/100"), "--diameters", Of("8-12/4", "19")],
            13 => ["cost", piece, "--shop", shop],
            14 => ["new", Of("disc", "ring", "bowl"), Path.Combine(_folder, "new.json"), "--segments", Of("24", "0", "3"), "--diameter", Of("19 mm", "1 in"), "--woods", Of("maple,padauk")],
            15 => ["labels", piece, "--out", Path.Combine(_folder, "labels.pdf"), "--grid", Of("3x7", "0x0", "1x1", "100x100")],
            _ => ["lathe", piece],
        };
        for (int changes = dice.Below(3); changes > 0; changes--)
        {
            int at = dice.Below(words.Count);
            if (dice.Chance(0.3)) words.RemoveAt(at);
            else if (dice.Chance(0.5)) words.Insert(at, dice.One(["--json", "--units", "in", "--ring", "Rim", "--shop", shop, "--", "--seed", "7", "--paper", "A4"]));
            else words[at] = OddText.Mutate(dice, words[at]);
            if (words.Count == 0) words.Add("plan");
        }

        // Only names that lead nowhere else: what is mutated must not write outside its folder.
        return string.Join('\u001f', words.Select(w => w.Contains("..", StringComparison.Ordinal) ? "dots" : w));
    }

    public override void Check(string input)
    {
        string[] words = input.Split('\u001f');
        if (Writes(words)) return;
        using var output = new StringWriter();
        using var complaints = new StringWriter();
        int code = CommandLine.Run(words, output, complaints);
        string said = complaints.ToString().TrimEnd('\r', '\n');
        Promise.That(code is 0 or 1 or 2 or 3, "the exit code is a documented one", $"{code}: {said}");
        if (code >= 2) Promise.That(Sentences.Fault(said, input) is null, "a complaint is one sentence", $"{Sentences.Fault(said, input)}: {said}");
        else Promise.That(said.Length == 0, "what goes well is not complained about", $"{said}");
        string printed = output.ToString();
        foreach (string word in (string[])["NaN", "∞", "Infinity"])
            Promise.That(!printed.Contains(word, StringComparison.Ordinal) || input.Contains(word, StringComparison.Ordinal), "no answer says NaN or ∞", $"…{Around(printed, word)}…");
    }

    public override IEnumerable<string> Simpler(string input)
    {
        string[] words = input.Split('\u001f');
        for (int i = 0; i < words.Length; i++) yield return string.Join('\u001f', words.Where((_, at) => at != i));
        foreach (string text in Simplify.Text(input)) yield return text;
    }

    protected override void Dispose(bool disposing)
    {
        Directory.Delete(_folder, recursive: true);
        base.Dispose(disposing);
    }

    // A mutation must not write where it likes.
    private bool Writes(string[] words) => words.Any(w => w is "pieces" or "shops" or "rack" or "record")
        || (words.Any(w => w.StartsWith("--out", StringComparison.Ordinal) || w.StartsWith("-o", StringComparison.Ordinal) || w.StartsWith("--picture", StringComparison.Ordinal) || w == "new" || w == "labels") && words.Any(w => w.Contains(_folder, StringComparison.Ordinal) && (w.Length > _folder.Length + 12 || !w.StartsWith(_folder, StringComparison.Ordinal))))
        || (words[0] is "new" or "labels" && !words.Any(w => w.StartsWith(_folder, StringComparison.Ordinal)));

    private string TableFile(Dice dice)
    {
        string path = Path.Combine(_folder, "table.csv");
        string table = dice.One(Examples.Tables);
        File.WriteAllText(path, dice.Chance(0.2) ? table : OddText.Mutate(dice, table));
        return path;
    }

    private static string Around(string text, string word)
    {
        int at = text.IndexOf(word, StringComparison.Ordinal);
        return text[Math.Max(0, at - 60)..Math.Min(text.Length, at + 20)];
    }
}
