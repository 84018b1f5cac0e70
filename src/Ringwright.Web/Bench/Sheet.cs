using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Bench;

/// <summary>
/// One state of the work: the plan of the last values that could be used, and every text that could not, or not yet, at its
/// address. Immutable.
/// </summary>
/// <param name="Good">The plan of the last good values.</param>
/// <param name="Units">How lengths are shown, and the unit of lengths typed without one.</param>
public sealed record Sheet(Plan Good, UnitChoice Units)
{
    /// <summary>Texts that are not part of <see cref="Good"/>, by address.</summary>
    public ImmutableSortedDictionary<string, string> Texts { get; init; } = ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal);

    /// <summary>What is wrong with the texts.</summary>
    public ImmutableArray<FieldProblem> Problems { get; init; } = [];

    /// <summary>The text of the field in hand, letter by letter as it is typed; null when none is.</summary>
    public (string Address, string Text)? Typing { get; init; }

    /// <summary>Indices of the rings that are chosen; never empty.</summary>
    public ImmutableSortedSet<int> Selected { get; init; } = [0];

    /// <summary>Rings as they were before their construction was switched, by ring and construction, for switching back.</summary>
    public ImmutableDictionary<string, Ring> Kept { get; init; } = ImmutableDictionary<string, Ring>.Empty;

    /// <summary>Texts of forms that are not part of the work yet.</summary>
    public DeskTexts Desk { get; init; } = DeskTexts.Empty;

    /// <summary>Which ring is which, from the bottom up, through renaming and reordering: <see cref="RingIdentity"/>.</summary>
    public ImmutableArray<string> RingMarks { get; init; } = RingIdentity.First(Good.Rings.Length);

    /// <summary>Which piece it is, through all changes.</summary>
    public Guid Token { get; init; } = Guid.NewGuid();

    /// <summary>Number of the shop in use among the user's shops; null while nothing is saved.</summary>
    public long? ShopEntry { get; init; }

    /// <summary>Whether it is an example as it came, not yet one of the user's own pieces.</summary>
    public bool Borrowed { get; init; }

    /// <summary>A fresh sheet for a piece made in a shop.</summary>
    /// <exception cref="BadInputException">It cannot be planned.</exception>
    public static Sheet Of(Piece piece, Shop shop, UnitChoice? units = null)
    {
        ArgumentNullException.ThrowIfNull(piece);
        UnitChoice own = piece.Units == LengthUnit.Inch ? UnitChoice.InchFractions : UnitChoice.Millimetres;
        return new(Planner.Plan(piece, shop), units is UnitChoice kept && kept.Unit() == piece.Units ? kept : own);
    }

    /// <summary>Piece and shop of the last good values.</summary>
    public Work Work => new(Good.Piece, Good.Shop);

    /// <summary>How lengths are printed.</summary>
    public MeasureStyle Style => Units.Style();

    /// <summary>Index of the ring that is shown: the topmost that is chosen.</summary>
    public int Shown => Selected.Max;

    /// <summary>The plan of the ring that is shown.</summary>
    public RingPlan Ring => Good.Rings[Shown];

    /// <summary>Whether plan and picture are of the fields as they stand.</summary>
    public bool IsCurrent => Texts.IsEmpty;

    /// <summary>What stands in a field.</summary>
    public string TextOf(Lens lens)
    {
        ArgumentNullException.ThrowIfNull(lens);
        string address = lens.AddressIn(Work);
        return Texts.TryGetValue(address, out string? text) ? text : Typing is { } typing && typing.Address == address ? typing.Text : lens.Read(Work);
    }

    /// <summary>What is wrong with a field, or null.</summary>
    public FieldProblem? ProblemOf(Lens lens)
    {
        ArgumentNullException.ThrowIfNull(lens);
        string address = lens.AddressIn(Work);
        return Problems.FirstOrDefault(p => p.Address == address);
    }

    /// <summary>The sheet with <paramref name="text"/> typed into fields, the first of them the one in hand.</summary>
    public Sheet Typed(ImmutableArray<Lens> lenses, string text)
    {
        string[] addresses = [.. lenses.Select(l => l.AddressIn(Work))];
        Sheet settled = new Settling(this with { Texts = Texts.SetItems(addresses.Select(a => KeyValuePair.Create(a, text))) }, addresses).Settle();
        return settled with { Typing = (lenses[0].AddressIn(settled.Work), text) };
    }

    /// <summary>The sheet with texts that wait; those that can be used by now are.</summary>
    public Sheet Waiting(ImmutableSortedDictionary<string, string> texts) => new Settling(this with { Texts = texts }, []).Settle();

    /// <summary>The sheet with another piece and shop; texts that wait are tried on them again.</summary>
    /// <exception cref="BadInputException">They cannot be planned.</exception>
    public Sheet With(Work work)
    {
        ArgumentNullException.ThrowIfNull(work);
        Plan plan = FollowingRings.Plan(Work, work);
        int rings = plan.Rings.Length;
        ImmutableSortedSet<int> selected = Selected.Where(i => i < rings).ToImmutableSortedSet();
        Sheet changed = Planned(plan) with { Typing = null, Selected = selected.IsEmpty ? [rings - 1] : selected };
        return Texts.IsEmpty ? changed : new Settling(changed, []).Settle();
    }

    /// <summary>The mark of a ring's plan; empty for a plan that is not of this sheet.</summary>
    public string MarkOf(RingPlan ring)
    {
        int at = Good.Rings.IndexOf(ring);
        return at < 0 ? "" : RingMarks[at];
    }

    /// <summary>The sheet with another plan of its piece; its rings stay who they are.</summary>
    internal Sheet Planned(Plan plan) => ReferenceEquals(plan, Good) ? this : this with { Good = plan, RingMarks = RingIdentity.Follow(Good.Piece.Rings, RingMarks, plan.Piece.Rings) };

    /// <summary>What is kept of a sheet long past: its piece and shop, without the plan that follows from them.</summary>
    internal Sheet Folded() => this with { Good = Good with { Rings = [], Figures = [], Form = null } };

    /// <summary>A folded sheet with its plan again.</summary>
    internal Sheet Unfolded() => this with { Good = Planner.Plan(Good.Piece, Good.Shop) };

    /// <summary>The sheet with other units. Texts that wait get the unit they were typed in, so that none changes its meaning.</summary>
    public Sheet In(UnitChoice units)
    {
        ImmutableSortedDictionary<string, string> texts = Texts;
        foreach ((string address, string text) in Texts)
            if (LensBook.Find(Work, address)?.Field.Kind == FieldKind.Length && Length.TryParse(text, Units.Unit(), out Length length, out _)) texts = texts.SetItem(address, length.Written);
        Piece piece = Good.Piece with { Units = units.Unit() };
        return (this with { Units = units, Texts = texts }).With(new(piece, Good.Shop));
    }
}
