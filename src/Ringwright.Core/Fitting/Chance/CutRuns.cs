namespace Ringwright.Core.Fitting;

/// <summary>
/// How the wedges of one ring share their cuts. A run is a row of wedges sawn one after another from one board and
/// all kept: neighbours in it share a cut, so a run of n wedges has n + 1 cuts. A wedge trued by itself is a run of one.
/// The sum of a ring's wedge angles depends on the number of wedges and of runs only, not on the single lengths.
/// </summary>
/// <param name="Wedges">Wedges in the ring, N.</param>
/// <param name="Runs">Runs they come from, 1 to N.</param>
public readonly record struct CutRuns(int Wedges, int Runs)
{
    /// <summary>All wedges in a row from one board.</summary>
    public static CutRuns OneRun(int wedges) => new(wedges, 1);

    /// <summary>Every face trued by itself, as on a disc sander against an angled fence: no cut is shared.</summary>
    public static CutRuns IndependentFaces(int wedges) => new(wedges, wedges);

    /// <summary>Wedges from several unbroken runs, given the wedges of each.</summary>
    /// <exception cref="BadInputException">No run, or a run without a wedge.</exception>
    public static CutRuns OfLengths(params ReadOnlySpan<int> lengths)
    {
        int wedges = 0;
        foreach (int length in lengths)
        {
            if (length < 1)
                throw new BadInputException("run of wedges", $"it has {length} wedges", "every run needs at least one");
            wedges += length;
        }

        CutRuns runs = new(wedges, lengths.Length);
        runs.Validate();
        return runs;
    }

    /// <summary>
    /// The wedges kept from one board in the order they were sawn: a lost wedge breaks the run, since the cuts at
    /// both its sides then belong to one kept wedge each.
    /// </summary>
    /// <param name="kept">One entry per wedge sawn, true when it goes into the ring.</param>
    /// <exception cref="BadInputException">No wedge is kept.</exception>
    public static CutRuns OfKept(params ReadOnlySpan<bool> kept)
    {
        int wedges = 0;
        int runs = 0;
        bool before = false;
        foreach (bool here in kept)
        {
            if (here)
                wedges++;
            if (here && !before)
                runs++;
            before = here;
        }

        CutRuns result = new(wedges, runs);
        result.Validate();
        return result;
    }

    /// <summary>Cuts (or sanded faces) that made the wedges: N + runs.</summary>
    public int Cuts => Wedges + Runs;

    /// <summary>Cuts that made the faces of two wedges of the ring.</summary>
    public int SharedCuts => Wedges - Runs;

    /// <summary>Cuts that made one face of the ring only: the two ends of each run.</summary>
    public int SingleCuts => 2 * Runs;

    /// <summary>
    /// Variance of the sum of the wedge angles over the variance of one cut. An independent error e of a cut enters
    /// the sum once or, shared, twice: 4 (N - runs) + 2 runs = 4 N - 2 runs. One run: 4 (N - 1) + 2, close to
    /// (2 sqrt N)^2; independent faces: 2 N.
    /// </summary>
    public double VarianceFactor => 4.0 * SharedCuts + SingleCuts;

    /// <summary>Wedges of run <paramref name="index"/> (from 0) when they are spread as evenly as can be.</summary>
    internal int LengthOf(int index) => Wedges / Runs + (index < Wedges % Runs ? 1 : 0);

    internal void Validate()
    {
        if (Wedges < 1)
            throw new BadInputException("wedges in the ring", $"there are {Wedges}", "a ring needs at least one");
        if (Runs < 1 || Runs > Wedges)
            throw new BadInputException("runs the wedges come from", $"there are {Runs} for {Wedges} wedges", "give 1 run up to one per wedge");
    }
}
