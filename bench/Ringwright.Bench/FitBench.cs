using System.Globalization;
using Ringwright.Core.Fitting;

namespace Ringwright.Bench;

/// <summary>The dry fit of one ring, solved with everything linearised anew at each step, against one linear programme of the same ring.</summary>
internal sealed class FitBench : IBench
{
    public string Name => "fit";

    public string Title => "dry fit of one ring of unequal wedges under a band";

    public void Run(TextWriter output)
    {
        Compare(output, 36, 50);
        Compare(output, 360, 5);
        Points(output);
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
            Way.Of("GLOP, linearised once about the even ring", () => BandProgramme.Solve(ring)),
        ]);
        (double slack, double band) = (BandProgramme.Solve(ring), solver.Solve(ring).BandLength);
        output.WriteLine();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Band: ours {band:0.0000} mm, linearised {slack:0.0000} mm."));
        output.WriteLine();
    }

    private static void Points(TextWriter output)
    {
        (FitWedge[] ring, FitWedge[] disc) = (FitRings.Ring(36), FitRings.Disc(36));
        var solver = new DryFitSolver();
        output.WriteLine("36 wedges sawn to a point, the tips kept apart at the centre:");
        output.WriteLine();
        Contest.Write(output,
        [
            Way.Short("open ring", 50, () => solver.Solve(ring)),
            Way.Short("disc of points", 10, () => solver.Solve(disc)) with { MostMs = 10 },
        ]);
        DryFitSummary summary = solver.Solve(disc);
        output.WriteLine();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"The disc {(summary.Settled ? "settled" : "did not settle")} in {summary.Steps} steps, worst gap {summary.WorstGap:0.000} mm."));
    }
}
