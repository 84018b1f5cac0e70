using Ringwright.Core.Measures;

namespace Ringwright.Paper.Pictures;

/// <summary>Sizes that are read with a caliper, not with a rule: inches as decimals, millimetres as they are.</summary>
internal static class Caliper
{
    /// <summary>The style for caliper sizes that goes with a reader's style.</summary>
    public static MeasureStyle Of(MeasureStyle style) =>
        style.Unit == LengthUnit.Inch ? MeasureStyle.InchDecimals : style;

    /// <summary>A length in few letters: the reader's fraction where it is exact, decimals where it is not.</summary>
    public static string Short(MeasureStyle style, double millimetres)
    {
        string text = style.Length(millimetres);
        return text.StartsWith('≈') ? Of(style).Length(millimetres) : text;
    }
}
