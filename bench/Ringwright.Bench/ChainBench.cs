using System.Globalization;
using System.Runtime.Intrinsics;
using MathNet.Numerics.Random;
using Ringwright.Core.Fitting;

namespace Ringwright.Bench;

/// <summary>Monte Carlo of the closing error: 1,000,000 rings of 18 wedges with 36 independent faces, sd 0.05 degrees.</summary>
internal sealed class ChainBench : IBench
{
    private const int Rings = 1_000_000;
    private const long CheckRings = 20_000_000;
    private const int Wedges = 18;
    private const double Degree = Math.PI / 180;
    private const double Sd = 0.05 * Degree;
    private const double Limit = 0.2256 * Degree;

    public string Name => "chain";

    public string Title => "1,000,000 rings of 18 wedges, 36 independent faces";

    private static RingMaking Making { get; } = new(CutRuns.IndependentFaces(Wedges), new(0, Sd));

    public void Run(TextWriter output)
    {
        output.WriteLine($"{Environment.ProcessorCount} cores, vectors of {(Vector512.IsHardwareAccelerated ? 512 : 256)} bits; medians of nine rounds.");
        output.WriteLine();
        Times(output);
        output.WriteLine();
        Checks(output);
    }

    private static void Times(TextWriter output)
    {
        ChainPeers peers = new(Rings, 2 * Wedges, Sd, Limit);
        string? python = NumpyPeer.FindPython();
        Contest.Write(output,
        [
            Way.Of("ours, simulation, 1 thread", () => Simulate(Making, Rings, 1)),
            Way.Of("ours, simulation, all threads", () => Simulate(Making, Rings, 0)),
            Way.Of("ours, closed form", () => ClosureStatistics.Of(Making).ChanceToClose(Limit), "the same answer, exact"),
            Way.Of("MathNet Normal.Samples, MersenneTwister", () => peers.MathNet(new MersenneTwister(1, false))) with { LeastRatio = 8 },
            Way.Of("MathNet Normal.Samples, Xorshift", () => peers.MathNet(new Xorshift(1, false))) with { LeastRatio = 8 },
            Way.Of("scalar loop, System.Random", () => peers.ScalarLoop()),
            new("numpy standard_normal, SFC64", () => NumpyPeer.Ms(python, peers.NumpyScript), python is null ? "no Python with numpy here" : "") { LeastRatio = python is null ? null : 4 },
        ]);
    }

    private static void Checks(TextWriter output)
    {
        output.WriteLine($"{CheckRings:N0} rings against the closed form (z: distance in standard errors, mark: under 4)");
        output.WriteLine();
        output.WriteLine("| ring | z of chance | z of variance | z of skewness | z of kurtosis | z beyond 4 sd | largest, sd |");
        output.WriteLine("|---|---:|---:|---:|---:|---:|---:|");
        Check(output, "36 independent faces", Making);
        Check(output, "the same, bias 0.005 degrees", Making with { Cut = new(0.005 * Degree, Sd) });
        Check(output, "one run of 18, shared cuts", Making with { Runs = CutRuns.OneRun(Wedges) });
        Check(output, "18 wedges in 3 runs, two fences set", Making with { Runs = new(Wedges, 3), Setting = new(0.01 * Degree, 2) });
        Check(output, "one run of 18, 3 % badly seated (4 sd)", Making with { Runs = CutRuns.OneRun(Wedges), Cut = new(0, Sd, new(0.03, 0, 4 * Sd)) });
    }

    private static void Check(TextWriter output, string ring, RingMaking making)
    {
        ClosureStatistics exact = ClosureStatistics.Of(making);
        double far = 4 * exact.Sd;
        ChainResult near = Simulate(making, CheckRings, 0);
        ChainResult tail = Simulate(making, CheckRings, 0, far);
        double n = CheckRings;
        bool normal = making.Cut.MisSeating is null;
        double spread = near.ExcessKurtosis + 2;
        string[] cells =
        [
            Z(near.ChanceToClose, exact.ChanceToClose(Limit), Bernoulli(exact.ChanceToClose(Limit), n)),
            Z(near.Sd * near.Sd / exact.Variance, 1, Math.Sqrt(spread / n)),
            normal ? Z(near.Skewness, 0, Math.Sqrt(6 / n)) : "not normal",
            normal ? Z(near.ExcessKurtosis, 0, Math.Sqrt(24 / n)) : "not normal",
            Z(tail.ChanceToClose, exact.ChanceToClose(far), Bernoulli(exact.ChanceToClose(far), n)),
            (near.LargestError / exact.Sd).ToString("0.00", CultureInfo.InvariantCulture),
        ];
        output.WriteLine($"| {ring} | {string.Join(" | ", cells)} |");
    }

    private static string Z(double value, double expected, double standardError) =>
        ((value - expected) / standardError).ToString("0.00", CultureInfo.InvariantCulture);

    private static double Bernoulli(double p, double n) => Math.Sqrt(p * (1 - p) / n);

    private static ChainResult Simulate(RingMaking making, long rings, int threads, double limit = Limit) =>
        AngularChain.Simulate(making, new(rings, Seed: 2024, limit, threads));
}
