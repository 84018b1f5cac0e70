using Ringwright.Core.Pieces;
using Ringwright.Web.Bench;
using Ringwright.Web.Floor;

namespace Ringwright.Web.Tests.Floor;

/// <summary>What is counted at the saw, for all constructions.</summary>
public class SawCutTests
{
    [Fact]
    public void A_disc_of_two_woods_has_two_cuts_with_their_spares()
    {
        Sheet sheet = Example.Sheet;
        ImmutableArray<SawCut> cuts = SawCut.Of(sheet.Ring, sheet.Good.Shop);
        Assert.Equal(2, cuts.Length);
        Assert.All(cuts, c => Assert.Equal(12, c.Need.Needed));
        Assert.All(cuts, c => Assert.True(c.Need.ToSaw > 12));
    }

    // The offcut falls at fence 1, so the first wedge falls at fence 2 (the plan's steps say the same).
    [Theory]
    [InlineData(SledKind.TwoFences, 0, "Fence 2")]
    [InlineData(SledKind.TwoFences, 1, "Fence 1")]
    [InlineData(SledKind.OneFence, 0, "Line down")]
    [InlineData(SledKind.DiscSander, 3, "Line up")]
    public void Fences_and_faces_go_by_turns(SledKind sled, int inBoard, string how)
    {
        Sheet sheet = Example.Sheet;
        Assert.Equal(how, SawCut.Of(sheet.Ring, sheet.Good.Shop)[0].How(sled, inBoard));
    }

    [Fact]
    public void Every_ring_of_every_example_says_what_to_count()
    {
        foreach (string file in Example.Files)
        {
            Sheet sheet = Example.BenchWith(file).Now;
            foreach (Core.Planning.RingPlan ring in sheet.Good.Rings)
            {
                ImmutableArray<SawCut> cuts = SawCut.Of(ring, sheet.Good.Shop);
                Assert.Equal(ring.Batches.IsEmpty, cuts.IsEmpty);
                Assert.Equal(cuts.Length, cuts.Select(c => c.Key).Distinct().Count());
                Assert.All(cuts, c => Assert.True(c.PerBoard > 0));
            }
        }
    }
}
