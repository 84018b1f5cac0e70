using Ringwright.Core.Fitting;

namespace Ringwright.Stock.Choosing;

/// <summary>
/// A choice in whole numbers: angles in nanoradians less the nominal 2π/N, sizes in micrometres. Wedges are sorted by what was
/// measured, so their numbers and the order of the list have no say but between equal wedges.
/// </summary>
internal sealed class ChoosingProblem
{
    public const double UnitsPerRadian = 1e9;
    private const double MicrometresPerMm = 1e3;

    public ChoosingProblem(WedgeChoiceInput input)
    {
        Input = input;
        Places = input.Places;
        Parts = input.Closing == Closing.Halves ? 2 : 1;
        Nominal = ToUnits(2 * Math.PI / Places);
        // A radian at most, so that no product runs over.
        Grain = (long)Math.Clamp(input.GapStep / input.Radius * UnitsPerRadian, 1, UnitsPerRadian);
        var woods = input.Pattern.Select(Name).Distinct().Order(StringComparer.Ordinal).ToList();
        PlaceWoods = [.. Enumerable.Range(0, Places).Select(k => input.WoodAt(k) is { } wood ? woods.IndexOf(Name(wood)) : 0)];
        Woods = Math.Max(1, woods.Count);
        Wedges = [.. input.Wedges.Select(w => Measure(w, woods)).Where(w => w.Wood >= 0).Order(MeasuredWedge.Sorting)];
        Classes = [.. Wedges.Select((w, i) => (w.Wood, w.Excess, Index: i)).GroupBy(w => (w.Wood, w.Excess))
            .Select(g => new AngleClass(g.Key.Wood, g.Key.Excess, [.. g.Select(w => w.Index)]))];
        ClassOf = new int[Wedges.Length];
        for (int c = 0; c < Classes.Length; c++)
            foreach (int wedge in Classes[c].Members) ClassOf[wedge] = c;
    }

    public WedgeChoiceInput Input { get; }
    public int Places { get; }

    /// <summary>1 for a ring closed in one go, 2 for halves.</summary>
    public int Parts { get; }

    /// <summary>Nominal wedge angle, nanoradians.</summary>
    public long Nominal { get; }

    /// <summary>The same wedges and pattern, closed in one go: what cannot be had of the whole ring cannot be had of its halves.</summary>
    public ChoosingProblem Joined() => Parts == 1 ? this : new(Input with { Closing = Closing.Whole });

    /// <summary>Step in which gaps and joint lines are compared, nanoradians.</summary>
    public long Grain { get; }

    public int Woods { get; }
    public int[] PlaceWoods { get; }

    /// <summary>Wedges of woods that the pattern wants.</summary>
    public MeasuredWedge[] Wedges { get; }

    /// <summary>Wedges of one wood and one angle, which only sizes tell apart.</summary>
    public AngleClass[] Classes { get; }

    /// <summary>The class of each wedge.</summary>
    public int[] ClassOf { get; }

    /// <summary>Places, from the first on, that are not the same as one before them by the pattern's repeat.</summary>
    public int DistinctStarts => Parts == 2 ? Places : Math.Max(1, Input.Pattern.Count);

    public int PartSize => Places / Parts;

    /// <summary>What the nominal angles of a part are over its 2π or π, nanoradians.</summary>
    public long NominalExcess => PartSize * Nominal - 2 / Parts * ToUnits(Math.PI);

    public int PartOf(int place) => place / PartSize;

    public int Need(int part, int wood) => PlaceWoods.Skip(part * PartSize).Take(PartSize).Count(w => w == wood);

    private MeasuredWedge Measure(CaliperReading wedge, List<string> woods) => new(
        wedge,
        Input.Pattern.Count == 0 ? 0 : woods.IndexOf(Name(wedge.Wood)),
        ToUnits(wedge.Angle(Input.Depth)) - Nominal,
        (long)Math.Round(wedge.Rim * MicrometresPerMm),
        (long)Math.Round(wedge.Tip * MicrometresPerMm));

    private static long ToUnits(double radians) => (long)Math.Round(radians * UnitsPerRadian);

    private static string Name(string wood) => wood.ToUpperInvariant();
}

/// <summary>A wedge in whole numbers.</summary>
/// <param name="Reading">What the caliper read.</param>
/// <param name="Wood">Index of its wood.</param>
/// <param name="Excess">Angle less the nominal one, nanoradians.</param>
/// <param name="Rim">Width at the rim, micrometres.</param>
/// <param name="Tip">Width at the tip, micrometres.</param>
internal sealed record MeasuredWedge(CaliperReading Reading, int Wood, long Excess, long Rim, long Tip)
{
    public static IComparer<MeasuredWedge> Sorting { get; } =
        Comparer<MeasuredWedge>.Create((a, b) => a.Key.CompareTo(b.Key));

    private (int, long, long, long, int) Key => (Wood, Excess, Rim, Tip, Reading.Number);

    public long StepTo(MeasuredWedge next) => Math.Max(Math.Abs(Rim - next.Rim), Math.Abs(Tip - next.Tip));
}

/// <summary>Wedges of one wood and one angle.</summary>
/// <param name="Wood">Index of the wood.</param>
/// <param name="Excess">Angle less the nominal one, nanoradians.</param>
/// <param name="Members">Indices of the wedges.</param>
internal sealed record AngleClass(int Wood, long Excess, int[] Members);
