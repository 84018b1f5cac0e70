using System.Collections.Immutable;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Profiles;

/// <summary>The thickness of a wall between two heights, changing evenly: <paramref name="AtZero"/> + <paramref name="Slope"/> · z.</summary>
/// <param name="From">Lower height, mm.</param>
/// <param name="To">Upper height, mm.</param>
/// <param name="AtZero">Thickness if it went on to height 0, mm.</param>
/// <param name="Slope">Change of thickness with height, less than 1 either way.</param>
internal readonly record struct ThicknessStretch(double From, double To, double AtZero, double Slope)
{
    /// <summary>Thickness at <paramref name="z"/>, mm.</summary>
    public double At(double z) => AtZero + (Slope * z);
}

/// <summary>The stretches of a wall's thickness from the bottom up; beyond the first and last given height it stays as there.</summary>
internal static class WallThickness
{
    /// <summary>The stretches, covering all heights.</summary>
    public static ImmutableArray<ThicknessStretch> Of(Wall wall)
    {
        if (wall.Along.IsDefaultOrEmpty) return [Even(double.NegativeInfinity, double.PositiveInfinity, wall.Thickness.Millimetres)];
        var stretches = ImmutableArray.CreateBuilder<ThicknessStretch>(wall.Along.Length + 1);
        (double from, double first) = Read(wall.Along[0]);
        stretches.Add(Even(double.NegativeInfinity, from, first));
        foreach (WallPoint point in wall.Along.AsSpan(1..))
        {
            (double to, double next) = Read(point);
            double slope = (next - first) / (to - from);
            stretches.Add(new(from, to, first - (slope * from), slope));
            (from, first) = (to, next);
        }

        stretches.Add(Even(from, double.PositiveInfinity, first));
        return stretches.MoveToImmutable();
    }

    private static ThicknessStretch Even(double from, double to, double thickness) => new(from, to, thickness, 0);

    private static (double Height, double Thickness) Read(WallPoint point) => (point.Height.Millimetres, point.Thickness.Millimetres);
}
