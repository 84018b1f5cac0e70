using Ringwright.Core;
using Ringwright.Core.Boards;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Stock.Boards;

namespace Ringwright.Stock.Tests.Boards;

public class DemandTests
{
    private static readonly string Examples = Path.Combine(SolutionFolder.Path, "examples");

    public static TheoryData<string> Pieces =>
    [
        .. Directory.GetFiles(Examples, "*.json").Where(f => File.ReadAllText(f).Contains(Piece.FormatName, StringComparison.Ordinal)).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal),
    ];

    [Theory]
    [MemberData(nameof(Pieces))]
    public void The_wedges_of_a_plan_are_those_of_its_woods(string file)
    {
        Plan plan = PlanOf(file);
        foreach (RingPlan ring in plan.Rings.Where(r => r.Lamination is null && !r.Batches.IsEmpty))
            foreach (WoodNeed need in ring.Woods)
                Assert.Contains(StripDemands.Of(plan), d => d.Ring == ring.Ring.Name && d.Wood == need.Wood && (d.Needed, d.ToSaw) == (need.Needed, need.ToSaw));
    }

    [Fact]
    public void A_strip_gives_what_the_plan_of_the_ring_says()
    {
        Plan plan = PlanOf("walnut-ring.json");
        StripDemand demand = StripDemands.Of(plan)[0];
        BoardRules rules = BoardRules.Of(plan.Shop);
        for (double length = 100; length < 900; length += 7.3)
            Assert.Equal(plan.Rings[0].Strip.WedgesIn(length), demand.CountIn(length - rules.StripLoss));
    }

    [Theory]
    [MemberData(nameof(Pieces))]
    public void What_is_to_be_bought_gives_all_that_is_to_be_sawn(string file)
    {
        BuyingList list = new BuyingPlanner(new StripOptimiser(2)).Plan(PlanOf(file));
        for (int d = 0; d < list.Demands.Length; d++)
            Assert.True(list.Woods.SelectMany(w => w.Strips).SelectMany(s => s.Alike).Sum(a => a.Times * a.Runs.Where(r => r.Demand == d).Sum(r => r.Count)) >= list.Demands[d].ToSaw);
        Assert.All(list.Woods.SelectMany(w => w.Strips), s => Assert.Equal(s.Count, s.Proof.Value));
    }

    [Fact]
    public void Boards_of_a_width_are_counted_and_their_edges_are_lost()
    {
        Shop shop = Shop.Starting with { Boards = new() { Length = Length.Parse("400 mm"), Width = Length.Parse("120 mm") } };
        BuyingList list = new BuyingPlanner(new StripOptimiser()).Plan(Planner.Plan(PieceOf("feature-bowl.json"), shop));
        Assert.All(list.Woods, w => Assert.True(w.Boards is { IsProved: true } boards && boards.Value >= 1));
    }

    [Fact]
    public void An_empty_rack_is_refused_with_a_sentence() => Assert.Equal(
        "rack Mine: there is no board on it; enter at least one; without a rack you are told what to buy.",
        Assert.Throws<BadInputException>(() => CuttingRequest.For(PlanOf("walnut-ring.json"), new() { Name = "Mine", Boards = [] })).Message);

    [Fact]
    public void The_round_of_a_layer_takes_the_whole_length_of_its_board()
    {
        StripDemand round = Racks.Wedges("Foot", 1, 1, 100, 101) with { Piece = StripPiece.LayerBlank, Start = -75, MeanLength = 100 };
        // 5 + 100 + 1 mm long, 2 + 100 mm wide.
        Assert.Empty(Racks.Plan([Racks.Board("W1", 106, 102)], round).Shortages);
        Assert.Single(Racks.Plan([Racks.Board("W1", 105.9, 102)], round).Shortages);
    }

    private static Piece PieceOf(string file) => DocumentJson.ReadPiece(File.ReadAllText(Path.Combine(Examples, file)));

    private static Plan PlanOf(string file) => Planner.Plan(PieceOf(file), Shop.Starting);
}
