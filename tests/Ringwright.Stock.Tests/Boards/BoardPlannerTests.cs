using CsCheck;
using Ringwright.Core.Boards;
using Ringwright.Core.Measures;
using Ringwright.Stock.Boards;

namespace Ringwright.Stock.Tests.Boards;

public class BoardPlannerTests
{
    private static readonly Gen<RackBoard> AnyBoard =
        from length in Gen.Double[60, 900]
        from width in Gen.Double[15, 150]
        from thickness in Of(15.0, 22.0, 30.0)
        from wood in Of("walnut", "maple")
        from defect in Gen.Bool
        from at in Gen.Double[0, 0.8]
        select Racks.Board("", length, width, thickness, wood, null, defect ? [(at * length, (at + 0.1) * length)] : []);

    private static readonly Gen<StripDemand> AnyDemand =
        from needed in Gen.Int[1, 20]
        from spares in Gen.Int[0, 3]
        from width in Of(14.0, 25.5, 40.0)
        from pitch in Gen.Double[8, 60]
        from thickness in Of(12.0, 20.0)
        from wood in Of("walnut", "maple")
        select Racks.Wedges("", needed, needed + spares, width, pitch, thickness, wood);

    private static readonly Gen<CuttingRequest> AnyRequest =
        from boards in AnyBoard.Array[1, 5]
        from demands in AnyDemand.Array[1, 5]
        select Racks.Request([.. boards.Select((b, i) => b with { Label = $"B{i}" })], [.. demands.Select((d, i) => d with { Ring = $"R{i / 2}" })]);

    // Little wood for up to three rings, some of which share strips.
    private static readonly Gen<CuttingRequest> Tight =
        from boards in Gen.Select(Gen.Double[110, 240], Of(17.0, 33.0, 45.0, 60.0)).Array[1, 2]
        from demands in Gen.Select(Gen.Int[1, 4], Gen.Int[0, 2], Of(14.0, 25.5), Gen.Double[9, 40]).Array[1, 3]
        select Racks.Request(
            [.. boards.Select((b, i) => Racks.Board($"B{i}", b.Item1, b.Item2))],
            [.. demands.Select((d, i) => Racks.Wedges($"R{i}", d.Item1, d.Item1 + d.Item2, d.Item3, d.Item4))]);

    private static Gen<T> Of<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    [Fact]
    public void Nothing_overlaps_nothing_comes_from_a_defect_and_the_wood_adds_up() => AnyRequest.Sample(
        request => CuttingCheck.Holds(new BoardPlanner(5).Plan(request)), 60);

    [Fact]
    public void What_is_short_is_short_however_it_is_sawn() => AnyRequest.Sample(
        request =>
        {
            CuttingPlan plan = new BoardPlanner(5).Plan(request);
            if (!plan.Lacking.IsProved) return;
            // A plain count: no more of a demand can be had than all its boards give when they serve nothing else.
            for (int d = 0; d < plan.Demands.Length; d++)
            {
                StripDemand demand = plan.Demands[d];
                int alone = request.Rack.Boards.Where(b => b.Wood == demand.Wood && plan.Rules.CanMill(b.Thickness.Millimetres, demand.Thickness))
                    .Sum(b => plan.Rules.StripsAcross(b.Width.Millimetres, demand.Width) * SoundStretches.Of(b, plan.Rules.Kerf).Sum(s => demand.CountIn(s.To - s.From - plan.Rules.StripLoss)));
                Assert.True(plan.Given(d) <= alone);
                if (plan.Demands.Length == 1) Assert.Equal(Math.Min(alone, demand.ToSaw), plan.Given(d));
            }
        },
        40);

    [Fact]
    public void What_several_rings_are_short_of_agrees_with_trying_everything() => Tight.Sample(
        request =>
        {
            CuttingPlan plan = new BoardPlanner(20).Plan(request);
            Assert.True(plan.Lacking.IsProved);
            Assert.Equal(EveryLayout.LeastShort(request), plan.Lacking.Value);
        },
        60);

    [Fact]
    public void As_the_issue_says_short_by_two_wedges()
    {
        // Ten wedges fit: 5 + 6 + 10 · 24 + 75 = 326 mm.
        CuttingPlan plan = Racks.Plan([Racks.Board("W1", 326, 42)], Racks.Wedges("Rim", 12, 12));
        Shortage shortage = Assert.Single(plan.Shortages);
        Assert.Equal((2, 0, 10), (shortage.Missing, shortage.Spares, plan.Given(0)));
        Assert.Equal("Short by 2 wedges of walnut for Rim: 48 mm more board 40 mm wide.", shortage.Sentence.In(MeasureStyle.Millimetres));
        Assert.Equal("walnut: a board at least 134 mm long, 42 mm wide and 22 mm thick.", shortage.Buy.Sentence.In(MeasureStyle.Millimetres));
        Assert.True(plan.Lacking.IsProved);
        CuttingPlan helped = Racks.Plan([Racks.Board("W1", 326, 42), Racks.Board("W2", 134, 42)], Racks.Wedges("Rim", 12, 12));
        Assert.Empty(helped.Shortages);
    }

