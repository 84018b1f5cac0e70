using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Pieces;

/// <summary>The lathe, what holds the work on it, and how it is cut. Sizes that are not told are not checked.</summary>
public sealed record Lathe
{
    /// <summary>Largest diameter that turns free over the bed.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Length? Swing { get; init; }

    /// <summary>Longest work between the centres.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Length? Between { get; init; }

    /// <summary>Slowest speed, turns a minute.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? SlowestTurns { get; init; }

    /// <summary>What the chuck's jaws grip.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Jaws? Jaws { get; init; }

    /// <summary>Drills at hand, for the first hole.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ImmutableArray<Length>? Drills { get; init; }

    /// <summary>Full angle of a drill's point. 118° is that of common twist drills (common practice, no source); 180° has none.</summary>
    public Angle DrillPoint { get; init; } = Angle.FromDegrees(118);

    /// <summary>Depth of one roughing cut, on the radius. Common practice, no source.</summary>
    public Length RoughCut { get; init; } = Length.FromMillimetres(2);

    /// <summary>Wood that roughing leaves on each side of the wall for the last cuts and sanding. Common practice, no source.</summary>
    public Length FinishAllowance { get; init; } = Length.FromMillimetres(1.5);

    /// <summary>Push of the tool at the rim that the holding must bear, N. A rough guess for a small catch, no source.</summary>
    public double ToolForce { get; init; } = 150;

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}

/// <summary>The smallest and largest a chuck's jaws grip.</summary>
public sealed record Jaws
{
    /// <summary>Smallest tenon.</summary>
    public required Length TenonFrom { get; init; }

    /// <summary>Largest tenon.</summary>
    public required Length TenonTo { get; init; }

    /// <summary>Smallest recess.</summary>
    public required Length RecessFrom { get; init; }

    /// <summary>Largest recess.</summary>
    public required Length RecessTo { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}
