using System.Text.Json;
using System.Text.Json.Serialization;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Pieces;

/// <summary>
/// The glue, as its own sheet says. Starting values are those of a plain wood glue at room temperature; common practice, no source.
/// </summary>
public sealed record Adhesive
{
    /// <summary>What it is called.</summary>
    public string Name { get; init; } = "Plain wood glue";

    /// <summary>From the first glue spread until the joint must be closed.</summary>
    public Duration OpenTime { get; init; } = Duration.Parse("10 min");

    /// <summary>From closing until the clamp may come off and the next joint be glued to it.</summary>
    public Duration ClampTime { get; init; } = Duration.Parse("45 min");

    /// <summary>From closing until it may be flattened or turned: the water must have left the joints, or they sink later.</summary>
    public Duration CureTime { get; init; } = Duration.Parse("24 h");

    /// <summary>Anything else worth knowing; absent when there is nothing.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Note { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}

/// <summary>What there is to glue with, and how quick these hands are. Starting values are common practice, no source.</summary>
public sealed record Gluing
{
    /// <summary>Band clamps that can be on at one time.</summary>
    public int BandClamps { get; init; } = 2;

    /// <summary>Presses, or flat plates with clamps or weights, that can be in use at one time.</summary>
    public int Presses { get; init; } = 2;

    /// <summary>Minutes to spread glue on one joint and put the pieces together.</summary>
    public double MinutesPerJoint { get; init; } = 0.5;

    /// <summary>Minutes to close and check the clamp of one glue-up.</summary>
    public double MinutesPerGlueUp { get; init; } = 2;

    /// <summary>Minutes to true the faces of two halves.</summary>
    public double MinutesPerTruing { get; init; } = 5;

    /// <summary>Minutes to flatten both faces of a ring.</summary>
    public double MinutesPerFlattening { get; init; } = 10;

    /// <summary>Time in the shop on one day; absent when the days are not counted.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Duration? Session { get; init; }

    /// <summary>Deepest hollow that these tools turn from one end.</summary>
    public Length HollowingReach { get; init; } = Length.FromMillimetres(200);

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}
