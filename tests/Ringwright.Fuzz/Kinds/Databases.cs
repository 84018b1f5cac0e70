using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Fuzz.Making;
using Ringwright.Fuzz.Running;
using Ringwright.Store;

namespace Ringwright.Fuzz.Kinds;

/// <summary>
/// Data files with bytes changed, opened as the app opens them: whole, mended from the copy, or refused in one sentence; and after
/// that everything in it is read. With a good copy at hand something of the user's must always come back.
/// </summary>
public sealed class Databases : Kind
{
    private readonly string _folder = Directory.CreateDirectory(Path.Combine(Directory.Exists("/dev/shm") ? "/dev/shm" : Path.GetTempPath(), "ringwright-fuzz-" + Path.GetRandomFileName())).FullName;
    private readonly byte[] _copy;
    private readonly string _file;

    public Databases()
    {
        using (var store = DataStore.Open(_folder, TimeProvider.System))
        {
            long id = store.Pieces.Add(DocumentJson.ReadPiece(Examples.Text("two-wood-disc.json")), "typed");
            store.Pieces.Save(id, DocumentJson.ReadPiece(Examples.Text("walnut-ring.json")), "typed more");
            store.Pieces.Add(DocumentJson.ReadPiece(Examples.Text("picture-vase.json")));
            store.Pieces.SetThumbnail(id, [1, 2, 3]);
            store.Shops.Add(DocumentJson.ReadShop(Examples.Text("small-shop.json")));
            store.Rack.Take(DocumentJson.ReadRack(Examples.Text("small-rack.json")));
            store.Record.Take(DocumentJson.ReadRunLog(Examples.Text("bench-record.json")));
            store.Settings["units"] = "in";
        }

        _copy = File.ReadAllBytes(Data);
        _file = ByteMutator.Text(_copy);
    }

    public override string Name => "databases";

    public override string Ending => ".db";

    private string Data => Path.Combine(_folder, "ringwright.db");

    public override string Make(Dice dice) => ByteMutator.Mutate(dice, _file);

    // A shorter file is hardly ever the same fault; which of its bytes matter is seen at once.
    public override IEnumerable<string> Simpler(string input) => [];

    public override void Check(string input)
    {
        foreach (bool copied in (bool[])[true, false])
        {
            Prepare(input, copied);
            try
            {
                using var store = DataStore.Open(_folder, TimeProvider.System, new() { Patience = TimeSpan.FromSeconds(1) });
                if (store.Told is string told) Promise.That(Sentences.Fault(told, "") is null, "what was done to open the file is told in a sentence", $"{Sentences.Fault(told, "")}: {told}");
                int read = ReadAll(store);
                // What is damaged within a text, SQLite does not see; all else is found when the file is opened.
                if (copied && store.Told is not null) Promise.Same(2, read, "the copy brings the pieces back");
                store.Pieces.Add(DocumentJson.ReadPiece(Examples.Text("two-wood-disc.json")));
            }
            catch (StoreException e) when (e.Fault is StoreFault.Foreign or StoreFault.Newer)
            {
                // The header says so: the file must stay as it is.
                Promise.That(File.ReadAllBytes(Data).AsSpan().SequenceEqual(ByteMutator.Bytes(input)), "a file of another program is left as it is", $"{e.Message}");
                if (!copied) throw;
            }
        }
    }

    protected override void Dispose(bool disposing)
    {
        Directory.Delete(_folder, recursive: true);
        base.Dispose(disposing);
    }

    private void Prepare(string input, bool copied)
    {
        foreach (string file in Directory.GetFiles(_folder)) File.Delete(file);
        string copies = Path.Combine(_folder, "copies");
        if (Directory.Exists(copies)) Directory.Delete(copies, recursive: true);
        File.WriteAllBytes(Data, ByteMutator.Bytes(input));
        if (!copied) return;
        Directory.CreateDirectory(copies);
        File.WriteAllBytes(Path.Combine(copies, $"00001-{DateTime.UtcNow:yyyyMMdd'T'HHmmss'Z'}.db"), _copy);
    }

    // Reads everything; what cannot be read says so in a sentence.
    private static int ReadAll(DataStore store)
    {
        int pieces = 0;
        foreach (Action read in Reads(store, () => pieces++))
        {
            try
            {
                read();
            }
            catch (Exception e) when (e is BadInputException or StoreException)
            {
                Promise.That(Sentences.Fault(e.Message, "") is null, "what cannot be read says so in a sentence", $"{Sentences.Fault(e.Message, "")}: {e.Message}");
            }
        }

        return pieces;
    }

    private static IEnumerable<Action> Reads(DataStore store, Action good)
    {
        long[] ids = [];
        yield return () => ids = [.. store.Pieces.List().Select(p => p.Id)];
        foreach (long id in ids)
        {
            yield return () =>
            {
                store.Pieces.Read(id);
                good();
            };
            yield return () => store.Pieces.Thumbnail(id);
            long[] versions = [];
            yield return () => versions = [.. store.History.List(id).Select(v => v.Id)];
            foreach (long version in versions) yield return () => store.History.Read(id, version);
        }

        yield return () => store.Pieces.List("maple");
        yield return () => store.Pieces.Removed();
        long[] shops = [];
        yield return () => shops = [.. store.Shops.List().Select(s => s.Id)];
        foreach (long shop in shops) yield return () => store.Shops.Read(shop);
        yield return () => store.Shops.Current();
        yield return () => store.Rack.Read();
        yield return () => store.Rack.Changes();
        yield return () => store.Record.List();
        yield return () => store.Record.Read();
        yield return () => store.Settings.All();
    }
}
