using Ringwright.Core.Fitting;

namespace Ringwright.Core.Tests.Fitting;

/// <summary>The angular chain against the closed forms, which share no code with it. Seeds are fixed.</summary>
public class ChanceSimulationTests
{
    private const int Rings = 200_000;
    private const double Degree = Math.PI / 180;
    private const double Limit = 0.2256 * Degree;

    private static readonly CutError HalfTenth = new(0, 0.05 * Degree);

    public static TheoryData<string, RingMaking> Makings => new()
    {
        { "faces by themselves", new(CutRuns.IndependentFaces(18), HalfTenth) },
        { "with bias", new(CutRuns.IndependentFaces(18), HalfTenth with { Bias = 0.005 * Degree }) },
        { "one run", new(CutRuns.OneRun(18), HalfTenth) },
        { "uneven runs", new(new(19, 4), HalfTenth) },
        { "two fences set", new(CutRuns.OneRun(12), HalfTenth, new(0.02 * Degree, 2)) },
        { "one fence set", new(CutRuns.OneRun(12), HalfTenth, new(0.02 * Degree, 1)) },
        { "bad seating", new(CutRuns.OneRun(18), HalfTenth with { MisSeating = new(0.05, 0.1 * Degree, 0.2 * Degree) }) },
    };

    [Theory]
    [MemberData(nameof(Makings))]
    public void Simulation_agrees_with_the_closed_form(string name, RingMaking making)
    {
        ClosureStatistics exact = ClosureStatistics.Of(making);
        ChainResult seen = ChanceChain.Simulate(making, new(Rings, Seed: 7, Limit));
        double chance = exact.ChanceToClose(Limit);
        double varianceError = Math.Sqrt((seen.ExcessKurtosis + 2) / Rings);

        // Four standard errors each: a right simulation fails once in 16,000 seeds, and this seed is fixed.
        Assert.True(Math.Abs(seen.Mean - exact.Mean) < 4 * exact.Sd / Math.Sqrt(Rings), name);
        Assert.True(Math.Abs(seen.Sd * seen.Sd / exact.Variance - 1) < 4 * varianceError, name);
        Assert.True(Math.Abs(seen.ChanceToClose - chance) < 4 * Math.Sqrt(chance * (1 - chance) / Rings), name);
        Assert.Equal(making.Runs.Wedges, seen.WedgesSawnPerRing);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.5)]
    [InlineData(0.95)]
    [InlineData(0.999)]
    public void Quantiles_agree_with_the_closed_form(double probability)
    {
        RingMaking making = new(CutRuns.OneRun(18), HalfTenth with { Bias = 0.003 * Degree });
        ChainResult seen = ChanceChain.Simulate(making, new(Rings, Seed: 3, Limit));
        double chance = ClosureStatistics.Of(making).ChanceToClose(seen.ErrorQuantile(probability));
        Assert.Equal(probability, chance, 4 * Math.Sqrt(probability * (1 - probability) / Rings) + 1e-5);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(8)]
    public void Same_seed_gives_the_same_bits_on_any_number_of_threads(int threads)
    {
        RingMaking making = new(new(18, 2), HalfTenth with { MisSeating = new(0.05, 0, 0.2 * Degree) }, new(0.01 * Degree, 2));
        ChainRun run = new(100_003, Seed: 11, Limit, Threads: 1);
        ChainResult one = ChanceChain.Simulate(making, run);
        ChainResult many = ChanceChain.Simulate(making, run with { Threads = threads });
        Assert.Equal(Numbers(one), Numbers(many));
    }

    [Fact]
    public void Other_seed_gives_other_rings()
    {
        RingMaking making = new(CutRuns.OneRun(18), HalfTenth);
        Assert.NotEqual(
            Numbers(ChanceChain.Simulate(making, new(10_000, 1, Limit))),
            Numbers(ChanceChain.Simulate(making, new(10_000, 2, Limit))));
    }

    [Fact]
    public void More_rings_begin_with_the_same_rings()
    {
        // Blocks depend on their number only: the largest error of the first 4096 rings is among those of the first 8192.
        RingMaking making = new(CutRuns.OneRun(18), HalfTenth);
        ChainResult few = ChanceChain.Simulate(making, new(4096, 5, Limit));
        ChainResult more = ChanceChain.Simulate(making, new(8192, 5, few.LargestError));
        Assert.True(more.LargestError >= few.LargestError);
        Assert.True(ChanceChain.Simulate(making, new(8192, 5, Math.BitDecrement(few.LargestError))).ChanceToClose < more.ChanceToClose);
    }

    [Fact]
    public void Exact_cuts_give_exact_rings()
    {
        ChainResult seen = ChanceChain.Simulate(new(CutRuns.OneRun(18), new(0.001, 0)), new(1000, 1, 0.0361));
        Assert.Equal(-0.036, seen.Mean, 1e-12);
        Assert.Equal(0, seen.Sd, 1e-12);
        Assert.Equal(1, seen.ChanceToClose);
        Assert.Equal(0.036, seen.ErrorQuantile(0.5), 0.036 / 4096); // one bin of the histogram
    }

    [Theory]
    [InlineData(1)]
    [InlineData(20_000_000_000)]
    public void Impossible_numbers_of_rings_are_refused(long rings) =>
        Assert.Throws<BadInputException>(() => ChanceChain.Simulate(new(CutRuns.OneRun(18), HalfTenth), new(rings, 1, Limit)));

    private static double[] Numbers(ChainResult result) =>
    [
        result.Mean, result.Sd, result.Skewness, result.ExcessKurtosis, result.ChanceToClose, result.LargestError,
        result.ErrorQuantile(0.5), result.ErrorQuantile(0.999),
    ];
}
