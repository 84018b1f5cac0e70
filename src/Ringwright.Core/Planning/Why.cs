using System.Collections.Immutable;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Planning;

/// <summary>One value that went into a figure.</summary>
/// <param name="Symbol">Its name in the formula.</param>
/// <param name="Meaning">What it is, in words.</param>
/// <param name="Value">In mm, radians, mm² or as a plain number.</param>
/// <param name="Quantity">What it measures.</param>
public readonly record struct Input(string Symbol, string Meaning, double Value, Quantity Quantity);

/// <summary>Where a figure comes from: formula, the values put into it, where the formula is from, and what it means at the bench.</summary>
/// <param name="Formula">
/// The formula in the symbols of <paramref name="Inputs"/>; · multiplies, − subtracts. When <paramref name="Evaluates"/>,
/// putting the inputs in gives the figure's value.
/// </param>
/// <param name="Source">Where the formula is published, or "common practice, no source".</param>
/// <param name="Reason">What it means at the bench, one sentence.</param>
/// <param name="Evaluates">Whether the formula is a closed expression; otherwise it describes a search or count.</param>
/// <param name="Inputs">The values put in.</param>
public sealed record Why(string Formula, string Source, string Reason, bool Evaluates, ImmutableArray<Input> Inputs);

/// <summary>One number of the plan with its reason.</summary>
/// <param name="Name">Short name for commands and files, such as <c>board-width</c>.</param>
/// <param name="Label">Name for people, such as "Rip the board to".</param>
/// <param name="Value">In mm, radians, mm² or as a plain number.</param>
/// <param name="Quantity">What it measures.</param>
/// <param name="Why">Where it comes from.</param>
public sealed record Figure(string Name, string Label, double Value, Quantity Quantity, Why Why)
{
    /// <summary>The value as it goes into a sentence.</summary>
    public Measured Measured => new(Value, Quantity);

    /// <summary>Which of the ring's batches it belongs to; null when it is about the whole ring, or when there is only one batch.</summary>
    public int? Batch { get; init; }

    /// <summary>What the names of a batch's figures end with: nothing for the first, -2 for the second.</summary>
    public static string SuffixOf(int batch) => batch == 0 ? "" : $"-{batch + 1}";
}
