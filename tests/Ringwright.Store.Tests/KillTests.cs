using System.Diagnostics;
using System.Globalization;
using Microsoft.Data.Sqlite;

namespace Ringwright.Store.Tests;

/// <summary>
/// A process is killed (SIGKILL) again and again while it saves, on a real disk. RINGWRIGHT_KILLS sets how often; a kill does not
/// take the disk's own cache with it, as a power cut may.
/// </summary>
public sealed class KillTests(ITestOutputHelper output)
{
    private static readonly int Kills = int.Parse(Environment.GetEnvironmentVariable("RINGWRIGHT_KILLS") ?? "12", CultureInfo.InvariantCulture);

    [Fact]
    public void Killed_while_saving_at_random_moments_the_last_confirmed_save_is_there_and_nothing_is_half()
    {
        using var desk = new Desk(onDisk: true);
        long id;
        using (DataStore store = desk.Open()) id = store.Pieces.Add(Desk.Piece());
        var random = new Random(20_260);
        int amid = 0, after = 0, saves = 0;
        for (int kill = 0; kill < Kills; kill++)
        {
            using var writer = new OtherProcess("save", desk.Folder);
            writer.WaitFor("ready");
            for (int lines = random.Next(1, 12); lines > 0; lines--) writer.WaitFor("");
            Pause(random.NextDouble() * 4);
            writer.Kill();
            (int begun, int done) = writer.Reached;
            Assert.Equal("", writer.Errors);
            Assert.Equal("ok", Check(desk.DataFile));
            int stored = Stored(desk, id);
            Assert.InRange(stored, done, begun);
            if (begun > done) amid++;
            if (begun > done && stored == begun) after++;
            saves = stored;
        }

        output.WriteLine($"{Kills} kills in {saves} saves: {amid} between begin and confirmation, {after} of these after the save was on the disk.");
        Assert.True(amid >= Kills / 3, $"Only {amid} of {Kills} kills fell into a save.");
    }

    [Fact]
    public void Killed_while_an_old_file_is_brought_up_to_date_it_is_old_or_new()
    {
        var random = new Random(20_261);
        for (int kill = 0; kill < Math.Max(4, Kills / 5); kill++)
        {
            using var desk = new Desk(onDisk: true);
            PastFile.Make(1, desk.DataFile);
            KillWhileOpening(desk, random);
            using DataStore store = desk.Open();
            Assert.Null(store.Told);
            Assert.Equal("Two-wood disc", store.Pieces.List()[0].Name);
            Assert.NotEmpty(store.Copies);
        }
    }

    [Fact]
    public void Killed_while_a_damaged_file_is_set_aside_the_copy_still_comes_back()
    {
        var random = new Random(20_262);
        for (int kill = 0; kill < Math.Max(4, Kills / 5); kill++)
        {
            using var desk = new Desk(onDisk: true);
            using (DataStore store = desk.Open()) store.Pieces.Add(Desk.Piece());
            desk.Open().Dispose();
            Damage.Overwrite(desk.DataFile);
            KillWhileOpening(desk, random);
            using DataStore mended = desk.Open();
            Assert.Equal("Two-wood disc", Assert.Single(mended.Pieces.List()).Name);
            Assert.Single(Directory.GetFiles(desk.Folder, "ringwright-damaged-*.db"));
        }
    }

    private static void KillWhileOpening(Desk desk, Random random)
    {
        using var opener = new OtherProcess("open", desk.Folder);
        opener.WaitFor("opening");
        Pause(random.NextDouble() * 250);
        opener.Kill();
    }

    // The file, looked at before Ringwright opens it.
    private static string Check(string file)
    {
        using var connection = new SqliteConnection($"Data Source={file};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = "PRAGMA integrity_check";
        return (string)command.ExecuteScalar()!;
    }

    // The greatest number in any of the places that the writer changes in turn; each is whole.
    private static int Stored(Desk desk, long id)
    {
        using DataStore store = desk.Open();
        Assert.Null(store.Told);
        PieceState state = store.Pieces.Read(id);
        Core.Boards.Rack rack = store.Rack.Read();
        Assert.All(rack.Boards, b => Assert.Equal(rack.Name, b.Note));
        if (state.Draft is { Length: > 20 } draft) Assert.EndsWith(new string('x', 60_000), draft, StringComparison.Ordinal);
        string?[] found = [store.Settings["last"], state.Draft?.Split(' ')[0], rack.Boards.IsEmpty ? null : rack.Name, state.Piece.Notes is { Length: > 60_000 } notes ? notes.Split(' ')[0] : null];
        int newest = found.Max(f => f is null ? 0 : int.Parse(f, CultureInfo.InvariantCulture));
        // The writer goes on after the greatest number.
        store.Settings["last"] = newest.ToString(CultureInfo.InvariantCulture);
        return newest;
    }

    // Shorter than the system's timer can wait.
    private static void Pause(double milliseconds)
    {
        var passed = Stopwatch.StartNew();
        while (passed.Elapsed.TotalMilliseconds < milliseconds) Thread.SpinWait(20);
    }
}
