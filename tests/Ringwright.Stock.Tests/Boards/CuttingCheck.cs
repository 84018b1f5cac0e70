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

    // What comes in is pieces, dust, ends, edges, defects, what is planed off, what goes back, and what is too small to.
    private static void Balance(CuttingPlan plan)
    {
        RackAfter.Rest[] rests = [.. RackAfter.Rests(plan)];
        foreach (SawnBoard board in plan.Boards)
        {
            double thickness = board.Board.Thickness.Millimetres, width = board.Board.Width.Millimetres, length = board.Board.Length.Millimetres;
            double all = 0;
            foreach (StretchCut stretch in board.Stretches)
            {
                if (stretch.Strips.IsEmpty)
                {
                    all += stretch.Length * width;
                    continue;
                }

                double strips = stretch.Strips.Sum(s => s.Width), edge = plan.Rules.EdgeTrim, dust = width - strips - edge - stretch.RestWidth;
                Assert.InRange(dust, -Hair, (stretch.Strips.Length * plan.Rules.Kerf) + Hair);
                all += stretch.Length * (strips + edge + dust + stretch.RestWidth);
            }

            double defects = length - board.Stretches.Sum(s => s.Length);
            Assert.Equal(length * width * thickness, (all + (defects * width)) * thickness, Hair * length * width);
            double back = rests.Where(r => r.Source == board).Sum(r => r.Board.Length.Millimetres * r.Board.Width.Millimetres * r.Board.Thickness.Millimetres);
            double pieces = board.Stretches.SelectMany(s => s.Strips).Sum(s => s.Runs.Sum(r => r.Count * plan.Demands[r.Demand].MeanLength) * s.Width * s.Thickness);
            Assert.True(back + pieces <= length * width * thickness * (1 + 1e-9));
        }

        Assert.All(rests, r => Assert.True(r.Board.Length.Millimetres >= plan.Rules.LeastLength - 0.1 && r.Board.Width.Millimetres >= plan.Rules.LeastWidth - 0.1));
    }
}
