using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Pieces;

/// <summary>What is wanted: the document of one turned piece, its rings from the bottom up. Immutable.</summary>
public sealed record Piece
{
    /// <summary>The value of the file's <c>format</c> field.</summary>
    public const string FormatName = "ringwright/piece";

    /// <summary>The version this library writes and the newest it reads.</summary>
    public const int CurrentVersion = 1;

    /// <summary>The piece's name, as it appears on every sheet.</summary>
    public required string Name { get; init; }

    /// <summary>The unit lengths are shown in.</summary>
    public LengthUnit Units { get; init; } = LengthUnit.Millimetre;

    /// <summary>Free text for the maker.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Notes { get; init; }

    /// <summary>What kind of piece it is; absent when its rings say all.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public PieceKind? Kind { get; init; }

    /// <summary>The turned shape; absent when each ring gives its own sizes.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Shape? Shape { get; init; }

    /// <summary>The rings from the bottom up; at least one.</summary>
    public required ImmutableArray<Ring> Rings { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}
