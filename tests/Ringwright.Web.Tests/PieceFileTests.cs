using System.IO.Compression;
using System.Net;
using Ringwright.Web.Bench;
using Ringwright.Web.Printing;

namespace Ringwright.Web.Tests;

/// <summary>Papers and files as the app answers them.</summary>
public class PieceFileTests(RunningApp app) : IClassFixture<RunningApp>
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task The_page_offers_the_job_sheets_and_they_are_several_pages()
    {
        Assert.Contains(PieceEndpoints.JobSheetPath, await app.Client.GetStringAsync(PrintPage.Address, Cancel), StringComparison.Ordinal);
        Assert.True((await app.Client.GetByteArrayAsync(PieceEndpoints.JobSheetPath, Cancel)).Length > 10_000);
    }

    [Theory]
    [InlineData("job-sheet.pdf", "%PDF")]
    [InlineData("job-sheet.pdf?paper=letter&duplex=true&sheets=cover,rings&correction=1.003,0.998&ring=Disc", "%PDF")]
    [InlineData("templates.pdf?kinds=wedge", "%PDF")]
    [InlineData("labels.pdf?grid=2x4&margins=10mm,10mm&skip=3&outlines=true", "%PDF")]
    [InlineData("templates.svg.zip", "PK")]
    [InlineData("templates.dxf.zip?ring=Disc", "PK")]
    [InlineData("gauges.stl.zip", "PK")]
    [InlineData("gauges.3mf.zip", "PK")]
    [InlineData("solid.glb", "glTF")]
    [InlineData("solid.3mf", "PK")]
    [InlineData("figures.xlsx", "PK")]
    [InlineData("plan.json", "{")]
    [InlineData("views/ring.png", "\u0089PNG")]
    [InlineData("views/wedge.svg", "<svg")]
    [InlineData("views/fence.pdf", "%PDF")]
    public async Task Every_file_is_of_its_kind(string file, string start)
    {
        byte[] bytes = await app.Client.GetByteArrayAsync($"/pieces/current/{file}", Cancel);
        Assert.StartsWith(start, string.Concat(bytes.Take(start.Length).Select(b => (char)b)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("job-sheet.pdf?paper=a3", "a4 or letter")]
    [InlineData("job-sheet.pdf?sheets=menu", "“menu”")]
    [InlineData("job-sheet.pdf?correction=2,1", "more than 5 %")]
    [InlineData("job-sheet.pdf?ring=None", "“None”")]
    [InlineData("labels.pdf?grid=3", "such as 3x7")]
    [InlineData("labels.pdf?margins=wide,2", "margins")]
    [InlineData("labels.pdf?skip=99", "cannot be skipped")]
    [InlineData("templates.pdf?kinds=saw", "“saw”")]
    [InlineData("views/none.svg", "“none”")]
    [InlineData("views/ring.bmp", ".svg, .png, .pdf")]
    [InlineData("views/board.svg", "nothing to show")]
    public async Task What_cannot_be_printed_is_said_in_a_sentence(string file, string words)
    {
        using HttpResponseMessage answer = await app.Client.GetAsync($"/pieces/current/{file}", Cancel);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains(words, await answer.Content.ReadAsStringAsync(Cancel), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_label_leads_to_its_ring_by_any_name()
    {
        await using var own = new RunningApp();
        await own.InitializeAsync();
        Workbench bench = own.Service<Workbench>();
        foreach (string name in (string[])["Foot", "Rim / lip", "100 % oak", "Ärmel", "a%2Fb"])
        {
            bench.Put(Example.Piece with { Rings = [Example.Piece.Rings[0] with { Name = name }] });
            byte[] pdf = await own.Client.GetByteArrayAsync(Paper.Labels.Label.PathOf(name), Cancel);
            Assert.Equal("%PDF"u8.ToArray(), pdf[..4]);
        }

        using HttpResponseMessage none = await own.Client.GetAsync("/rings/Other/job-sheet.pdf", Cancel);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, none.StatusCode);
    }

    [Fact]
    public async Task Archives_hold_one_file_of_each_template()
    {
        using var archive = new ZipArchive(new MemoryStream(await app.Client.GetByteArrayAsync("/pieces/current/templates.dxf.zip", Cancel)));
        Assert.Equal(PieceFiles.TemplatesOf(Example.Sheet, Nothing).Length, archive.Entries.Select(e => e.Name).Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(archive.Entries, e => Assert.EndsWith(".dxf", e.Name, StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_chosen_stands_in_the_address_and_is_read_again()
    {
        Sheet sheet = Example.Sheet;
        var query = PrintQuery.Of(new Dictionary<string, string> { ["paper"] = "letter", ["correction"] = "99.7 mm,100.2 mm ", ["skip"] = "x", ["gaps"] = " " });
        Assert.Equal("/a?paper=letter&correction=99.7%20mm%2C100.2%20mm", query.At("/a", "paper", "duplex", "correction", "ring"));
        Assert.Contains("no number", query.Problem(sheet), StringComparison.Ordinal);
        Assert.Equal(100 / 99.7, query.Options(sheet, default).Correction.Across, 12);
        Assert.Null(Nothing.Problem(Example.Sheet));
        Assert.Equal("/a", Nothing.At("/a", "skip"));
    }

    private static PrintQuery Nothing => PrintQuery.Of(ImmutableDictionary<string, string>.Empty);
}
