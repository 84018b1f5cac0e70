using System.Collections.Immutable;

namespace Ringwright.Core.Boards;

/// <summary>Pieces of one demand sawn one after another from a strip.</summary>
/// <param name="Demand">Which of the plan's demands.</param>
/// <param name="Count">How many, at least 1.</param>
public readonly record struct PieceRun(int Demand, int Count);

/// <summary>One strip and what is sawn from it. Lengths in mm.</summary>
/// <param name="Width">Width it is ripped to.</param>
/// <param name="Thickness">Thickness it is planed to.</param>
/// <param name="Runs">What is sawn from it, in order.</param>
/// <param name="Rest">What stays of its length, at least the holding length; behind the blank of a layer it may be nothing.</param>
public sealed record StripCut(double Width, double Thickness, ImmutableArray<PieceRun> Runs, double Rest);

/// <summary>A sound stretch of a board and the strips ripped from it over its whole length, in order. Lengths in mm.</summary>
/// <param name="From">Where it begins, from the end of the board that its label is on.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Strips">The strips, the widest first; none when the stretch goes back as it is.</param>
/// <param name="RestWidth">Width that stays when all are ripped, 0 when the last cut takes it.</param>
public sealed record StretchCut(double From, double To, ImmutableArray<StripCut> Strips, double RestWidth)
{
    /// <summary>Its length.</summary>
    public double Length => To - From;
}

/// <summary>A board that is sawn into.</summary>
/// <param name="Board">The board.</param>
/// <param name="Stretches">Its sound stretches, in order.</param>
public sealed record SawnBoard(RackBoard Board, ImmutableArray<StretchCut> Stretches)
{
    /// <summary>The board it once was a part of, or itself: wood of one colour.</summary>
    public string Family => FamilyOf(Board);

    /// <summary>The same of any board.</summary>
    public static string FamilyOf(RackBoard board)
    {
        ArgumentNullException.ThrowIfNull(board);
        return board.CameFrom ?? board.Label;
    }
}

/// <summary>How good a cutting is in one respect, and how good any could be.</summary>
/// <param name="Value">What it takes, in the unit of what it is about: pieces, boards or mm³.</param>
/// <param name="Bound">In the same unit. Proved: as good in what counts before it, none takes less.</param>
public readonly record struct CuttingProof(double Value, double Bound)
{
    /// <summary>Whether it is proved to be the best.</summary>
    public bool IsProved => Value <= Bound * (1 + 1e-9) + 1e-9;

    /// <summary>By what share of the value something better could at most take less; 0 when proved.</summary>
    public double Gap => IsProved ? 0 : (Value - Bound) / Value;
}

/// <summary>Which board gives which strip and which strip gives which pieces. Everything else follows from it.</summary>
/// <param name="Request">What was asked.</param>
/// <param name="Boards">The boards sawn into, in the order of the rack.</param>
public sealed record CuttingPlan(CuttingRequest Request, ImmutableArray<SawnBoard> Boards)
{
    /// <summary>The rack as it is before.</summary>
    public Rack Rack => Request.Rack;

    /// <summary>How boards become strips.</summary>
    public BoardRules Rules => Request.Rules;

    /// <summary>What is wanted.</summary>
    public ImmutableArray<StripDemand> Demands => Request.Demands;

    /// <summary>Pieces that cannot be had. Those the rings need weigh more than all spares.</summary>
    public required CuttingProof Lacking { get; init; }

    /// <summary>Boards that wedges of one ring and wood come from, added up over all rings and woods.</summary>
    public required CuttingProof Colours { get; init; }

    /// <summary>Wood taken, mm³: offcuts count half, dear boards more.</summary>
    public required CuttingProof Wood { get; init; }

    /// <summary>How many pieces of a demand the boards give.</summary>
    public int Given(int demand) => Boards.SelectMany(b => b.Stretches).SelectMany(s => s.Strips).SelectMany(s => s.Runs).Where(r => r.Demand == demand).Sum(r => r.Count);

    /// <summary>What cannot be had.</summary>
    public ImmutableArray<Shortage> Shortages => Shortage.Of(this);

    /// <summary>The rack when the job is done.</summary>
    public Rack After => RackAfter.Of(this);
}
