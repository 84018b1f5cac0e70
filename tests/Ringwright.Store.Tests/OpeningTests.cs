using System.Globalization;
using Microsoft.Data.Sqlite;
using Ringwright.Core.Documents;

namespace Ringwright.Store.Tests;

/// <summary>Opening files that are new, old, newer, foreign, damaged or lost; and the daily copies.</summary>
public sealed class OpeningTests : IDisposable
{
    private readonly Desk _desk = new();

    public void Dispose() => _desk.Dispose();

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void A_file_of_every_past_version_is_brought_up_to_date_after_a_copy(int version)
    {
        PastFile.Make(version, _desk.DataFile);
        using (DataStore store = _desk.Open())
        {
            Assert.Null(store.Told);
            PieceState piece = store.Pieces.Read(1);
            Assert.Equal(("Two-wood disc", "19 mm or so"), (piece.Piece.Name, piece.Draft));
            Assert.Equal("first try", store.History.List(1)[^1].Name);
            Assert.Equal(1, Assert.Single(store.Pieces.List("padauk")).Id);
            Assert.Equal([1, 2, 3], store.Pieces.Thumbnail(1)!);
            Assert.Equal("in", store.Settings["units"]);
            Assert.Equal("Small shop with a bandsaw", store.Shops.Read(store.Shops.Current()!.Id).Name);
            Assert.Equal(version < 2 ? [] : ["A1"], store.Rack.Read().Boards.Select(b => b.Label));
            Assert.Equal(version < 3 ? [] : [28], store.Record.List().Select(r => r.Run.Sawn));
            Assert.Single(store.Copies);
        }

        Assert.Equal(3, Number("PRAGMA user_version"));
        Assert.Equal(0, Number("SELECT count(*) FROM pragma_foreign_key_check"));
    }

    [Fact]
    public void A_new_file_has_the_same_tables_as_an_old_one_brought_up_to_date()
    {
        using var other = new Desk();
        PastFile.Make(1, _desk.DataFile);
        _desk.Open().Dispose();
        other.Open().Dispose();
        Assert.Equal(Schema(other.DataFile), Schema(_desk.DataFile));
    }

    [Fact]
    public void A_newer_file_is_refused_and_left_as_it_is()
    {
        PastFile.Make(3, _desk.DataFile);
        Number("PRAGMA user_version = 99; SELECT 1");
        byte[] before = File.ReadAllBytes(_desk.DataFile);
        StoreException refused = Assert.Throws<StoreException>(() => _desk.Open());
        Assert.Equal(StoreFault.Newer, refused.Fault);
        Assert.Contains("version 99 and this Ringwright reads up to 3; a newer Ringwright is needed", refused.Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(_desk.DataFile));
    }

    [Fact]
    public void A_file_of_another_program_is_refused_and_left_as_it_is()
    {
        Number("CREATE TABLE theirs (x); SELECT 1");
        byte[] before = File.ReadAllBytes(_desk.DataFile);
        Assert.Equal(StoreFault.Foreign, Assert.Throws<StoreException>(() => _desk.Open()).Fault);
        Assert.Equal(before, File.ReadAllBytes(_desk.DataFile));
    }

    [Theory]
    [InlineData(nameof(Damage.Overwrite))]
    [InlineData(nameof(Damage.OverwriteHeader))]
    [InlineData(nameof(Damage.CutOff))]
    public void A_damaged_file_is_set_aside_and_the_newest_copy_comes_back(string damage)
    {
        Prepare();
        Action<string> spoil = damage switch { nameof(Damage.Overwrite) => Damage.Overwrite, nameof(Damage.OverwriteHeader) => Damage.OverwriteHeader, _ => Damage.CutOff };
        spoil(_desk.DataFile);
        byte[] spoilt = File.ReadAllBytes(_desk.DataFile);
        using DataStore store = _desk.Open();
        Assert.Equal("kept", store.Pieces.Find(1).Name);
        Assert.Contains("was damaged and is kept as ringwright-damaged-1.db; the copy of 30 November 2026, 21:00 UTC was taken in its place, and what was saved after that is not in it.", store.Told, StringComparison.Ordinal);
        Assert.Equal(spoilt, File.ReadAllBytes(Path.Combine(_desk.Folder, "ringwright-damaged-1.db")));
        store.Pieces.Rename(1, "goes on");
        using DataStore again = _desk.Open();
        Assert.Null(again.Told);
    }

    // Found by fuzzing: each is an error of its own to SQLite, and none says that the file is damaged.
    [Theory]
    [InlineData("the header's format", 19, 9)]
    [InlineData("the schema's format", 47, 9)]
    [InlineData("a version below nought", 60, 0xCA)]
    [InlineData("a version of nought", 63, 0)]
    [InlineData("a version too low for its tables", 63, 1)]
    public void A_header_with_one_wrong_byte_is_damage_too(string what, int at, byte value)
    {
        Prepare();
        Damage.SetByte(_desk.DataFile, at, value);
        using DataStore store = _desk.Open();
        Assert.True(store.Told?.Contains("the copy of", StringComparison.Ordinal), what);
        Assert.Equal("kept", store.Pieces.Find(1).Name);
    }

    [Theory]
    [InlineData("DELETE FROM piece_words_config; SELECT 1")]
    [InlineData("DROP TABLE piece_words_data; SELECT 1")]
    [InlineData("PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = 'CREATE TABLE board (nothing)' WHERE name = 'board'; SELECT 1")]
    public void Tables_that_are_not_as_they_were_made_are_damage_too(string damage)
    {
        Prepare();
        Number(damage);
        using DataStore store = _desk.Open();
        Assert.Contains("the copy of", store.Told, StringComparison.Ordinal);
        Assert.Equal("kept", store.Pieces.Find(1).Name);
    }

