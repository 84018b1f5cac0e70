using System.Collections.Immutable;
using CsCheck;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Store.Tests;

public sealed class RecordTests : IDisposable
{
    private readonly Desk _desk = new();
    private readonly DataStore _store;

    public RecordTests() => _store = _desk.Open();

    private static Gen<LoggedRun> AnyRun =>
        from sled in Gen.Enum<SledKind>()
        from note in Gen.String.Select(n => n.Replace("\0", "", StringComparison.Ordinal)).Where(n => n == n.Trim() && n.All(c => !char.IsSurrogate(c) && (c >= ' ' || c == '\n')))
        from guard in Gen.Int[0, 6].Select(i => new[] { "", "=", "'", "'=", "-", "@", "+" }[i])
        from rows in Gen.Int[-4_000, 4_000].Array[1, 5].Array[0, 3]
        from wedges in Gen.Int[3, 36].Array[0, 3]
        from gap in Gen.Double[0, 0.5]
        from sawn in Gen.Int[0, 90]
        from minutes in Gen.Double[0.1, 60]
        select new LoggedRun
        {
            Sled = sled,
            Note = guard + note is { Length: > 0 } text ? text : null,
            WedgeAngle = rows.Length > 0 ? Angle.FromDegrees(15) : null,
            Measured = [.. rows.Select(row => row.Select(e => Angle.FromDegrees(15 + (e / 1000.0))).ToImmutableArray())],
            Closures = [.. wedges.Select((w, i) => new LoggedClosure { Wedges = w, Boards = 1 + i, Gap = Length.FromMillimetres(Math.Round(gap, 3)), At = i % 2 == 0 ? OpenAt.Rim : OpenAt.Centre, Reach = Length.FromMillimetres(71.5) })],
            Sawn = sawn,
            Lost = sawn / 7,
            Cuts = sawn,
            CuttingMinutes = sawn == 0 ? 0 : minutes,
        };

    public void Dispose()
    {
        _store.Dispose();
        _desk.Dispose();
    }

    [Fact]
    public void The_record_comes_back_as_the_document_that_learning_reads()
    {
        string text = Desk.Text("bench-record").Replace("\"sawn\": 28", "\"blade\": \"3 tpi\", \"sawn\": 28", StringComparison.Ordinal);
        RunLog log = DocumentJson.ReadRunLog(text);
        Assert.Equal(2, _store.Record.Take(log));
        using DataStore again = _desk.Open();
        Assert.Equal(DocumentJson.Write(log), DocumentJson.Write(again.Record.Read()));
    }

    [Fact]
    public void Taking_the_same_file_twice_teaches_nothing_twice()
    {
        RunLog log = DocumentJson.ReadRunLog(Desk.Text("bench-record"));
        Assert.Equal(2, _store.Record.Take(log));
        Assert.Equal(0, _store.Record.Take(log));
        // The same run made twice and written down twice counts twice.
        Assert.Equal(1, _store.Record.Take(log with { Runs = log.Runs.Add(log.Runs[0]) }));
        Assert.Equal(3, _store.Record.List().Count);
    }

    [Fact]
    public void A_run_is_added_removed_and_put_back()
    {
        long id = _store.Record.Add(new() { Sled = SledKind.OneFence, Sawn = 26, Lost = 2 });
        _store.Record.Remove(id);
        Assert.Empty(_store.Record.Read().Runs);
        Assert.Equal(id, Assert.Single(_store.Record.Removed()).Id);
        _store.Record.PutBack(id);
        Assert.Equal(26, Assert.Single(_store.Record.List()).Run.Sawn);
        Assert.Throws<BadInputException>(() => _store.Record.Add(new() { Sled = SledKind.OneFence, Sawn = 2, Lost = 3 }));
        Assert.Throws<BadInputException>(() => _store.Record.Remove(99));
    }

    [Fact]
    public void Any_record_comes_back_from_json_and_from_csv() =>
        AnyRun.Array[0, 4].Sample(
            runs =>
            {
                var log = new RunLog { Name = "Any", Runs = [.. runs] };
                string text = DocumentJson.Write(log);
                Assert.Equal(text, DocumentJson.Write(RunLogCsv.Read(RunLogCsv.Write(log), "Any")));
                using var desk = new Desk();
                using DataStore store = desk.Open();
                store.Record.Take(log);
                Assert.Equal(DocumentJson.Write(log with { Name = "" }), DocumentJson.Write(store.Record.Read() with { Name = "" }));
            },
            iter: 60);

    [Fact]
    public void The_csv_is_what_a_spreadsheet_shows() => Assert.Equal(
        """
        sled,note,wedgeAngle,measured,closures,sawn,lost,cuts,cuttingMinutes,facesSanded,sandingMinutes
        two fences,"First disc of 24, maple; fences set by the rule.",15°,15.06°; 15.02°; 14.98°; 15.03°; 15.09°; 15.04° / 15.01°; 15.07°; 15.05°; 14.99°,,28,1,30,14,48,31
        two fences,"Ring of 16, walnut and cherry; fences set with the sine bar.",,,"16 wedges, 2 boards, 0.4 mm at rim, read at 71 mm",19,0,22,12.5,32,18

        """.ReplaceLineEndings("\r\n"),
        RunLogCsv.Write(DocumentJson.ReadRunLog(Desk.Text("bench-record"))));

    [Theory]
    [InlineData("", "line 1: the heading is missing")]
    [InlineData("sled,colour\ntwo fences,red", "line 1: there is no column “colour”")]
    [InlineData("sled,sawn,lost\ntwo fences,28,1\ntwo fences,5,9", "line 3, lost: 9 lost of 5 sawn cannot be")]
    [InlineData("sled,sawn\ntwo fences,many", "line 2, sawn: “many” is no number")]
    [InlineData("sled,sawn\nthree fences,4", "line 2")]
    [InlineData("sled,closures\ntwo fences,open at the rim", "line 2, closures: “open at the rim” is no closure")]
    [InlineData("sled,wedgeAngle,measured\ntwo fences,15°,16 wide", "line 2")]
    public void A_bad_line_is_named(string text, string says) =>
        Assert.StartsWith(says, Assert.Throws<BadInputException>(() => RunLogCsv.Read(text, "x")).Message, StringComparison.Ordinal);

    [Fact]
    public void Semicolons_and_decimal_commas_of_a_spreadsheet_will_do()
    {
        LoggedRun run = Assert.Single(RunLogCsv.Read("sled;sawn;cuts;cuttingMinutes\r\none fence;12;12;7,5\r\n", "x").Runs);
        Assert.Equal((SledKind.OneFence, 12, 7.5), (run.Sled, run.Sawn, run.CuttingMinutes));
    }
}
