using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Pieces;

/// <summary>
/// One layer of a piece. The kind of construction is the file's <c>construction</c> field. Sizes that are absent follow from
/// the piece's shape. Immutable.
/// </summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "construction", UnknownDerivedTypeHandling = JsonUnknownDerivedTypeHandling.FailSerialization)]
[JsonDerivedType(typeof(WedgeDisc), WedgeDisc.ConstructionName)]
[JsonDerivedType(typeof(SegmentRing), SegmentRing.ConstructionName)]
[JsonDerivedType(typeof(OpenRing), OpenRing.ConstructionName)]
[JsonDerivedType(typeof(MixedRing), MixedRing.ConstructionName)]
[JsonDerivedType(typeof(StaveRing), StaveRing.ConstructionName)]
[JsonDerivedType(typeof(LaminatedRing), LaminatedRing.ConstructionName)]
[JsonDerivedType(typeof(BoardRing), BoardRing.ConstructionName)]
[JsonDerivedType(typeof(SolidLayer), SolidLayer.ConstructionName)]
public abstract record Ring
{
    /// <summary>The ring's name, unique in its piece.</summary>
    [JsonPropertyOrder(-9)]
    public required string Name { get; init; }

    /// <summary>Diameter to be turned, outside; absent when the piece's shape says it.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull), JsonPropertyOrder(-7)]
    public Length? Diameter { get; init; }

    /// <summary>Height of the glued ring along the lathe's axis: the finished thickness of the board, or the length of a stave.</summary>
    [JsonPropertyOrder(-6)]
    public required Length Thickness { get; init; }

    /// <summary>Wood left on the radius for turning, outside and inside; the shop's allowance when absent.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull), JsonPropertyOrder(-5)]
    public Length? Allowance { get; init; }

    /// <summary>
    /// How far the ring is turned against the pattern, in segments, counter-clockwise: 0.5 lays it like bricks on a ring of the
    /// same count.
    /// </summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault), JsonPropertyOrder(-4)]
    public double Shift { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }

    /// <summary>Pieces of wood around the ring, thin spacers between them not counted; 1 for a solid layer.</summary>
    [JsonIgnore]
    public abstract int Around { get; }

    /// <summary>Woods around the ring, repeated until all segments have one.</summary>
    [JsonIgnore]
    public abstract ImmutableArray<string> Cycle { get; }

    /// <summary>The diameter of a ring whose size is known: given, or taken from the shape.</summary>
    /// <exception cref="InvalidOperationException">The ring has not been sized yet.</exception>
    [JsonIgnore]
    public Length Outside => Diameter ?? throw new InvalidOperationException($"Ring {Name} has no size yet.");

    /// <summary>The wood of segment <paramref name="index"/> (0-based, counter-clockwise).</summary>
    public string WoodOf(int index) => Cycle[index % Cycle.Length];
}

/// <summary>A ring or disc of equal segments.</summary>
public abstract record SegmentedRing : Ring
{
    /// <summary>Number of equal segments around, 3 to 360.</summary>
    [JsonPropertyOrder(-8)]
    public required int Segments { get; init; }

    /// <summary>Woods around the ring, repeated until all segments have one.</summary>
    [JsonPropertyOrder(-3)]
    public required ImmutableArray<string> Woods { get; init; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override int Around => Segments;

    /// <inheritdoc/>
    [JsonIgnore]
    public override ImmutableArray<string> Cycle => Woods;
}

/// <summary>A ring around an open middle.</summary>
public interface IHollowRing
{
    /// <summary>Diameter to be turned, inside; absent when the piece's shape says it.</summary>
    Length? InnerDiameter { get; }
}
