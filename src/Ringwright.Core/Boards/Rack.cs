using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Boards;

/// <summary>The boards, strips and offcuts at hand: the document that sawing is planned from and that it changes. Immutable.</summary>
public sealed record Rack
{
    /// <summary>The value of the file's <c>format</c> field.</summary>
    public const string FormatName = "ringwright/rack";

    /// <summary>The version this library writes and the newest it reads.</summary>
    public const int CurrentVersion = 1;

    /// <summary>The rack's name.</summary>
    public required string Name { get; init; }

    /// <summary>The unit its boards are measured in.</summary>
    public LengthUnit Units { get; init; } = LengthUnit.Millimetre;

    /// <summary>The boards, in the order they stand there; may be empty.</summary>
    public required ImmutableArray<RackBoard> Boards { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}
