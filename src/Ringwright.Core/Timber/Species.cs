using System.Collections.Immutable;

namespace Ringwright.Core.Timber;

/// <summary>What is known of a wood, each value with its source. Means of the species: a tree differs from them by a fifth and more.</summary>
public sealed record Species
{
    /// <summary>The everyday name, as rings name it.</summary>
    public required string Name { get; init; }

    /// <summary>The full name with the botanical one.</summary>
    public required string FullName { get; init; }

    /// <summary>Other names it is found by.</summary>
    public ImmutableArray<string> Aliases { get; init; } = [];

    /// <summary>False when the wood is in no table and a middling hardwood stands for it.</summary>
    public bool IsKnown { get; init; } = true;

    /// <summary>Density at 12 percent moisture, kg/m³.</summary>
    public required Sourced Density { get; init; }

    /// <summary>Shrinkage across the growth rings from green to oven-dry, as a share of the green size.</summary>
    public required Sourced RadialShrinkage { get; init; }

    /// <summary>Shrinkage along the growth rings from green to oven-dry, as a share of the green size.</summary>
    public required Sourced TangentialShrinkage { get; init; }

    /// <summary>Change across the growth rings for one percent of moisture (C_R), as a share of the size; within 6 to 14 percent.</summary>
    public required Sourced RadialChange { get; init; }

    /// <summary>Change along the growth rings for one percent of moisture (C_T), as a share of the size; within 6 to 14 percent.</summary>
    public required Sourced TangentialChange { get; init; }

    /// <summary>Modulus of elasticity along the grain, MPa.</summary>
    public required Sourced Modulus { get; init; }

    /// <summary>Modulus across the growth rings as a share of <see cref="Modulus"/>.</summary>
    public required Sourced RadialStiffness { get; init; }

    /// <summary>Modulus along the growth rings, across the grain, as a share of <see cref="Modulus"/>.</summary>
    public required Sourced TangentialStiffness { get; init; }

    /// <summary>Shear strength parallel to the grain at 12 percent moisture, MPa.</summary>
    public required Sourced Shear { get; init; }

    /// <summary>Tensile strength perpendicular to the grain at 12 percent moisture, MPa.</summary>
    public required Sourced TensionAcross { get; init; }

    /// <summary>Side hardness (Janka), N; null when no source is known.</summary>
    public Sourced? Hardness { get; init; }

    /// <summary>Colour fresh from the tool.</summary>
    public required SourcedColour Fresh { get; init; }

    /// <summary>Colour aged in light under a clear finish.</summary>
    public required SourcedColour Aged { get; init; }

    /// <summary>Swatch on screen: <see cref="Fresh"/> as sRGB, #rrggbb.</summary>
    public required string Hex { get; init; }

    /// <summary>Number of the line pattern on paper.</summary>
    public required int Mark { get; init; }

    /// <summary>Dust and allergy caution beyond the usual, or empty. Common practice, never complete.</summary>
    public string Caution { get; init; } = "";

    /// <summary>Change for one percent of moisture across the width of a board that was sawn <paramref name="cut"/>.</summary>
    public Sourced WidthChange(GrainCut cut) => cut == GrainCut.FlatSawn ? TangentialChange : RadialChange;

    /// <summary>Shrinkage across the width of a board that was sawn <paramref name="cut"/>.</summary>
    public Sourced WidthShrinkage(GrainCut cut) => cut == GrainCut.FlatSawn ? TangentialShrinkage : RadialShrinkage;

    /// <summary>Modulus across the width of a board that was sawn <paramref name="cut"/>, MPa.</summary>
    public double WidthModulus(GrainCut cut) => Modulus.Value * (cut == GrainCut.FlatSawn ? TangentialStiffness : RadialStiffness).Value;
}
