namespace Ringwright.Core.Fitting;

/// <summary>One run of the simulation.</summary>
/// <param name="Rings">Rings to simulate.</param>
/// <param name="Seed">Same seed, same result to the bit, on any number of threads.</param>
/// <param name="Limit">Largest |E| that still closes, radians.</param>
/// <param name="Threads">Threads to use; 0 for all of the machine's.</param>
public sealed record ChainRun(long Rings, ulong Seed, double Limit, int Threads = 0)
{
    /// <summary>Above this the table of blocks would no longer be small; the chance is then known to 1e-5 anyway.</summary>
    private const long MostRings = 10_000_000_000;

    internal int Blocks => (int)((Rings + ChainBlock.Rings - 1) / ChainBlock.Rings);

    internal int RingsOf(int block) => (int)Math.Min(ChainBlock.Rings, Rings - (long)block * ChainBlock.Rings);

    internal void Validate()
    {
        if (Rings is < 2 or > MostRings)
            throw new BadInputException("rings to simulate", $"{Rings} cannot be done", $"give 2 to {MostRings}");
        if (Threads < 0)
            throw new BadInputException("threads", $"there are {Threads}", "give 1 or more, or 0 for all of the machine's");
        ChanceInput.NotNegative("closing error that still closes", Limit);
    }
}
