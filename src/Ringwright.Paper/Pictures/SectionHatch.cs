using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Pictures;

/// <summary>Hatching of parts cut through: neighbours slant to opposite sides (ISO 128).</summary>
internal static class SectionHatch
{
    private const double Slope = Math.PI / 4, Apart = 1.5; // between lines, mm

    /// <summary>The hatch of the part with this number, from 0.</summary>
    public static Hatch Of(int part) => new("cut through", [new(part % 2 == 0 ? Slope : -Slope, Apart)]);
}
