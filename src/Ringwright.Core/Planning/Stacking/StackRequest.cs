using System.Collections.Immutable;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>What a stack of rings is to be found for. Lengths in mm.</summary>
public sealed record StackRequest
{
    /// <summary>The turned shape.</summary>
    public required Shape Shape { get; init; }

    /// <summary>Ring heights that the boards at hand give: their thickness less what flattening takes off both sides.</summary>
    public required ImmutableArray<double> Heights { get; init; }

    /// <summary>Segments in every ring; absent: by <see cref="RimEdge"/>.</summary>
    public int? Segments { get; init; }

    /// <summary>Longest rim edge wanted when <see cref="Segments"/> is absent: large rings get more segments, in numbers by which the woods come round evenly where there are such.</summary>
    public double RimEdge { get; init; } = 25;

    /// <summary>Woods around every ring, repeated.</summary>
    public ImmutableArray<string> Woods { get; init; } = ["maple"];

    /// <summary>Whether each ring is turned by half a segment against the one below.</summary>
    public bool BrickLaid { get; init; } = true;

    /// <summary>Least overlap of two neighbouring rings' glue faces, radially. Common practice, no source.</summary>
    public double GlueOverlap { get; init; } = 5;

    /// <summary>Share of extra wood that is accepted for ripping fewer widths.</summary>
    public double ExtraWood { get; init; } = 0.05;

    /// <summary>Share of the stack's wood that saving one ring is worth: every ring is an evening of gluing and flattening.</summary>
    public double RingWorth { get; init; } = 0.02;
}

/// <summary>A stack found for a shape.</summary>
/// <param name="Rings">Its rings from the bottom up; sizes follow from the shape.</param>
/// <param name="Wood">Strip wood it takes, with kerf but without spares and board ends, mm³.</param>
/// <param name="FewestRings">Rings and wood of the stack with the fewest rings.</param>
/// <param name="LeastWood">Rings and wood of the stack with the least wood.</param>
/// <param name="Widths">For 1, 2, … widths to rip, the least extra wood.</param>
/// <param name="Chosen">Which of <paramref name="Widths"/> the rings use.</param>
public sealed record StackSuggestion(
    ImmutableArray<Ring> Rings, double Wood, (int Rings, double Wood) FewestRings, (int Rings, double Wood) LeastWood, ImmutableArray<WidthChoice> Widths, int Chosen);
