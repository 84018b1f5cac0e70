namespace Ringwright.Core.Measures;

/// <summary>What a number measures, so that it can be printed in the user's units.</summary>
public enum Quantity
{
    /// <summary>A length in mm, read with a rule.</summary>
    Length,

    /// <summary>A length in mm too small for a rule: a gap, a sanding loss.</summary>
    FineLength,

    /// <summary>An angle in radians, set on a machine.</summary>
    Angle,

    /// <summary>A small difference of angles in radians.</summary>
    FineAngle,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>A share from 0 to 1.</summary>
    Share,

    /// <summary>An area in mm².</summary>
    Area,

    /// <summary>A volume in mm³.</summary>
    Volume,

    /// <summary>A stress or strength in MPa.</summary>
    Stress,

    /// <summary>Turns of the lathe in a minute.</summary>
    Turns,

    /// <summary>A mass in g.</summary>
    Mass,

    /// <summary>A density in kg/m³.</summary>
    Density,

    /// <summary>A static unbalance in g·mm.</summary>
    Unbalance,

    /// <summary>A force in N.</summary>
    Force,

    /// <summary>A time in minutes.</summary>
    Time,

    /// <summary>A number without unit.</summary>
    Ratio,
}
