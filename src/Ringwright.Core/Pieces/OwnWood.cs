using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Ringwright.Core.Pieces;

/// <summary>
/// A wood of the shop's own, or the shop's own values of a wood that is known: what is given replaces the table's value. A wood
/// that is not in the table needs density and both shrinkages; the rest is worked out from them.
/// </summary>
public sealed record OwnWood
{
    /// <summary>Its name, as rings name it.</summary>
    public required string Name { get; init; }

    /// <summary>Other names it is found by.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ImmutableArray<string>? Aliases { get; init; }

    /// <summary>Density at 12 percent moisture, kg/m³.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? Density { get; init; }

    /// <summary>Radial shrinkage from green to oven-dry, percent.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? ShrinkageRadial { get; init; }

    /// <summary>Tangential shrinkage from green to oven-dry, percent.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? ShrinkageTangential { get; init; }

    /// <summary>Radial change for one percent of moisture, such as 0.00165; follows from the shrinkage when absent.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? ChangeRadial { get; init; }

    /// <summary>Tangential change for one percent of moisture, such as 0.00353; follows from the shrinkage when absent.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? ChangeTangential { get; init; }

    /// <summary>Modulus of elasticity along the grain, MPa.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? Modulus { get; init; }

    /// <summary>Shear strength parallel to the grain, MPa.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? Shear { get; init; }

    /// <summary>Tensile strength perpendicular to the grain, MPa.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? TensionAcross { get; init; }

    /// <summary>Side hardness (Janka), N.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? Hardness { get; init; }

    /// <summary>Colour fresh from the tool, CIELAB: [L, a, b].</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ImmutableArray<double>? Fresh { get; init; }

    /// <summary>Colour aged in light under a clear finish, CIELAB: [L, a, b].</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ImmutableArray<double>? Aged { get; init; }

    /// <summary>Swatch on screen, #rrggbb.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Swatch { get; init; }

    /// <summary>Number of the line pattern on paper, 0 to 5.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public int? Mark { get; init; }

    /// <summary>Dust and allergy caution.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Caution { get; init; }

    /// <summary>Where the values come from; the shop's own when absent.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Source { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}
