using Ringwright.Core.Fitting;

namespace Ringwright.Core.Tests.Fitting;

/// <summary>A long simulation tells how far it is and can be stopped.</summary>
public class ChanceProgressTests
{
    private static readonly RingMaking Making = new(CutRuns.OneRun(18), new(0, 0.001));

    [Fact]
    public void Progress_grows_to_the_end()
    {
        Recorder recorder = new();
        AngularChain.Simulate(Making, new(1_000_000, 1, 0.01, Threads: 4), recorder, TestContext.Current.CancellationToken);
        Assert.Equal(recorder.Seen.Order(), recorder.Seen);
        Assert.Equal(1, recorder.Seen[^1]);
        Assert.InRange(recorder.Seen.Count, 50, 100);
    }

    [Fact]
    public void Cancelling_stops_before_the_end()
    {
        using CancellationTokenSource source = new();
        Recorder recorder = new() { OnReport = source.Cancel };
        Assert.ThrowsAny<OperationCanceledException>(
            () => AngularChain.Simulate(Making, new(40_000_000, 1, 0.01), recorder, source.Token));
        Assert.True(recorder.Seen[^1] < 0.5);
    }

    private sealed class Recorder : IProgress<double>
    {
        public List<double> Seen { get; } = [];

        public Action? OnReport { get; init; }

        public void Report(double value)
        {
            Seen.Add(value);
            OnReport?.Invoke();
        }
    }
}
