using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Pieces;

/// <summary>What kind of piece it is; decides where its shape starts and what is checked.</summary>
public enum PieceKind
{
    /// <summary>A flat disc or ring, turned or not.</summary>
    [JsonStringEnumMemberName("disc")]
    Disc,

    /// <summary>Discs stacked along a tube and turned to a thin barrel.</summary>
    [JsonStringEnumMemberName("pen barrel")]
    PenBarrel,

    /// <summary>Any other long solid piece between centres, a bead among them.</summary>
    [JsonStringEnumMemberName("spindle")]
    Spindle,

    /// <summary>A straight-sided hollow piece, often with a lid.</summary>
    [JsonStringEnumMemberName("box")]
    Box,

    /// <summary>An open hollow piece, wider than it is high.</summary>
    [JsonStringEnumMemberName("bowl")]
    Bowl,

    /// <summary>A hollow piece higher than it is wide.</summary>
    [JsonStringEnumMemberName("vase")]
    Vase,

    /// <summary>A shallow piece, far wider than it is high.</summary>
    [JsonStringEnumMemberName("platter")]
    Platter,
}

/// <summary>The turned shape: outer curve and what is inside it. Heights count from the bottom of the lowest ring. Immutable.</summary>
public sealed record Shape
{
    /// <summary>Points of the outer curve from the bottom up, at least two; heights never fall.</summary>
    public required ImmutableArray<ShapePoint> Outer { get; init; }

    /// <summary>What is inside; solid when absent.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Inside? Inside { get; init; }

    /// <summary>What the chuck holds while the inside is turned; absent when held otherwise.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Holding? Holding { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}

/// <summary>A point the curve runs through.</summary>
public sealed record ShapePoint
{
    /// <summary>Diameter of the piece there.</summary>
    public required Length Diameter { get; init; }

    /// <summary>Height above the bottom.</summary>
    public required Length Height { get; init; }

    /// <summary>True where the curve turns sharply; smooth otherwise.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public bool Sharp { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}

/// <summary>What is inside the outer curve; the file's <c>hollow</c> field says which kind. Immutable.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "hollow", UnknownDerivedTypeHandling = JsonUnknownDerivedTypeHandling.FailSerialization)]
[JsonDerivedType(typeof(Wall), "wall")]
[JsonDerivedType(typeof(Bore), "bore")]
[JsonDerivedType(typeof(Hollow), "drawn")]
public abstract record Inside
{
    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}

/// <summary>A wall of a given thickness, measured square to the outer curve, above a flat floor.</summary>
public sealed record Wall : Inside
{
    /// <summary>Thickness of the wall where <see cref="Along"/> does not say otherwise.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Thickness at heights, from the bottom up; between them it changes evenly. Empty: the same everywhere.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public ImmutableArray<WallPoint> Along { get; init; }

    /// <summary>Height of the floor's upper side above the bottom; absent: open right through.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Length? Floor { get; init; }
}

/// <summary>The wall's thickness at one height.</summary>
public sealed record WallPoint
{
    /// <summary>Height above the bottom.</summary>
    public required Length Height { get; init; }

    /// <summary>Thickness there, square to the outer curve.</summary>
    public required Length Thickness { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}

/// <summary>A straight hole along the axis, right through or down to a floor: a tube, a box, a napkin ring.</summary>
public sealed record Bore : Inside
{
    /// <summary>Its diameter.</summary>
    public required Length Diameter { get; init; }

    /// <summary>Height of its floor above the bottom; absent: right through.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Length? Floor { get; init; }

    /// <summary>Length of a tube that is glued in, for a pen barrel; absent without one.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Length? Tube { get; init; }

    /// <summary>Wood left at each end to be trimmed flush with the tube.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Length? EndTrim { get; init; }
}

/// <summary>An inner curve drawn by points of its own.</summary>
public sealed record Hollow : Inside
{
    /// <summary>Points of the inner curve from the floor up, at least two; the first one's height is the floor.</summary>
    public required ImmutableArray<ShapePoint> Points { get; init; }
}

/// <summary>How the chuck holds the foot.</summary>
public enum HoldingKind
{
    /// <summary>A short peg below the bottom, gripped from outside.</summary>
    [JsonStringEnumMemberName("tenon")]
    Tenon,

    /// <summary>A shallow hole in the bottom, gripped from inside.</summary>
    [JsonStringEnumMemberName("recess")]
    Recess,
}

/// <summary>The tenon or recess for the chuck.</summary>
public sealed record Holding
{
    /// <summary>Which of the two.</summary>
    public required HoldingKind Kind { get; init; }

    /// <summary>Its diameter.</summary>
    public required Length Diameter { get; init; }

    /// <summary>Length of the tenon below the bottom, or depth of the recess.</summary>
    public required Length Length { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}
