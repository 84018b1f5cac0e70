using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Store;
using Ringwright.Store.Files;

namespace Ringwright.Bench;

/// <summary>Saving what was typed, and a piece of 1,500 segments, flushed to the disk, against a file of its own for each save; and opening a file with years of work.</summary>
internal sealed class StoreBench : IBench
{
    private const double PromisedDraftMs = 5, PromisedOpenMs = 250;
    private const int Times = 20;
    private const int PiecesKept = 300;

    public string Name => "store";

    public string Title => "a save in the data file, flushed to the disk; opening the file";

    // Sixty rings of twenty-five segments, each with a wood of its own.
    private static Piece Piece { get; } = new()
    {
        Name = "Vase",
        Rings = [.. Enumerable.Range(1, 60).Select(i => (Ring)new SegmentRing
        {
            Name = $"Ring {i}", Segments = 25, Diameter = Mm(150), InnerDiameter = Mm(120), Thickness = Mm(4), Woods = [.. Enumerable.Range(0, 25).Select(j => (i + j) % 3 == 0 ? "walnut" : "maple")],
        })],
    };

    public void Run(TextWriter output)
    {
        string folder = Directory.CreateTempSubdirectory("ringwright-bench-").FullName;
        try
        {
            Saves(output, folder);
            output.WriteLine();
            Openings(output, folder);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Saves(TextWriter output, string folder)
    {
        using DataStore store = DataStore.Open(folder, TimeProvider.System);
        long id = store.Pieces.Add(Piece);
        string document = DocumentJson.Write(Piece), file = Path.Combine(folder, "alone.json");
        string draft = new('x', 20_000);
        int n = 0;
        output.WriteLine($"The piece is {document.Length / 1000} kB of JSON, the draft {draft.Length / 1000} kB of text.");
        output.WriteLine();
        Contest.Write(output,
        [
            Way.Short("a file of its own: written beside, flushed, renamed", Times, () => SafeFile.Write(file, draft + n++), "the draft"),
            Way.Short("the draft", Times, () => store.Pieces.SaveDraft(id, draft + n++)) with { MostMs = PromisedDraftMs },
            Way.Short("piece and draft", Times, () => store.Pieces.Save(id, Piece with { Notes = $"{n++}" }, draft + n)),
        ]);
    }

    private static void Openings(TextWriter output, string folder)
    {
        using (DataStore store = DataStore.Open(folder, TimeProvider.System))
        {
            foreach (int i in Enumerable.Range(0, PiecesKept)) store.Pieces.Add(Piece with { Name = $"Vase {i}" });
        }

        string file = Path.Combine(folder, "ringwright.db");
        output.WriteLine($"{PiecesKept} pieces of 1,500 segments, {new FileInfo(file).Length / 1_000_000} MB.");
        output.WriteLine();
        Contest.Write(output,
        [
            Way.Of("reading every byte of the file", () => File.ReadAllBytes(file)),
            Way.Of("opening it, with the check of the whole file", () => DataStore.Open(folder, TimeProvider.System).Dispose()) with { MostMs = PromisedOpenMs },
        ]);
    }

    private static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);
}
