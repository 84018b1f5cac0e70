namespace Ringwright.Core.Measures;

/// <summary>The unit a person writes a length in.</summary>
public enum LengthUnit
{
    /// <summary>Millimetre.</summary>
    Millimetre,

    /// <summary>International inch, exactly 25.4 mm.</summary>
    Inch,
}
