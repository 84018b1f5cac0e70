using System.Collections.Immutable;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Boards;

/// <summary>Why pieces cannot be had.</summary>
public enum ShortageCause
{
    /// <summary>Boards that would do are used up.</summary>
    UsedUp,

    /// <summary>No board of that wood is on the rack.</summary>
    NoSuchWood,

    /// <summary>All boards of that wood are too thin.</summary>
    TooThin,

    /// <summary>Those thick enough are too narrow.</summary>
    TooNarrow,

    /// <summary>Those thick and wide enough are too short for one piece.</summary>
    TooShort,
}

/// <summary>Pieces that the rack cannot give, and the board that would.</summary>
/// <param name="Demand">What they are.</param>
/// <param name="Missing">How many of those the ring needs; 0 when only spares are short.</param>
/// <param name="Spares">How many spares.</param>
/// <param name="Cause">Why, where one thing alone forbids it.</param>
/// <param name="Buy">Smallest board that gives them all, together with what else is short of the same strip.</param>
public sealed record Shortage(StripDemand Demand, int Missing, int Spares, ShortageCause Cause, BoardToBuy Buy)
{
    /// <summary>All pieces short.</summary>
    public int Pieces => Missing + Spares;

    /// <summary>Length that a strip would have to be longer, mm.</summary>
    public double MoreLength => Pieces * Demand.Pitch;

    /// <summary>One sentence: how many pieces, and how much more board.</summary>
    public Sentence Sentence => Missing > 0
        ? Sentence.Of($"Short by {{0}} {Demand.Called(Missing)} of {Wood} for {Ring}{(Spares > 0 ? " and {3} spare" : "")}: {{1}} more board {{2}} wide{Because}.",
            Measured.Count(Missing), Measured.Length(MoreLength), Measured.Length(Demand.Width), Measured.Count(Spares))
        : Sentence.Of($"Enough {Demand.Called(2)} of {Wood} for {Ring}, but {{0}} spare {(Spares == 1 ? "is" : "are")} short: {{1}} more board {{2}} wide{Because}.",
            Measured.Count(Spares), Measured.Length(MoreLength), Measured.Length(Demand.Width));

    private string Because => Cause switch
    {
        ShortageCause.NoSuchWood => $"; there is no {Wood} on the rack",
        ShortageCause.TooThin => $"; every board of {Wood} is too thin",
        ShortageCause.TooNarrow => $"; every board of {Wood} that is thick enough is too narrow",
        ShortageCause.TooShort => $"; every board of {Wood} that is thick and wide enough is too short for one piece",
        _ => "",
    };

    private string Wood => Sentence.Escape(Demand.Wood);

    private string Ring => Sentence.Escape(Demand.Ring);

    private static ShortageCause CauseOf(StripDemand demand, CuttingRequest request)
    {
        BoardRules rules = request.Rules;
        RackBoard[] boards = [.. request.Rack.Boards.Where(b => request.WoodOf(b.Wood) == request.WoodOf(demand.Wood))];
        if (boards.Length == 0) return ShortageCause.NoSuchWood;
        boards = [.. boards.Where(b => rules.CanMill(b.Thickness.Millimetres, demand.Thickness))];
        if (boards.Length == 0) return ShortageCause.TooThin;
        boards = [.. boards.Where(b => rules.StripsAcross(b.Width.Millimetres, demand.Width) > 0)];
        if (boards.Length == 0) return ShortageCause.TooNarrow;
        return boards.Any(b => SoundStretches.Of(b, rules.Kerf).Any(s => demand.CountIn(s.To - s.From - rules.StripLoss) > 0)) ? ShortageCause.UsedUp : ShortageCause.TooShort;
    }

    internal static ImmutableArray<Shortage> Of(CuttingPlan plan)
    {
        (StripDemand Demand, int Missing, int Spares)[] all = [.. plan.Demands.Select((d, i) =>
        {
            int given = plan.Given(i);
            int missing = Math.Max(0, d.Needed - given);
            return (d, missing, Math.Max(0, d.ToSaw - given) - missing);
        }).Where(s => s.Item2 + s.Item3 > 0)];
        return [.. all.Select(s => new Shortage(s.Demand, s.Missing, s.Spares, CauseOf(s.Demand, plan.Request), BoardToBuy.For(
            s.Demand, all.Where(o => o.Demand.SharesStrip(s.Demand)).Sum(o => o.Demand.LengthFor(o.Missing + o.Spares)), plan.Rules)))];
    }
}

/// <summary>The smallest board that helps. Lengths in mm.</summary>
/// <param name="Wood">Its wood.</param>
/// <param name="Length">Its length, in one piece or in several that are each longer by what a strip loses.</param>
/// <param name="Width">Its width.</param>
/// <param name="Thickness">Its thickness, rough.</param>
public sealed record BoardToBuy(string Wood, double Length, double Width, double Thickness)
{
    /// <summary>One sentence.</summary>
    public Sentence Sentence => Sentence.Of($"{Sentence.Escape(Wood)}: a board at least {{0}} long, {{1}} wide and {{2}} thick.", Measured.Length(Length), Measured.Length(Width), Measured.Length(Thickness));

    internal static BoardToBuy For(StripDemand demand, double pieces, BoardRules rules) => new(
        demand.Wood, Math.Ceiling(rules.StripLoss + pieces), Math.Ceiling(demand.Width + rules.EdgeTrim), Math.Ceiling(2 * (demand.Thickness + rules.Milling)) / 2);
}
