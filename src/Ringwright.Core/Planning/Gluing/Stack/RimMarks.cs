using System.Collections.Immutable;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>
/// The joints of one ring as they show on its rim, seen from above. Joint 1 lies between the pieces 1 and 2, as in the dry fit; where
/// segments stand apart it is the end of segment 1.
/// </summary>
/// <param name="Radius">Distance from the axis to the flats of the glued blank, mm.</param>
/// <param name="Joints">Direction of each joint from the axis, radians counter-clockwise; empty for one piece of wood.</param>
/// <param name="Flat">Whether each piece's rim is a flat from joint to joint; otherwise distances are measured along the round.</param>
public sealed record RimMarks(double Radius, ImmutableArray<double> Joints, bool Flat)
{
    /// <summary>The joints of a ring.</summary>
    public static RimMarks Of(RingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        double radius = (plan.Find("across-flats") ?? plan.Find("round"))?.Value / 2 ?? plan.Ring.Outside.Millimetres / 2;
        if (plan.Ring.Around == 1) return new(radius, [], false);
        if (plan.Lamination is not null) return new(radius, [.. Enumerable.Range(0, plan.Ring.Around).Select(i => (i + 0.5 + plan.Ring.Shift) * 2 * Math.PI / plan.Ring.Around)], true);
        double top = plan.Ring.Thickness.Millimetres;
        return new(radius, [.. plan.Layout.Select(piece => piece.To.AngleAt(radius, top))], plan.Ring is not OpenRing);
    }

    /// <summary>Where a direction falls on this rim.</summary>
    /// <param name="direction">Radians counter-clockwise.</param>
    /// <returns>The nearest joint, 0-based, and the distance from it along the rim, mm, counter-clockwise; half way the joint before it.</returns>
    public (int Joint, double Along) At(double direction)
    {
        const double Half = 1e-9;
        int nearest = 0;
        double least = double.PositiveInfinity;
        for (int i = 0; i < Joints.Length; i++)
        {
            double off = Wrap(direction - Joints[i]);
            // Half way between two joints is told from the one before it.
            double rank = Math.Abs(off) - (off > 0 ? Half : 0);
            if (rank < least) (nearest, least) = (i, rank);
        }

        return (nearest, Along(nearest, Wrap(direction - Joints[nearest])));
    }

    /// <summary>Length of the rim of the piece behind joint <paramref name="joint"/>, to the next joint, mm.</summary>
    public double Edge(int joint)
    {
        double angle = Next(joint);
        return Flat ? 2 * Radius * Math.Tan(angle / 2) : Radius * angle;
    }

    /// <summary>An angle brought to one turn, above −π and up to π.</summary>
    public static double Wrap(double angle)
    {
        double turned = Math.IEEERemainder(angle, 2 * Math.PI);
        return turned <= -Math.PI + 1e-12 ? turned + (2 * Math.PI) : turned;
    }

    private double Along(int joint, double off)
    {
        if (!Flat) return Radius * off;
        double half = (off > 0 ? Next(joint) : Next((joint + Joints.Length - 1) % Joints.Length)) / 2;
        return Math.Sign(off) * Radius * (Math.Tan(half) - Math.Tan(half - Math.Abs(off)));
    }

    private double Next(int joint)
    {
        double angle = Joints[(joint + 1) % Joints.Length] - Joints[joint];
        return angle - (2 * Math.PI * Math.Floor(angle / (2 * Math.PI)));
    }
}
