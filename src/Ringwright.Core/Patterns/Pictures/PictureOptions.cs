using System.Collections.Immutable;
using Ringwright.Core.Patterns.Generators;
using Ringwright.Core.Patterns.Reports;

namespace Ringwright.Core.Patterns.Pictures;

/// <summary>
/// What becomes of the difference between the picture and the wood that is chosen. Handed on to segments that come later, it
/// gives shades that no wood has, at the price of grain: for pieces of many small segments.
/// </summary>
public enum ErrorSpread
{
    /// <summary>Nothing: each segment is as near as it can be by itself.</summary>
    None,

    /// <summary>Handed on as light, as the eye adds it up from afar.</summary>
    Light,

    /// <summary>Handed on in CIELAB, which keeps more detail in dark places.</summary>
    Lab,
}

/// <summary>How a picture becomes a pattern.</summary>
public sealed record PictureOptions
{
    /// <summary>The woods at hand; at least one.</summary>
    public required ImmutableArray<string> Woods { get; init; }

    /// <summary>The wood beside the picture and where it is transparent; need not be among <see cref="Woods"/>.</summary>
    public required string Background { get; init; }

    /// <summary>Where the picture lies.</summary>
    public PicturePlacement Placement { get; init; } = new();

    /// <summary>What becomes of differences.</summary>
    public ErrorSpread Spread { get; init; } = ErrorSpread.None;

    /// <summary>Whether the picture's range from dark to light is first fitted to that of the woods.</summary>
    public bool FitTones { get; init; }
}

/// <summary>A picture as a pattern, and how well it came out.</summary>
/// <param name="Rows">The wood of every segment: per ring from the bottom up, per segment counter-clockwise.</param>
/// <param name="Counts">Pieces of each wood.</param>
/// <param name="MeanDifference">Mean ΔE00 between picture and wood, each segment of the picture weighted by its visible area.</param>
/// <param name="WorstDifference">The largest ΔE00 of a segment.</param>
/// <param name="WorstRing">The ring where it is, counted from 1.</param>
/// <param name="WorstSegment">The segment where it is, counted from 1.</param>
public sealed record PicturedPattern(
    ImmutableArray<ImmutableArray<string>> Rows, WoodCounts Counts, double MeanDifference, double WorstDifference, int WorstRing, int WorstSegment)
{
    /// <summary>The result as a pattern, to be combined with others.</summary>
    public Pattern Pattern => new Drawn(Rows);
}
