using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Boards;

/// <summary>One board, strip or offcut on the rack, its grain along its length.</summary>
public sealed record RackBoard
{
    /// <summary>What is chalked on it, such as A1; no two boards of a rack share it.</summary>
    public required string Label { get; init; }

    /// <summary>Its wood, as rings name it.</summary>
    public required string Wood { get; init; }

    /// <summary>Length along the grain, from end to end as it lies there.</summary>
    public required Length Length { get; init; }

    /// <summary>Width at its narrowest, between edges that are straight enough for the fence.</summary>
    public required Length Width { get; init; }

    /// <summary>Thickness at its thinnest, as it lies there: rough, or milled.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Moisture measured in it, percent; absent when it was not.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? Moisture { get; init; }

    /// <summary>Price of the whole board as it lies there, in one's own money; absent when unknown.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? Price { get; init; }

    /// <summary>Stretches that nothing may come from; absent when the board is sound.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ImmutableArray<Defect>? Defects { get; init; }

    /// <summary>The board it was sawn from, when it is a strip or an offcut.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? CameFrom { get; init; }

    /// <summary>Free text.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Note { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}

/// <summary>A knot, split, stain or other stretch of a board that is cut out over its whole width.</summary>
public sealed record Defect
{
    /// <summary>Where it begins, from the end of the board that the label is on.</summary>
    public required Length From { get; init; }

    /// <summary>Where it ends, from the same end.</summary>
    public required Length To { get; init; }

    /// <summary>What it is.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Note { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}
