using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;

namespace Ringwright.Store.Tests;

/// <summary>A data folder of a test's own, removed after it, with a clock that the test sets.</summary>
internal sealed class Desk(bool onDisk = false) : TimeProvider, IDisposable
{
    public static readonly StoreOptions Quick = new() { Patience = TimeSpan.FromSeconds(1) };

    private const string Memory = "/dev/shm";

    // Where memory can be had as a disk, flushing costs no time.
    public string Folder { get; } = !onDisk && Directory.Exists(Memory)
        ? Directory.CreateDirectory(Path.Combine(Memory, "ringwright-store-" + Path.GetRandomFileName())).FullName
        : Directory.CreateTempSubdirectory("ringwright-store-").FullName;

    public string DataFile => Path.Combine(Folder, "ringwright.db");

    public DateTimeOffset Now { get; set; } = new(2026, 11, 29, 20, 0, 0, TimeSpan.Zero);

    public static Piece Piece(string example = "two-wood-disc") => DocumentJson.ReadPiece(Text(example));

    public static string Text(string example) => File.ReadAllText(Path.Combine(SolutionFolder.Path, "examples", example + ".json"));

    public override DateTimeOffset GetUtcNow() => Now;

    public DataStore Open(StoreOptions? options = null) => DataStore.Open(Folder, this, options ?? Quick);

    public void Wait(TimeSpan time) => Now += time;

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
