namespace Ringwright.Core.Sawing;

/// <summary>
/// A fence and the angle it stands at: 0 is a square cut, and the greater the angle, the more the wedge narrows from the
/// edge at the fence to the far edge. A fence at half the wedge angle is the usual setting.
/// </summary>
/// <param name="Angle">The angle as set, rad.</param>
/// <param name="Error">The true angle minus the angle as set, rad: the same in every cut at this fence.</param>
public readonly record struct Fence(double Angle, double Error = 0)
{
    private const double Degree = Math.PI / 180;

    /// <summary>The angle at which it really stands, rad.</summary>
    public double True => Angle + Error;

    internal void Check(string where)
    {
        Require.Angle($"{where}: angle", Angle, 0, 70 * Degree);
        Require.Angle($"{where}: error", Error, -5 * Degree, 5 * Degree);
    }
}
