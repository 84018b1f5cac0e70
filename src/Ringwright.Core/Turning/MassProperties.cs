using Ringwright.Core.Geometry;

namespace Ringwright.Core.Turning;

/// <summary>Volume, mass, balance and turned surface of some wood on the lathe. Bodies add up with +.</summary>
/// <param name="Volume">mm³.</param>
/// <param name="Mass">g.</param>
/// <param name="Moment">Mass times place, g·mm; z along the axis.</param>
/// <param name="AxisInertia">Moment of inertia about the axis: mass times squared distance from it, g·mm².</param>
/// <param name="CrossX">Product of inertia: mass times x times z, g·mm².</param>
/// <param name="CrossY">Product of inertia: mass times y times z, g·mm².</param>
/// <param name="OuterArea">Turned outside with its steps, mm².</param>
/// <param name="InnerArea">Turned inside with its floors, mm².</param>
public readonly record struct MassProperties(
    double Volume, double Mass, Vector3D Moment, double AxisInertia, double CrossX, double CrossY, double OuterArea, double InnerArea)
{
    /// <summary>The centre of mass, mm. Not defined without mass (gives NaN).</summary>
    public Vector3D CentreOfMass => (1 / Mass) * Moment;

    /// <summary>Static unbalance: mass times distance of its centre from the axis, g·mm.</summary>
    public double Unbalance => new Vector2D(Moment.X, Moment.Y).Length;

    /// <summary>Where the heavy side is, radians counter-clockwise from +x; 0 when balanced.</summary>
    public double HeavySide => Math.Atan2(Moment.Y, Moment.X);

    /// <summary>
    /// The force that turns with the piece, N, at <paramref name="revolutions"/> per minute: unbalance times ω².
    /// </summary>
    public double Force(double revolutions)
    {
        double omega = revolutions * 2 * Math.PI / 60;
        return Unbalance * 1e-6 * omega * omega;
    }

    /// <summary>
    /// Couple unbalance about the height <paramref name="z"/> mm, g·mm²: what wobbles the piece even when its centre is on the
    /// axis. Times ω² it is the turning moment on what holds it there.
    /// </summary>
    public double CoupleAbout(double z) => new Vector2D(CrossX - (z * Moment.X), CrossY - (z * Moment.Y)).Length;

    /// <summary>Both together.</summary>
    public static MassProperties operator +(MassProperties a, MassProperties b) => new(
        a.Volume + b.Volume, a.Mass + b.Mass, a.Moment + b.Moment, a.AxisInertia + b.AxisInertia,
        a.CrossX + b.CrossX, a.CrossY + b.CrossY, a.OuterArea + b.OuterArea, a.InnerArea + b.InnerArea);

    /// <summary>The same body turned about the axis by <paramref name="angle"/> radians, counter-clockwise.</summary>
    internal MassProperties Turned(double angle)
    {
        Vector2D moment = new Vector2D(Moment.X, Moment.Y).Rotated(angle), cross = new Vector2D(CrossX, CrossY).Rotated(angle);
        return this with { Moment = new(moment.X, moment.Y, Moment.Z), CrossX = cross.X, CrossY = cross.Y };
    }

    /// <summary>The same body of <paramref name="density"/> g/mm³, if this one is of 1 g/mm³.</summary>
    internal MassProperties OfDensity(double density) => this with
    {
        Mass = density * Mass,
        Moment = density * Moment,
        AxisInertia = density * AxisInertia,
        CrossX = density * CrossX,
        CrossY = density * CrossY,
    };
}