    [Theory]
    [InlineData(400, 42, 21.9, "every board of walnut is too thin")]
    [InlineData(400, 41.9, 25, "that is thick enough is too narrow")]
    [InlineData(109, 42, 25, "is too short for one piece")]
    public void Why_it_is_short_is_said(double length, double width, double thickness, string says)
    {
        CuttingPlan plan = Racks.Plan([Racks.Board("W1", length, width, thickness)], Racks.Wedges("Rim", 2, 2));
        Assert.Contains(says, plan.Shortages[0].Sentence.In(MeasureStyle.Millimetres), StringComparison.Ordinal);
        Assert.Empty(plan.Boards);
    }

    [Fact]
    public void Wood_that_is_not_there_is_said() => Assert.Contains("there is no walnut on the rack",
        Racks.Plan([Racks.Board("M1", 400, 60, 25, "maple")], Racks.Wedges("Rim", 2, 2)).Shortages[0].Sentence.In(MeasureStyle.Millimetres), StringComparison.Ordinal);

    [Fact]
    public void What_is_needed_comes_before_spares() => Assert.Equal((10, 10), Given(Racks.Plan(
        [Racks.Board("W1", 572, 42)], Racks.Wedges("A", 10, 12), Racks.Wedges("B", 10, 12))));

    [Fact]
    public void Two_rings_share_a_strip_and_pay_for_their_first_cuts()
    {
        // 5 + (6 + 5 · 24) + (6 + 5 · 24) + 75 = 332 mm.
        StripDemand[] rings = [Racks.Wedges("A", 5, 5), Racks.Wedges("B", 5, 5)];
        Assert.Empty(Racks.Plan([Racks.Board("W1", 332, 42)], rings).Shortages);
        Assert.Equal(1, Racks.Plan([Racks.Board("W1", 331.9, 42)], rings).Shortages.Sum(s => s.Pieces));
    }

    [Fact]
    public void No_kerf_is_charged_behind_the_last_strip()
    {
        // 2 + 40 + 1 + 40 = 83 mm.
        StripDemand ring = Racks.Wedges("A", 20, 20);
        Assert.Empty(Racks.Plan([Racks.Board("W1", 326, 83)], ring).Shortages);
        Assert.Equal(10, Racks.Plan([Racks.Board("W1", 326, 82.9)], ring).Given(0));
    }

    [Fact]
    public void One_ring_comes_from_one_board_where_it_can()
    {
        // Either board would do for part of it; only the long one for all.
        CuttingPlan plan = Racks.Plan([Racks.Board("W1", 206, 42), Racks.Board("W2", 400, 42), Racks.Board("W3", 206, 42)], Racks.Wedges("Rim", 10, 10));
        Assert.Equal("W2", Assert.Single(plan.Boards).Board.Label);
        Assert.True(plan.Colours is { Value: 1, IsProved: true });
    }

    [Fact]
    public void Where_it_cannot_it_is_said_and_parts_of_one_board_count_as_one()
    {
        StripDemand ring = Racks.Wedges("Rim", 10, 10);
        CuttingPlan two = Racks.Plan([Racks.Board("W1", 206, 42), Racks.Board("W2", 206, 42)], ring);
        Assert.Equal(2, two.Colours.Value);
        Assert.Contains(CuttingSteps.Notes(two), n => n.In(MeasureStyle.Millimetres).StartsWith("Rim: its walnut comes from W1 and W2", StringComparison.Ordinal));
        CuttingPlan one = Racks.Plan([Racks.Board("W1", 206, 42), Racks.Board("W2", 206, 42, from: "W1")], ring);
        Assert.Equal(1, one.Colours.Value);
        Assert.Empty(CuttingSteps.Notes(one));
    }

    [Fact]
    public void Offcuts_come_first() => Assert.Equal("W2", Assert.Single(Racks.Plan(
        [Racks.Board("W1", 330, 60), Racks.Board("W2", 330, 60, from: "W0")], Racks.Wedges("Rim", 10, 10)).Boards).Board.Label);

