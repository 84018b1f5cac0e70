using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Pieces;

/// <summary>One layer of a piece. The kind of construction is the file's <c>construction</c> field. Immutable.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "construction", UnknownDerivedTypeHandling = JsonUnknownDerivedTypeHandling.FailSerialization)]
[JsonDerivedType(typeof(WedgeDisc), WedgeDisc.ConstructionName)]
[JsonDerivedType(typeof(SegmentRing), SegmentRing.ConstructionName)]
public abstract record Ring
{
    /// <summary>The ring's name, unique in its piece.</summary>
    public required string Name { get; init; }

    /// <summary>Number of equal segments around, 3 to 360.</summary>
    public required int Segments { get; init; }

    /// <summary>Diameter to be turned, outside.</summary>
    public required Length Diameter { get; init; }

    /// <summary>Height of the glued ring along the lathe's axis: the finished thickness of the board.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Wood left on the radius for turning, outside and inside; the shop's allowance when absent.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Length? Allowance { get; init; }

    /// <summary>Woods around the ring, repeated until all segments have one.</summary>
    public required ImmutableArray<string> Woods { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }

    /// <summary>The wood of segment <paramref name="index"/> (0-based, counter-clockwise).</summary>
    public string WoodOf(int index) => Woods[index % Woods.Length];
}

/// <summary>A solid disc of wedges that are sawn to a point, or to a small flat tip.</summary>
public sealed record WedgeDisc : Ring
{
    /// <summary>Value of the <c>construction</c> field.</summary>
    public const string ConstructionName = "wedge disc";

    /// <summary>Flat left at the tip of each finished wedge; absent means a point. Not together with <see cref="BoardWidth"/>.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull), JsonPropertyOrder(1)]
    public Length? Tip { get; init; }

    /// <summary>Width of a board that is already ripped; the tip then follows from it.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull), JsonPropertyOrder(2)]
    public Length? BoardWidth { get; init; }

    /// <summary>Diameter of a hole bored through the centre later (pen tube, arbor); absent when not bored.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull), JsonPropertyOrder(3)]
    public Length? Bore { get; init; }
}

/// <summary>A closed ring of segments around an open middle.</summary>
public sealed record SegmentRing : Ring
{
    /// <summary>Value of the <c>construction</c> field.</summary>
    public const string ConstructionName = "segment ring";

    /// <summary>Diameter to be turned, inside.</summary>
    [JsonPropertyOrder(4)]
    public required Length InnerDiameter { get; init; }
}