    [Fact]
    public void A_damaged_copy_is_passed_over_for_an_older_one()
    {
        Prepare();
        _desk.Wait(TimeSpan.FromDays(2));
        using (DataStore store = _desk.Open()) Damage.Overwrite(store.Copies[0].Path);
        Damage.Overwrite(_desk.DataFile);
        using DataStore mended = _desk.Open();
        Assert.Contains("30 November", mended.Told, StringComparison.Ordinal);
        Assert.Equal("kept", mended.Pieces.Find(1).Name);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_lost_or_emptied_file_comes_back_from_the_copy(bool emptied)
    {
        Prepare();
        if (emptied) Damage.Empty(_desk.DataFile);
        else File.Delete(_desk.DataFile);
        // A log that belongs to no file any more must not be played into the copy.
        File.WriteAllText(_desk.DataFile + "-wal", "not a log");
        using DataStore store = _desk.Open();
        Assert.Contains("was missing or empty; the copy of", store.Told, StringComparison.Ordinal);
        Assert.Equal("kept", store.Pieces.Find(1).Name);
    }

    [Fact]
    public void Damaged_without_any_copy_it_starts_empty_says_so_and_keeps_the_file()
    {
        using (DataStore store = _desk.Open()) store.Pieces.Add(Desk.Piece());
        Damage.Overwrite(_desk.DataFile);
        using DataStore empty = _desk.Open();
        Assert.EndsWith("there was no good copy to go back to, so Ringwright starts empty.", empty.Told, StringComparison.Ordinal);
        Assert.Empty(empty.Pieces.List());
        Assert.True(File.Exists(Path.Combine(_desk.Folder, "ringwright-damaged-1.db")));
    }

    [Fact]
    public void A_damaged_file_that_another_Ringwright_has_open_stays_in_place()
    {
        Prepare();
        using DataStore open = _desk.Open();
        Damage.Overwrite(_desk.DataFile);
        StoreException refused = Assert.Throws<StoreException>(() => _desk.Open());
        Assert.Equal(StoreFault.Damaged, refused.Fault);
        Assert.Contains("close the other Ringwright", refused.Message, StringComparison.Ordinal);
        Assert.True(File.Exists(_desk.DataFile));
    }

    [Fact]
    public void A_copy_is_taken_once_a_day_and_the_last_seven_are_kept()
    {
        for (int hour = 0; hour < 24 * 12; hour += 8)
        {
            using DataStore store = _desk.Open();
            store.Settings["hour"] = hour.ToString(CultureInfo.InvariantCulture);
            _desk.Wait(TimeSpan.FromHours(8));
        }

        using DataStore last = _desk.Open();
        Assert.Equal(7, last.Copies.Count);
        Assert.All(last.Copies.Zip(last.Copies.Skip(1)), pair => Assert.Equal(TimeSpan.FromDays(1), pair.First.Taken - pair.Second.Taken));
        Assert.Empty(Directory.GetFiles(Path.Combine(_desk.Folder, "copies"), "*.part*"));
    }

    [Fact]
    public void Work_goes_on_and_it_is_told_when_the_daily_copy_cannot_be_made()
    {
        _desk.Open().Dispose();
        File.WriteAllText(Path.Combine(_desk.Folder, "copies"), "in the way");
        using DataStore store = _desk.Open();
        Assert.Contains("today's copy of your work could not be made", store.Told, StringComparison.Ordinal);
        store.Pieces.Add(Desk.Piece());
    }

    [Fact]
    public void A_clock_that_was_once_wrong_does_not_stop_the_copies()
    {
        _desk.Wait(TimeSpan.FromDays(4000));
        Prepare();
        _desk.Wait(TimeSpan.FromDays(-4000));
        using DataStore store = _desk.Open();
        Assert.Equal(_desk.Now, store.Copies[0].Taken);
    }

    [Fact]
    public void Many_at_once_make_one_good_file()
    {
        Parallel.For(0, 8, _ =>
        {
            using DataStore store = _desk.Open(new() { Patience = TimeSpan.FromSeconds(20) });
            store.Pieces.Add(Desk.Piece());
        });
        using DataStore all = _desk.Open();
        Assert.Null(all.Told);
        Assert.Equal(8, all.Pieces.List().Count);
    }

    // A piece named "kept" at 20:00, copied the next day at 21:00, then renamed.
    private void Prepare()
    {
        using (DataStore store = _desk.Open()) store.Pieces.Add(Desk.Piece() with { Name = "kept" });
        _desk.Wait(TimeSpan.FromHours(25));
        using DataStore again = _desk.Open();
        for (int i = 0; i < 30; i++) again.Pieces.Add(DocumentJson.ReadPiece(Desk.Text("picture-vase")));
        again.Pieces.Rename(1, "later");
    }

    private long Number(string sql) => Convert.ToInt64(Ask(_desk.DataFile, sql)[0], CultureInfo.InvariantCulture);

    private static List<string> Schema(string file) => Ask(file, "SELECT name || ' ' || coalesce(sql, '') FROM sqlite_schema ORDER BY name");

    private static List<string> Ask(string file, string sql)
    {
        using var connection = new SqliteConnection($"Data Source={file};Pooling=False");
        connection.Open();
        using SqliteCommand command = connection.CreateCommand();
        command.CommandText = sql;
        using SqliteDataReader reader = command.ExecuteReader();
        var rows = new List<string>();
        while (reader.Read()) rows.Add(reader.GetValue(0).ToString()!);
        return rows;
    }
}
