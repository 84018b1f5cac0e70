using System.Collections.Immutable;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Boards;

/// <summary>Strips that are sawn alike.</summary>
/// <param name="Runs">What is sawn from one.</param>
/// <param name="Times">How many.</param>
public sealed record StripsAlike(ImmutableArray<PieceRun> Runs, int Times);

/// <summary>Strips of one width to buy, or to rip. Lengths in mm.</summary>
/// <param name="Width">Their width.</param>
/// <param name="Alike">What is sawn from them.</param>
/// <param name="Proof">How many, and how few it could be.</param>
public sealed record StripsToBuy(double Width, ImmutableArray<StripsAlike> Alike, CuttingProof Proof)
{
    /// <summary>How many strips.</summary>
    public int Count => Alike.Sum(a => a.Times);
}

/// <summary>Wood of one kind and thickness to buy. Lengths in mm.</summary>
/// <param name="Wood">The wood.</param>
/// <param name="Planed">Thickness it is planed to.</param>
/// <param name="Rough">Thickness to buy.</param>
/// <param name="Length">Length of the boards.</param>
/// <param name="Strips">The strips, the widest first.</param>
/// <param name="AllAcross">Width of one board that gives all strips.</param>
public sealed record WoodToBuy(string Wood, double Planed, double Rough, double Length, ImmutableArray<StripsToBuy> Strips, double AllAcross)
{
    /// <summary>Width of the boards that the shop can have; null when any can be had.</summary>
    public double? BoardWidth { get; init; }

    /// <summary>How many boards of that width, and how few it could be for these strips.</summary>
    public CuttingProof? Boards { get; init; }

    /// <summary>One sentence: what to ask for.</summary>
    public Sentence Sentence
    {
        get
        {
            string wood = Sentence.Escape(Wood);
            if (Boards is CuttingProof boards)
                return Sentence.Of($"{wood}: {{0}} {(boards.Value == 1 ? "board" : "boards")} {{1}} long, {{2}} wide, at least {{3}} thick before planing.",
                    Measured.Count((int)boards.Value), Measured.Length(Length), Measured.Length(BoardWidth!.Value), Measured.Length(Rough));
            return Sentence.Of($"{wood}: {{0}} {(Count == 1 ? "strip" : "strips")} {{1}} long, at least {{2}} thick before planing; all come from one board {{3}} wide.",
                Measured.Count(Count), Measured.Length(Length), Measured.Length(Rough), Measured.Length(AllAcross));
        }
    }

    private int Count => Strips.Sum(s => s.Count);
}

/// <summary>What to buy for a piece when nothing is at hand.</summary>
/// <param name="Demands">What is needed.</param>
/// <param name="Woods">What to buy.</param>
public sealed record BuyingList(ImmutableArray<StripDemand> Demands, ImmutableArray<WoodToBuy> Woods);
