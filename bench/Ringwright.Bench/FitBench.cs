using System.Globalization;
using Ringwright.Core.Fitting;

namespace Ringwright.Bench;

/// <summary>The dry fit of one ring, solved with everything linearised anew at each step, against one linear programme of the same ring.</summary>
internal sealed class FitBench : IBench
{
    private const int Discs = 10;
    private static readonly string[] Peers = ["GLOP", "CLP"];

    public string Name => "fit";

    public string Title => "dry fit of one ring of unequal wedges under a band";

    public void Run(TextWriter output)
    {
        Compare(output, 36, 50);
        Compare(output, 360, 5);
        Points(output);
        output.WriteLine();
        output.WriteLine("Open rings:");
        output.WriteLine();
        Growth.Write(output, "wedges", [12, 24, 48, 96, 192, 384], wedges =>
        {
            FitWedge[] ring = FitRings.Ring(wedges);
            var solver = new DryFitSolver();
            return () => solver.Solve(ring);
        });
    }

    private static void Compare(TextWriter output, int wedges, int times)
    {
        FitWedge[] ring = FitRings.Ring(wedges);
        var solver = new DryFitSolver();
        output.WriteLine($"{wedges} wedges, an open ring:");
        output.WriteLine();
        Contest.Write(output,
        [
            Way.Short("ours, until it settles", times, () => solver.Solve(ring)),
            .. Peers.Select(peer => Way.Of($"{peer}, linearised once about the even ring", () => BandProgramme.Solve(ring, peer), Band(BandProgramme.Solve(ring, peer)))),
        ]);
        output.WriteLine();
        output.WriteLine($"Ours: {Band(solver.Solve(ring).BandLength)}.");
        output.WriteLine();
    }

    private static string Band(double band) => double.IsNaN(band) ? "gave up" : string.Create(CultureInfo.InvariantCulture, $"band {band:0.0000} mm");

    private static void Points(TextWriter output)
    {
        FitWedge[] ring = FitRings.Ring(36);
        FitWedge[][] discs = FitRings.Discs(36, Discs);
        var solver = new DryFitSolver();
        output.WriteLine($"36 wedges sawn to a point, the tips kept apart at the centre, mean of {Discs} discs:");
        output.WriteLine();
        int next = 0;
        Contest.Write(output,
        [
            Way.Short("open ring", 50, () => solver.Solve(ring)),
            Way.Short("disc of points", Discs, () => solver.Solve(discs[next++ % Discs])) with { MostMs = 5 },
        ]);
        DryFitSummary[] solved = [.. discs.Select(d => solver.Solve(d))];
        output.WriteLine();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{solved.Count(s => s.Settled)} of {Discs} discs settled, in {solved.Average(s => s.Steps):0} steps; worst gap {solved.Average(s => s.WorstGap):0.000} mm in the mean."));
    }
}
