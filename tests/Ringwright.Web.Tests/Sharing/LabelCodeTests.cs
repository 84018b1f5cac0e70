using System.Net;
using System.Net.Http.Json;
using Ringwright.Core.Measures;
using Ringwright.Paper.Labels;
using Ringwright.Web.Floor;

namespace Ringwright.Web.Tests.Sharing;

/// <summary>What a scanned label does on a device: the page of that piece and ring, or one calm sentence.</summary>
public class LabelCodeTests
{
    [Fact]
    public async Task A_code_leads_to_piece_and_ring_and_survives_another_piece_on_the_bench()
    {
        await using SharedApp app = await SharedApp.Start();
        string piece = app.Service<FloorNumbers>().Own();
        Web.Bench.Sheet sheet = app.Bench.Now;
        string code = Label.Of(sheet.Good, MeasureStyle.Millimetres, app.Shared, r => FloorEndpoints.Page(piece, sheet.MarkOf(r))).First().Code;
        Assert.Equal(new Uri(app.Shared, $"/saw/{piece}/1").ToString(), code);
        app.Bench.Put(Example.BenchWith("feature-bowl.json").Now);
        string path = new Uri(code).AbsolutePath;

        using OtherDevice device = app.Device();
        OtherDevice.Answer stranger = await device.Get(path);
        Assert.Equal((HttpStatusCode.Redirect, "/pair?to=" + Uri.EscapeDataString(path)), (stranger.Status, stranger.Location));
        Assert.Contains("leads to a ring at the saw", (await device.Get(stranger.Location!)).Text, StringComparison.Ordinal);
        OtherDevice.Answer paired = await device.Pair(("code", app.Sharing.Code!.Value.Spoken), ("name", "Tablet"), ("to", path));
        Assert.Equal(path, paired.Location);
        OtherDevice.Answer page = await device.Get(path);
        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("Two-wood disc", page.Text, StringComparison.Ordinal);

        // A piece that is gone, or a label of an earlier plan: one sentence.
        OtherDevice.Answer gone = await device.Get("/saw/99/1");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, gone.Status);
        Assert.DoesNotContain('\n', gone.Text);
    }

    [Fact]
    public async Task What_a_device_marks_is_named_after_it_and_taken_back_at_the_desk()
    {
        await using SharedApp app = await SharedApp.Start();
        string piece = app.Service<FloorNumbers>().Own();
        using OtherDevice device = app.Device();
        await device.Pair(("code", app.Sharing.Code!.Value.Spoken), ("name", "Shop tablet"));
        using JsonContent marks = JsonContent.Create(new { piece, ring = "1", marks = new[] { new { id = "a", cut = "1/maple", kind = "lost", at = 1L }, new { id = "b", cut = "1/maple", kind = "lost", at = 2L } } });
        OtherDevice.Answer answer = await device.Send(HttpMethod.Post, "/saw/marks", marks, ("Origin", device.Origin));
        Assert.Equal(HttpStatusCode.OK, answer.Status);
        ShopFloor floor = app.Service<ShopFloor>();
        FloorStep step = Assert.Single(floor.Now.Steps);
        Assert.Equal(("Shop tablet", "2 × lost: Disc"), (step.By, step.What));
        Assert.Null(floor.Return(step.Number));
        Assert.Equal(0, CutTally.Of(floor.Now.MarksOf(FloorNames.Job(piece, "1")), "1/maple").Lost);
    }
}
