using Ringwright.Core.Fitting;

namespace Ringwright.Core.Tests.Fitting;

/// <summary>The angular chain, stopped when the test run is.</summary>
internal static class ChanceChain
{
    internal static ChainResult Simulate(RingMaking making, ChainRun run) =>
        AngularChain.Simulate(making, run, cancellation: TestContext.Current.CancellationToken);
}
