using Ringwright.Core.Measures;

namespace Ringwright.Web.Bench;

/// <summary>How lengths are shown.</summary>
public enum UnitChoice
{
    /// <summary>Millimetres.</summary>
    Millimetres,

    /// <summary>Inches as fractions.</summary>
    InchFractions,

    /// <summary>Inches with decimals.</summary>
    InchDecimals,
}

/// <summary>What a choice of units means.</summary>
public static class UnitChoices
{
    /// <summary>How it prints.</summary>
    public static MeasureStyle Style(this UnitChoice choice) => choice switch
    {
        UnitChoice.InchFractions => MeasureStyle.InchFractions,
        UnitChoice.InchDecimals => MeasureStyle.InchDecimals,
        _ => MeasureStyle.Millimetres,
    };

    /// <summary>The unit of a length typed without one.</summary>
    public static LengthUnit Unit(this UnitChoice choice) => choice.Style().Unit;

    /// <summary>Its name on the switch.</summary>
    public static string Label(this UnitChoice choice) => choice switch
    {
        UnitChoice.InchFractions => "in 1/64",
        UnitChoice.InchDecimals => "in 0.001",
        _ => "mm",
    };
}
