using System.Net;
using Ringwright.Store;
using Ringwright.Web.Bench;
using Ringwright.Web.Printing;
using Ringwright.Web.Saving;

namespace Ringwright.Web.Tests.Printing;

/// <summary>How the user prints: chosen once, for every piece and every station, and kept.</summary>
public class PrintChoicesTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_is_chosen_holds_for_every_station_and_every_piece_and_the_shell_reads_it()
    {
        await using var app = new RunningApp();
        await app.InitializeAsync();
        Workbench bench = app.Service<Workbench>();
        PrintChoices choices = app.Service<PrintChoices>();
        choices.Set("paper", "letter");
        choices.Set("correction", "99.7 mm, 100.2 mm ");
        choices.Set("duplex", "yes");
        bench.Put(Example.BenchWith("feature-bowl.json").Now);
        foreach (string page in (string[])["/saw", "/fit", "/glue", "/lathe", "/cost", PrintPage.Address])
            Assert.Contains("paper=letter&amp;duplex=true", await app.Client.GetStringAsync(page, Cancel), StringComparison.Ordinal);
        string pdf = System.Text.Encoding.Latin1.GetString(await app.Client.GetByteArrayAsync(Paper.Labels.Label.PathOf(bench.Now.Ring.Ring.Name), Cancel));
        Assert.Contains("/MediaBox [0 0 612", pdf, StringComparison.Ordinal);
        // It is the printer's, not the piece's: undo leaves it, and nothing of it is on the desk.
        bench.Undo();
        Assert.Equal("letter", choices["paper"]);
        Assert.DoesNotContain(bench.Now.Desk.All.Keys, k => k.StartsWith("print.", StringComparison.Ordinal));
        Settings settings = app.Service<PieceShelf>().Settings!;
        Assert.Equal("letter", settings["print.paper"]);
        settings["print.paper"] = "a4";
        Assert.Equal("a4", choices["paper"]);
        choices.Set("paper", " ");
        Assert.Null(settings["print.paper"]);
    }

    [Fact]
    public void They_outlive_the_app_and_go_on_without_a_folder()
    {
        using var data = new TemporaryFolder();
        foreach (string? kept in (string?[])[null, "3x8"])
        {
            using var shelf = new PieceShelf(data.Path);
            var choices = new PrintChoices(shelf, Start(shelf));
            Assert.Equal(kept ?? "", choices["grid"]);
            choices.Set("grid", "3x8");
            Assert.Null(choices.Trouble);
        }

        File.WriteAllText(data.In("no-folder"), "");
        using var closed = new PieceShelf(data.In("no-folder"));
        var unkept = new PrintChoices(closed, Start(closed));
        unkept.Set("grid", "2x4");
        Assert.Equal("2x4", unkept["grid"]);
        Assert.NotNull(unkept.Trouble);
    }

    [Fact]
    public async Task A_ring_is_asked_for_in_the_address_and_one_that_is_gone_means_all()
    {
        await using var app = new RunningApp();
        await app.InitializeAsync();
        app.Service<Workbench>().Put(Example.BenchWith("feature-bowl.json").Now);
        string name = app.Service<Workbench>().Now.Good.Rings[0].Ring.Name;
        Assert.Contains($"ring={Uri.EscapeDataString(name)}", await app.Client.GetStringAsync($"{PrintPage.Address}?ring={Uri.EscapeDataString(name)}", Cancel), StringComparison.Ordinal);
        using HttpResponseMessage gone = await app.Client.GetAsync($"{PrintPage.Address}?ring=gone", Cancel);
        Assert.Equal(HttpStatusCode.OK, gone.StatusCode);
        Assert.DoesNotMatch("/pieces/current/[^\"]*ring=gone", await gone.Content.ReadAsStringAsync(Cancel));
    }

    private static StartState Start(PieceShelf shelf) => StartState.From(shelf, Path.Combine(AppContext.BaseDirectory, "examples", "two-wood-disc.json"));
}
