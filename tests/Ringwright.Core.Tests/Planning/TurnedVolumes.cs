using Ringwright.Core.Turning;

namespace Ringwright.Core.Tests.Planning;

/// <summary>π ∫ (ro² − ri²) dz of a wall of straight parts: cut-off cones.</summary>
internal static class TurnedVolumes
{
    public static double Of(WallSection wall) =>
        wall.Levels.Zip(wall.Levels.Skip(1), (low, high) => (high.Z - low.Z) * (Squares(low.Outer, high.Outer) - Squares(low.Inner, high.Inner))).Sum() * Math.PI / 3;

    private static double Squares(double a, double b) => (a * a) + (a * b) + (b * b);
}
