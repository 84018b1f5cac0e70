using System.Collections.Immutable;
using System.Globalization;
using Ringwright.Core.Fitting;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;

namespace Ringwright.Bench;

/// <summary>The map of what can be made, 40 numbers of segments by 60 diameters, against simulating every cell.</summary>
internal sealed class ReachBench : IBench
{
    private const int Rings = 10_000;
    private const int Samples = 24;
    private const double PromisedMs = 100;

    public string Name => "reach";

    public string Title => "reach map of 40 numbers of segments by 60 diameters";

    private static ImmutableArray<int> Segments { get; } = [.. Enumerable.Range(6, 40)];

    private static ImmutableArray<double> Diameters { get; } = [.. Enumerable.Range(0, 60).Select(i => 10.0 + (2 * i))];

    // Sanding turns faces, not cuts, which the chain of cuts does not simulate.
    private static Shop Shop { get; } = Shop.Starting with { Sanding = Shop.Starting.Sanding with { Unevenness = default } };

    public void Run(TextWriter output)
    {
        ReachMap map = ReachMap.Of(Shop, Segments, Diameters);
        ReachCell[] sample = [.. Enumerable.Range(0, Samples).Select(i => map.Cells[i * map.Cells.Length / Samples])];
        double scale = (double)map.Cells.Length / Samples;
        Contest.Write(output,
        [
            Way.Short("ours, closed form", 5, () => ReachMap.Of(Shop, Segments, Diameters)) with { MostMs = PromisedMs },
            new($"our simulation of the cuts, {Rings} rings a cell, 1 thread", () => scale * Stopclock.Once(() => Simulate(sample)), $"{Samples} cells measured, scaled to all; the chance only"),
        ]);
        output.WriteLine();
        double worst = sample.Zip(Simulate(sample), (cell, chance) => Math.Abs(cell.Chance - chance)).Max();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"Chance to close, closed form against simulation: at most {worst:0.0000} apart in {Samples} cells; one standard error is at most {0.5 / Math.Sqrt(Rings):0.0000}."));
        output.WriteLine();
        Growth.Write(output, "cells", [240, 600, 1200, 2400], cells => () => ReachMap.Of(Shop, Segments, Diameters[..(cells / Segments.Length)]));
    }

    private static double[] Simulate(ReachCell[] cells) =>
    [
        .. cells.Select(cell =>
        {
            var making = new RingMaking(ClosingBudget.Runs(cell.Segments, 1, Shop.Sled.Kind), new(0, Shop.Hands.AngleSd.Radians));
            double limit = Shop.Wanted.JointGap.Millimetres / new WedgeGeometry(cell.Segments, cell.Diameter / 2, 0).OuterCorner;
            return AngularChain.Simulate(making, new(Rings, Seed: 7, limit, Threads: 1)).ChanceToClose;
        }),
    ];
}