    [Fact]
    public void The_cheaper_board_is_taken() => Assert.Equal("W2", Assert.Single(Racks.Plan(
        [Racks.Board("W1", 330, 60) with { Price = 20 }, Racks.Board("W2", 330, 60) with { Price = 10 }], Racks.Wedges("Rim", 10, 10)).Boards).Board.Label);

    [Fact]
    public void Other_names_of_a_wood_are_that_wood() => Assert.Empty(Racks.Plan([Racks.Board("W1", 330, 60, 25, "black walnut")], Racks.Wedges("Rim", 10, 10)).Shortages);

    [Fact]
    public void The_rack_afterwards_has_the_rests_with_name_and_origin()
    {
        CuttingPlan plan = Racks.Plan([Racks.Board("W1", 700, 120) with { Price = 30, Moisture = 9 }, Racks.Board("M1", 300, 60, 25, "maple")], Racks.Wedges("Rim", 10, 10));
        RackBoard[] after = [.. plan.After.Boards];
        Assert.Equal(["W1-1", "W1-2", "M1"], after.Select(b => b.Label));
        Assert.Equal((700, 77, 25), (after[0].Length.Millimetres, after[0].Width.Millimetres, after[0].Thickness.Millimetres));
        // 700 − 5 − 6 − 240 = 449 mm of the strip.
        Assert.Equal((449, 40, 20), (after[1].Length.Millimetres, after[1].Width.Millimetres, after[1].Thickness.Millimetres));
        Assert.All(after[..2], b => Assert.Equal(("W1", 9.0), (b.CameFrom, b.Moisture)));
        Assert.Equal(19.25, after[0].Price);
        Assert.Equal(plan.Rack.Boards[1], after[2]);
        Ringwright.Core.Documents.RackCheck.Check(plan.After);
    }

    [Fact]
    public void In_inches_rests_are_what_a_rule_reads()
    {
        CuttingRequest request = Racks.Request([Racks.Board("W1", 700, 120)], Racks.Wedges("Rim", 10, 10));
        Rack after = new BoardPlanner().Plan(request with { Rack = request.Rack with { Units = LengthUnit.Inch } }).After;
        Assert.Equal("17 43/64 in", after.Boards[1].Length.Written);
        Assert.True(after.Boards[1].Length.Millimetres <= 449);
    }

    [Fact]
    public void Defects_are_cut_out_and_said()
    {
        CuttingPlan plan = Racks.Plan([Racks.Board("W1", 700, 42, defects: [(300, 340)])], Racks.Wedges("Rim", 10, 10));
        Assert.Equal([(0.0, 300.0), (340.0, 700.0)], plan.Boards[0].Stretches.Select(s => (s.From, s.To)));
        string[] steps = [.. CuttingSteps.Of(plan)[0].Steps.Select(s => s.In(MeasureStyle.Millimetres))];
        Assert.Equal("Crosscut at 300 mm and 340 mm from the labelled end, the blade on the side of the defect.", steps[0]);
        Assert.Contains(steps, s => s.StartsWith("Strip 1 from 340 mm, 40 mm wide: saw its end square, then 10 wedges for Rim;", StringComparison.Ordinal));
        Assert.Contains(steps, s => s.Contains("not sawn into; back to the rack as W1-1", StringComparison.Ordinal));
    }

    [Fact]
    public void A_wet_board_is_told()
    {
        CuttingRequest request = Racks.Request([Racks.Board("W1", 700, 42) with { Moisture = 14 }], Racks.Wedges("Rim", 10, 10));
        CuttingPlan plan = new BoardPlanner().Plan(request with { Rules = request.Rules with { Moisture = 8 } });
        Assert.Contains("Board W1 was measured at 14 %, the shop glues at 8 %", Assert.Single(CuttingSteps.Notes(plan)).In(MeasureStyle.Millimetres), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_rack_has_the_same_answer()
    {
        CuttingRequest request = Racks.Request([Racks.Board("W1", 700, 120), Racks.Board("W2", 500, 90)], Racks.Wedges("A", 12, 14), Racks.Wedges("B", 12, 14), Racks.Wedges("C", 9, 10, 25));
        string Text(CuttingPlan p) => Ringwright.Core.Documents.DocumentJson.Write(p.After);
        Assert.Equal(Text(new BoardPlanner().Plan(request)), Text(new BoardPlanner().Plan(request)));
    }

    [Fact]
    public void A_stop_is_obeyed()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => new BoardPlanner().Plan(Racks.Request([Racks.Board("W1", 700, 120)], Racks.Wedges("A", 12, 14)), null, stop.Token));
    }

    private static (int, int) Given(CuttingPlan plan) => (plan.Given(0), plan.Given(1));
}
