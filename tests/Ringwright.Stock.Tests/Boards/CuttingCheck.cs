using Ringwright.Core.Boards;

namespace Ringwright.Stock.Tests.Boards;

/// <summary>Goes over a cutting plan piece by piece, by coordinates of its own, and finds any wood that is used twice or not there.</summary>
internal static class CuttingCheck
{
    private const double Hair = 1e-3;

    public static void Holds(CuttingPlan plan)
    {
        Assert.Equal(plan.Boards.Length, plan.Boards.Select(b => b.Board.Label).Distinct().Count());
        for (int d = 0; d < plan.Demands.Length; d++) Assert.True(plan.Given(d) <= plan.Demands[d].ToSaw);
        foreach (SawnBoard board in plan.Boards) Holds(board, plan);
        Balance(plan);
    }

    private static void Holds(SawnBoard board, CuttingPlan plan)
    {
        double end = 0;
        foreach (StretchCut stretch in board.Stretches)
        {
            Assert.True(stretch.From >= end - Hair && stretch.To <= board.Board.Length.Millimetres + Hair);
            foreach (Defect defect in board.Board.Defects ?? [])
                Assert.True(stretch.To <= defect.From.Millimetres + Hair || stretch.From >= defect.To.Millimetres - Hair, "a defect lies in it");
            end = stretch.To;
            if (!stretch.Strips.IsEmpty) Across(stretch, board.Board, plan.Rules);
            foreach (StripCut strip in stretch.Strips) Along(strip, stretch, board.Board, plan);
        }
    }

    // Edge, then strip and kerf in turn; the last kerf may run out into the air.
    private static void Across(StretchCut stretch, RackBoard board, BoardRules rules)
    {
        double at = rules.EdgeTrim;
        foreach (StripCut strip in stretch.Strips)
        {
            at += strip.Width;
            Assert.True(at <= board.Width.Millimetres + Hair, "strips are wider than the board");
            at += rules.Kerf;
        }

        Assert.Equal(Math.Max(0, board.Width.Millimetres - at), stretch.RestWidth, Hair);
    }

    private static void Along(StripCut strip, StretchCut stretch, RackBoard board, CuttingPlan plan)
    {
        double at = plan.Rules.EndTrim;
        bool rest = true;
        foreach (PieceRun run in strip.Runs)
        {
            StripDemand demand = plan.Demands[run.Demand];
            Assert.True(run.Count > 0);
            Assert.True(strip.Width >= demand.Width - Hair && strip.Thickness >= demand.Thickness - Hair);
            Assert.Equal(plan.Request.WoodOf(board.Wood), plan.Request.WoodOf(demand.Wood));
            rest &= demand.Piece != StripPiece.LayerBlank;
            at += (rest ? demand.Start : 0) + (run.Count * demand.Pitch);
        }

        double left = stretch.Length - at;
        Assert.True(left >= (rest ? plan.Rules.HoldingLength : 0) - Hair, $"only {left} are left to hold");
        if (rest) Assert.Equal(left, strip.Rest, Hair);
        Assert.True(plan.Rules.CanMill(board.Thickness.Millimetres, strip.Thickness));
    }

    private static void Balance(CuttingPlan plan)
    {
        RackAfter.Rest[] rests = [.. RackAfter.Rests(plan)];
        foreach (SawnBoard board in plan.Boards)
        {
            double all = board.Board.Length.Millimetres * board.Board.Width.Millimetres * board.Board.Thickness.Millimetres;
            (string Name, double Volume)[] items = [.. Items(board, plan)];
            Assert.All(items, i => Assert.True(i.Volume >= -Hair * all, $"{i.Name} {i.Volume}"));
            Assert.Equal(1, items.Sum(i => i.Volume) / all, 1e-6);
            double back = rests.Where(r => r.Source == board).Sum(r => r.Board.Length.Millimetres * r.Board.Width.Millimetres * r.Board.Thickness.Millimetres);
            Assert.True(back <= items.Where(i => i.Name.StartsWith("rest", StringComparison.Ordinal)).Sum(i => i.Volume) * (1 + 1e-9));
        }

        Assert.All(rests, r => Assert.True(r.Board.Length.Millimetres >= plan.Rules.LeastLength - 0.1 && r.Board.Width.Millimetres >= plan.Rules.LeastWidth - 0.1));
    }

    // All that a board's wood becomes, each counted by itself, mm³.
    private static IEnumerable<(string Name, double Volume)> Items(SawnBoard board, CuttingPlan plan)
    {
        double thickness = board.Board.Thickness.Millimetres, width = board.Board.Width.Millimetres;
        yield return ("defects", (board.Board.Length.Millimetres - board.Stretches.Sum(s => s.Length)) * width * thickness);
        foreach (StretchCut stretch in board.Stretches)
        {
            double section = stretch.Length * thickness;
            yield return ("rest of the width", section * (stretch.Strips.IsEmpty ? width : stretch.RestWidth));
            if (stretch.Strips.IsEmpty) continue;
            yield return ("edge", section * plan.Rules.EdgeTrim);
            double at = plan.Rules.EdgeTrim;
            foreach (StripCut strip in stretch.Strips)
            {
                at += strip.Width;
                yield return ("kerf", section * Math.Min(plan.Rules.Kerf, Math.Max(0, width - at)));
                at += plan.Rules.Kerf;
                yield return ("planed off", stretch.Length * strip.Width * (thickness - strip.Thickness));
                double face = strip.Width * strip.Thickness;
                yield return ("end", face * plan.Rules.EndTrim);
                yield return ("rest of the strip", face * strip.Rest);
                foreach (PieceRun run in strip.Runs)
                {
                    StripDemand demand = plan.Demands[run.Demand];
                    yield return ("pieces", face * run.Count * demand.MeanLength);
                    yield return ("cuts", face * (Math.Max(0, demand.Start) + (run.Count * (demand.Pitch - demand.MeanLength))));
                }
            }
        }
    }
}
