using System.Globalization;
using Google.OrTools.Sat;
using Ringwright.Stock.Boards;

namespace Ringwright.Bench;

/// <summary>The two usual ways: first fit on the longest pieces first, and an integer programme that says which stick each kind of piece goes to.</summary>
internal static class PlainSticks
{
    /// <summary>Cost of first fit, longest first, on the sticks of the one length that makes it cheaper.</summary>
    internal static long FirstFit(StripProblem job) => job.Stocks.Min(stock => Sticks(job, stock.Length) * stock.Cost);

    /// <summary>Cost of the programme's best within the limit, and whether it proved it.</summary>
    internal static (long Cost, bool Proved) Assign(StripProblem job, double seconds)
    {
        int sticks = (int)job.Stocks.Max(s => Sticks(job, s.Length));
        var model = new CpModel();
        var cost = new List<LinearExpr>();
        var pieces = new IntVar[sticks, job.Items.Length];
        for (int b = 0; b < sticks; b++)
        {
            BoolVar[] kind = [.. job.Stocks.Select((_, s) => model.NewBoolVar($"k{b}_{s}"))];
            model.AddAtMostOne(kind);
            for (int i = 0; i < job.Items.Length; i++) pieces[b, i] = model.NewIntVar(0, job.Items[i].Count, $"x{b}_{i}");
            LinearExpr used = LinearExpr.WeightedSum(Enumerable.Range(0, job.Items.Length).Select(i => pieces[b, i]), job.Items.Select(i => i.Length));
            model.Add(used <= LinearExpr.WeightedSum(kind, job.Stocks.Select(s => s.Length)));
            cost.Add(LinearExpr.WeightedSum(kind, job.Stocks.Select(s => s.Cost)));
        }

        for (int i = 0; i < job.Items.Length; i++)
            model.Add(LinearExpr.Sum(Enumerable.Range(0, sticks).Select(b => pieces[b, i])) >= job.Items[i].Count);
        model.Minimize(LinearExpr.Sum(cost));
        var solver = new CpSolver { StringParameters = string.Create(CultureInfo.InvariantCulture, $"max_time_in_seconds:{seconds}") };
        CpSolverStatus status = solver.Solve(model);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? ((long)solver.ObjectiveValue, status == CpSolverStatus.Optimal) : (FirstFit(job), false);
    }

    private static long Sticks(StripProblem job, long length)
    {
        List<long> left = [];
        foreach (StripItem item in job.Items.OrderByDescending(i => i.Length))
            for (int n = 0; n < item.Count; n++)
            {
                int at = left.FindIndex(l => l >= item.Length);
                if (at < 0)
                {
                    at = left.Count;
                    left.Add(length);
                }

                left[at] -= item.Length;
            }

        return left.Count;
    }
}
