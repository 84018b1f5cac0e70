namespace Ringwright.Core.Timber;

/// <summary>A value of a wood and where it comes from.</summary>
/// <param name="Value">The value, in the unit its property says.</param>
/// <param name="Source">A published table, "from memory", "rough guess", or how it was worked out.</param>
public readonly record struct Sourced(double Value, string Source);

/// <summary>A colour in CIELAB (D65) and where it comes from.</summary>
/// <param name="L">Lightness, 0 to 100.</param>
/// <param name="A">Green (below 0) to red.</param>
/// <param name="B">Blue (below 0) to yellow.</param>
/// <param name="Source">Where it comes from.</param>
public readonly record struct SourcedColour(double L, double A, double B, string Source);

/// <summary>How a board was sawn from the tree, which says what its width and its thickness do.</summary>
public enum GrainCut
{
    /// <summary>Flat-sawn: the width lies along the growth rings (tangential), the thickness across them (radial).</summary>
    FlatSawn,

    /// <summary>Quarter-sawn: the width lies across the growth rings (radial), the thickness along them (tangential).</summary>
    QuarterSawn,
}
