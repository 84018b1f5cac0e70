// The other process of the tests: it saves until it is killed, keeps the data file locked, or opens it once.
// Usage: Ringwright.Store.Writer save|lock|open FOLDER
using System.Globalization;
using Microsoft.Data.Sqlite;
using Ringwright.Core.Boards;
using Ringwright.Core.Measures;
using Ringwright.Store;

(string mode, string folder) = (args[0], args[1]);
var console = new StreamWriter(Console.OpenStandardOutput()) { AutoFlush = true };
if (mode == "lock")
{
    using var connection = new SqliteConnection($"Data Source={Path.Combine(folder, "ringwright.db")};Pooling=False");
    connection.Open();
    using SqliteTransaction transaction = connection.BeginTransaction();
    console.WriteLine("locked");
    Console.In.ReadToEnd();
    return;
}

// A test that ends without killing it closes the input.
new Thread(() =>
{
    Console.In.ReadToEnd();
    Environment.Exit(0);
})
{ IsBackground = true }.Start();
console.WriteLine("opening");
using DataStore store = DataStore.Open(folder, TimeProvider.System);
console.WriteLine("ready");
if (mode == "save") Save();

// Every kind of change in turn; what stands in the file says which was the last.
void Save()
{
    PieceEntry entry = store.Pieces.List()[0];
    PieceState state = store.Pieces.Read(entry.Id);
    int last = store.Settings["last"] is string text ? int.Parse(text, CultureInfo.InvariantCulture) : 0;
    string padding = new('x', 60_000);
    for (int n = last + 1; ; n++)
    {
        string number = n.ToString(CultureInfo.InvariantCulture);
        console.WriteLine("begin " + number);
        Change(n, number);
        console.WriteLine("done " + number);
    }

    void Change(int n, string number)
    {
        switch (n % 4)
        {
            case 0: store.Pieces.SaveDraft(entry.Id, number + ' ' + padding); break;
            case 1: store.Pieces.Save(entry.Id, state.Piece with { Notes = number + ' ' + padding }, number); break;
            case 2: store.Rack.Take(new Rack { Name = number, Boards = [.. Enumerable.Range(1, 40).Select(i => Board(i, n))] }); break;
            default: store.Settings["last"] = number; break;
        }
    }
}

static RackBoard Board(int index, int n) => new()
{
    Label = string.Create(CultureInfo.InvariantCulture, $"B{index}"),
    Wood = "maple",
    Note = n.ToString(CultureInfo.InvariantCulture),
    Length = Length.FromMillimetres(400),
    Width = Length.FromMillimetres(60),
    Thickness = Length.FromMillimetres(20),
};
