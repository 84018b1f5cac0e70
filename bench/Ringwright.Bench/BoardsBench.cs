using System.Globalization;
using Ringwright.Stock.Boards;

namespace Ringwright.Bench;

/// <summary>Pieces from sticks of two lengths: column generation against first fit and a plain assignment of pieces to sticks; then the instances of the literature.</summary>
internal sealed class BoardsBench : IBench
{
    private const int Rounds = 7;
    private const double MostMs = 65;
    private const double PlainSeconds = 5;

    public string Name => "boards";

    public string Title => "strips for wedges from boards of two lengths, and bin packing of the literature";

    public void Run(TextWriter output)
    {
        _ = new StripOptimiser().Solve(StickJobs.Random(0));
        output.WriteLine("| job | pieces | way | wood, m | over the bound | proved | ms |");
        output.WriteLine("|---|---:|---|---:|---:|---|---:|");
        int kept = 0;
        for (int seed = 1; seed <= StickJobs.Count; seed++) kept += Compare(output, seed) ? 1 : 0;
        output.WriteLine();
        output.WriteLine($"Mark: bound met and proved, under {MostMs.ToString(CultureInfo.InvariantCulture)} ms (fastest of {Rounds}), on {kept} of {StickJobs.Count}: {Way.Verdict(kept == StickJobs.Count)}.");
        output.WriteLine();
        output.WriteLine("The first job, every count multiplied:");
        output.WriteLine();
        StripProblem first = StickJobs.Random(1);
        int pieces = first.Items.Sum(i => i.Count);
        Growth.Write(output, "pieces", [pieces / 4, pieces, 4 * pieces, 16 * pieces], size =>
        {
            StripProblem job = first with { Items = [.. first.Items.Select(i => i with { Count = Math.Max(1, i.Count * size / pieces) })] };
            return () => new StripOptimiser().Solve(job);
        });
        output.WriteLine();
        Literature(output);
    }

    private static bool Compare(TextWriter output, int seed)
    {
        StripProblem job = StickJobs.Random(seed);
        StripSolution ours = null!;
        double[] times = [.. Enumerable.Range(0, Rounds).Select(_ => Stopclock.Once(() => ours = new StripOptimiser().Solve(job)))];
        long firstFit = 0, plain = 0;
        bool proved = false;
        double firstFitMs = Stopclock.Once(() => firstFit = PlainSticks.FirstFit(job)), plainMs = Stopclock.Once(() => (plain, proved) = PlainSticks.Assign(job, PlainSeconds));
        int pieces = job.Items.Sum(i => i.Count);
        void Line(string way, long cost, bool sure, string ms) => output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"| {seed} | {pieces} | {way} | {cost / 1000.0:0.0} | {(double)(cost - ours.Bound) / ours.Bound:P2} | {(sure ? "yes" : "no")} | {ms} |"));
        Line("ours", ours.Cost, ours.IsProved, string.Create(CultureInfo.InvariantCulture, $"{Stopclock.MedianOf(times):0.0}, fastest {times.Min():0.0}"));
        Line("first fit, longest first", firstFit, firstFit == ours.Bound, firstFitMs.ToString("0.0", CultureInfo.InvariantCulture));
        Line($"CP-SAT, pieces assigned to sticks, {PlainSeconds} s", plain, proved, plainMs.ToString("0", CultureInfo.InvariantCulture));
        return ours.IsProved && times.Min() < MostMs;
    }

    private static void Literature(TextWriter output)
    {
        output.WriteLine("| instance | optimum | how known | found | bound | ms |");
        output.WriteLine("|---|---:|---|---:|---:|---:|");
        foreach (string line in File.ReadLines(Path.Combine(AppContext.BaseDirectory, "bin-instances.csv")).Where(l => !l.StartsWith('#')).Skip(1))
        {
            string[] fields = line.Split(',');
            StripItem[] items = [.. fields[4].Split(' ').Select(s => s.Split('x')).Select(s => new StripItem(Number(s[0]), (int)Number(s[1])))];
            StripSolution solved = null!;
            double ms = Stopclock.Once(() => solved = new StripOptimiser().Solve(new([.. items], [new(Number(fields[3]), 1)])));
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {fields[0]} | {fields[1]} | {fields[2]} | {solved.Cost} | {solved.Bound} | {ms:0} |"));
        }
    }

    private static long Number(string text) => long.Parse(text, CultureInfo.InvariantCulture);
}
