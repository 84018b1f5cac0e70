using System.Collections.Immutable;
using System.Globalization;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Fitting;

/// <summary>Puts what a record of real runs teaches into a shop, so that the next plan uses it and says so.</summary>
public static class ShopLearning
{
    /// <summary>What these hands are believed to do at the shop's sled after the runs recorded there.</summary>
    /// <exception cref="BadInputException">Something recorded cannot be.</exception>
    public static HandBelief Believe(RunLog log, SledKind sled)
    {
        RunLogCheck.Check(log);
        return HandBelief.Unrecorded.Update(log.Runs.Where(r => r.Sled == sled).Select(Read));
    }

    /// <summary>The shop with the learned values in its hands. Runs at another sled teach nothing about this one.</summary>
    /// <exception cref="BadInputException">Something recorded cannot be, or no run was made at the shop's sled.</exception>
    public static Shop Learn(Shop shop, RunLog log)
    {
        ArgumentNullException.ThrowIfNull(shop);
        HandBelief belief = Believe(log, shop.Sled.Kind);
        int runs = log.Runs.Count(r => r.Sled == shop.Sled.Kind);
        if (runs == 0)
            throw new BadInputException("record", $"none of its {log.Runs.Length} runs was made with the shop's way of holding", "a run with the same sled is needed");
        return shop with
        {
            Hands = shop.Hands with
            {
                AngleSd = Angle.FromRadians(belief.Angle.Sd),
                AngleBias = Angle.FromRadians(belief.Angle.Bias),
                Loss = belief.Loss.NextLost,
                LossWorth = belief.Loss.LostWorth + belief.Loss.GoodWorth,
                MinutesPerCut = belief.Cutting.MinutesPerPiece,
                MinutesPerFace = belief.Sanding.MinutesPerPiece,
                CutsWorth = belief.Cutting.PriorWorth + belief.Cutting.Timed,
                FacesWorth = belief.Sanding.PriorWorth + belief.Sanding.Timed,
                Basis = string.Create(CultureInfo.InvariantCulture, $"{runs} run{(runs == 1 ? "" : "s")}: {belief.Angle.Evidence.Wedges} wedges measured, {belief.Loss.Sawn} sawn, {belief.Cutting.Timed} cuts and {belief.Sanding.Timed} faces timed"),
            },
        };
    }

    private static RunRecord Read(LoggedRun run) => new()
    {
        WedgeErrors = [.. (run.Measured.IsDefault ? [] : run.Measured).Select(row => (IReadOnlyList<double>)[.. row.Select(a => a.Radians - run.WedgeAngle!.Value.Radians)])],
        Closures = [.. (run.Closures.IsDefault ? ImmutableArray<LoggedClosure>.Empty : run.Closures).Select(c => Read(c, run.Sled))],
        PiecesSawn = run.Sawn,
        PiecesLost = run.Lost,
        Cuts = run.Cuts,
        CuttingMinutes = run.CuttingMinutes,
        FacesSanded = run.FacesSanded,
        SandingMinutes = run.SandingMinutes,
    };

    // Open at the rim the last joint gapes by R E; open at the centre it turns about its rim ends, which touch.
    private static RingClosure Read(LoggedClosure closure, SledKind sled)
    {
        double error = closure.Gap.Millimetres / closure.Reach.Millimetres;
        return new(ClosingBudget.Runs(closure.Wedges, closure.Boards, sled), closure.At == OpenAt.Rim ? error : -error);
    }
}
