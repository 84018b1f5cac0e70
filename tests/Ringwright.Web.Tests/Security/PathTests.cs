using Ringwright.Paper.Templates;
using Ringwright.Web.Bench;
using Ringwright.Web.Printing;

namespace Ringwright.Web.Tests.Security;

/// <summary>Names in addresses that try to be paths (OWASP Path Traversal, from memory), and names of rings that try to be files.</summary>
public class PathTests(RunningApp app) : IClassFixture<RunningApp>
{
    private static readonly string[] Names =
    [
        "..", "../..", "..%2f..%2f..%2fetc%2fpasswd", "..%252f..%252fetc%252fpasswd", "%2e%2e/%2e%2e/etc/passwd", "..\\..\\windows\\win.ini", "..%5c..%5cwindows%5cwin.ini",
        "%c0%ae%c0%ae%c0%af", "....//....//etc/passwd", "%2fetc%2fpasswd", "C:%5cwindows%5cwin.ini", "Disc%00.pdf", "Disc%00", "file:%2f%2f%2fetc%2fpasswd", "ringwright.db", "%0d%0aX-Mine:%20yes", "%ff%fe", "",
    ];

    private static readonly string[] Routes =
    [
        "/saw/{0}", "/saw/{0}/1", "/saw/1/{0}", "/saw/{0}/1/sheet.pdf", "/rings/{0}/job-sheet.pdf", "/pieces/current/views/{0}", "/pieces/current/views/{0}.svg", "/pieces/current/{0}", "/pieces/{0}",
        "/viewer/{0}/coarse.bin", "/viewer/{0}/fine.bin", "/viewer/{0}/whole.svg", "/viewer/{0}/unrolled.svg", "/css/{0}", "/js/dist/{0}", "/_framework/{0}", "/files/{0}", "/sharing/{0}", "/{0}",
        "/pieces/current/job-sheet.pdf?ring={0}", "/pieces/current/templates.svg.zip?kinds={0}",
    ];

    [Fact]
    public async Task No_route_leads_to_a_file_that_is_not_the_apps()
    {
        foreach (string route in Routes)
            foreach (string name in Names)
            {
                string path = string.Format(System.Globalization.CultureInfo.InvariantCulture, route, name);
                RawRequest.RawAnswer answer = await RawRequest.Get(app.Address, path);
                Assert.True(answer.Status < 500, $"{path}: {answer.Status}");
                Assert.DoesNotContain("root:", answer.Text, StringComparison.Ordinal);
                Assert.DoesNotContain("SQLite format", answer.Text, StringComparison.Ordinal);
                Assert.DoesNotContain("[fonts]", answer.Text, StringComparison.Ordinal);
                Assert.DoesNotContain("\r\nX-Mine:", answer.Head, StringComparison.Ordinal);
                Assert.DoesNotContain("   at ", answer.Text, StringComparison.Ordinal);
                // What answers at all is a page of the app, or the whole piece where no ring was named.
                if (answer.Status == 200) Assert.True(answer.Text.Contains("<title>", StringComparison.Ordinal) || name.Length == 0, $"{path} was answered");
            }
    }

    [Theory]
    [InlineData("/pieces/current/labels.pdf?skip=99999999999")]
    [InlineData("/pieces/current/labels.pdf?skip=-1")]
    [InlineData("/pieces/current/labels.pdf?skip=2147483647")]
    [InlineData("/pieces/current/labels.pdf?grid=2000000x2000000")]
    [InlineData("/pieces/current/labels.pdf?grid=3x7&margins=1e308,1e308")]
    [InlineData("/pieces/current/labels.pdf?margins=NaN,NaN")]
    [InlineData("/pieces/current/views/wedge.svg?wedge=-2147483648")]
    [InlineData("/pieces/current/views/wedge.svg?wedge=2147483647")]
    [InlineData("/pieces/current/views/wedge.svg?wedge=")]
    [InlineData("/pieces/current/job-sheet.pdf?correction=NaN,NaN")]
    [InlineData("/pieces/current/job-sheet.pdf?correction=1e-300,1e300")]
    [InlineData("/pieces/current/job-sheet.pdf?duplex=maybe")]
    [InlineData("/viewer/x/whole.svg?lengths=%00")]
    [InlineData("/sharing/code.svg?place=-1")]
    [InlineData("/sharing/code.svg?place=99999999999")]
    public async Task Values_beyond_sense_are_refused_with_a_sentence(string path)
    {
        RawRequest.RawAnswer answer = await RawRequest.Get(app.Address, path);
        Assert.InRange(answer.Status, 400, 499);
        Assert.DoesNotContain("Exception", answer.Text, StringComparison.Ordinal);
        Assert.EndsWith(".", answer.Text.TrimEnd('\r', '\n', '0'), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("../../evil")]
    [InlineData("..\\..\\evil")]
    [InlineData("/etc/cron.d/evil")]
    [InlineData("C:\\evil")]
    [InlineData("con")]
    [InlineData("a\u0000b")]
    [InlineData("\u202Egpj.exe")]
    public async Task A_rings_name_is_no_path_in_archives_and_file_names(string name)
    {
        Core.Pieces.Piece piece;
        try
        {
            piece = Core.Documents.DocumentJson.ReadPiece(Core.Documents.DocumentJson.Write(Example.Piece with { Name = name, Rings = [Example.Piece.Rings[0] with { Name = name }] }));
        }
        catch (Core.BadInputException)
        {
            return;
        }

        Sheet sheet = Sheet.Of(piece, Core.Pieces.Shop.Starting);
        var nothing = new PrintQuery(null, null, null, null, null, null, null, null, null, null, null);
        foreach (byte[] bytes in (byte[][])[PieceFiles.Templates(sheet, nothing, ".svg"), PieceFiles.Gauges(sheet, nothing, ".stl")])
        {
            await using var archive = new System.IO.Compression.ZipArchive(new MemoryStream(bytes));
            Assert.All(archive.Entries, e => Assert.Matches("^[a-z0-9-]+\\.(svg|stl)$", e.FullName));
        }

        Assert.Matches("^[a-z0-9-]+$", TemplateNames.Part(name + " x"));
        Assert.Matches("^[a-z0-9-]+\\.json$", PieceEndpoints.FileName(sheet, ".json"));
    }

    [Fact]
    public async Task Markup_in_names_stays_text_in_every_picture()
    {
        const string Name = "<script>alert(1)</script>\"'&";
        Sheet sheet = Sheet.Of(Example.Piece with { Name = Name, Notes = Name, Rings = [Example.Piece.Rings[0] with { Name = Name }] }, Core.Pieces.Shop.Starting);
        await using var own = new RunningApp();
        await own.InitializeAsync();
        own.Service<Workbench>().Put(sheet.Good.Piece);
        foreach (string path in (string[])["/", "/saw", "/print", "/pieces", "/saw/" + Uri.EscapeDataString(Name), "/pieces/current/views/ring.svg", "/pieces/current/views/wedge.svg"])
        {
            string text = await own.Client.GetStringAsync(path, TestContext.Current.CancellationToken);
            Assert.DoesNotContain("<script>alert", text, StringComparison.OrdinalIgnoreCase);
        }
    }
}
