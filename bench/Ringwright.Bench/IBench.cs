namespace Ringwright.Bench;

/// <summary>One benchmark with its peers. Add one class each and list it in <see cref="Benches"/>.</summary>
internal interface IBench
{
    /// <summary>The word that starts it from the command line.</summary>
    string Name { get; }

    /// <summary>What is measured, in one line.</summary>
    string Title { get; }

    /// <summary>Measures and writes Markdown.</summary>
    void Run(TextWriter output);
}

/// <summary>All benchmarks, in the order in which <c>all</c> runs them.</summary>
internal static class Benches
{
    internal static IReadOnlyList<IBench> All { get; } = [new ChainBench(), new SawBench(), new ReachBench(), new FitBench(), new SolidBench(), new PlanBench(), new BoardsBench(), new PacketBench(), new StoreBench()];
}
