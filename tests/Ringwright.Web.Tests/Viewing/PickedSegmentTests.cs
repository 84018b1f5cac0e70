using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench;
using Ringwright.Web.Viewing;

namespace Ringwright.Web.Tests.Viewing;

/// <summary>What a segment that is pointed at tells, for every construction.</summary>
public class PickedSegmentTests
{
    [Theory]
    [MemberData(nameof(ViewerPacketTests.Examples), MemberType = typeof(ViewerPacketTests))]
    public void Every_piece_of_wood_tells_its_ring_its_wood_and_its_board(string example)
    {
        Plan plan = Planner.Plan(DocumentJson.ReadPiece(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "examples", example + ".json"))), Shop.Starting);
        foreach (RingPlan ring in plan.Rings)
        {
            for (int place = 0; place < ring.Layout.Length; place++)
            {
                PickedSegment picked = new(ring, place);
                Assert.StartsWith(ring.Ring.Name, picked.Title, StringComparison.Ordinal);
                Assert.EndsWith(ring.Layout.Length == 1 ? "in one piece" : ring.Layout[place].Wood, picked.Title, StringComparison.Ordinal);
                Assert.Contains(ring.Layout[place].Wood, picked.FromBoard, StringComparison.Ordinal);
                if (picked.Batch is not null) Assert.NotEmpty(picked.Figures);
                if (SegmentInStrip.Of(picked) is { } strip) Assert.DoesNotContain(strip.Own, strip.Others);
            }
        }
    }

    [Fact]
    public void A_spacer_of_the_band_is_named_as_one()
    {
        Plan plan = Planner.Plan(DocumentJson.ReadPiece(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "examples", "feature-bowl.json"))), Shop.Starting);
        RingPlan band = plan.Rings.First(r => r.Ring.Name == "Band");
        Assert.Equal("Band, spacer 2 of 24: holly", new PickedSegment(band, 1).Title);
    }

    [Fact]
    public void The_same_plan_has_the_same_version_and_another_plan_another()
    {
        var store = new ViewerStore();
        Sheet sheet = Example.Sheet;
        ViewedPlan first = store.Publish(sheet.Good);
        Assert.Same(first, store.Publish(sheet.Good));
        ViewedPlan second = store.Publish(Example.Sheet.Good);
        Assert.NotEqual(first.Version, second.Version);
        Assert.Same(first, store.Find(first.Version));
        Assert.Null(store.Find("none"));
        GC.KeepAlive(first);
        GC.KeepAlive(second);
    }
}
