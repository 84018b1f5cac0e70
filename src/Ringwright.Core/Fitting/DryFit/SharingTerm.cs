using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// What decides where the band does not. If the wedge angles sum to less than a full turn, the band is (to third order)
/// equally long however the opening is shared among the joints, and if they sum to more it does not feel the tips at
/// all. So a weak pull closes the tips, as hands do, and a weak square on rim opening, tip opening and rim step shares
/// what is left evenly. Both are far weaker than the band wherever the band has a say: with the band's tension as unit
/// the pull is <see cref="TipPull"/>, and the square's force <see cref="Stiffness"/> times opening over ring radius;
/// that force still exceeds the third-order preference of the band for gathering, R a³ / 24 for an opening angle a,
/// up to a of <see cref="Stiffness"/> times 12.
/// </summary>
internal static class SharingTerm
{
    /// <summary>Force that closes the tips, as a share of the band's tension.</summary>
    public const double TipPull = 2e-3;

    /// <summary>Force per opening and ring radius, as a share of the band's tension.</summary>
    public const double Stiffness = 1e-1;

    /// <summary>The term itself, mm of band.</summary>
    public static double Value(JointState z, double tipX, double radius)
    {
        double tip = z.Across + (tipX * z.Turn);
        return (TipPull * tip) + (Stiffness / radius / 2 * ((z.Across * z.Across) + (tip * tip) + (z.Along * z.Along)));
    }

    /// <summary>Adds gradient and curvature of the term for one joint whose tip lies at <paramref name="tipX"/> (negative, mm) in the joint frame.</summary>
    public static void AddDerivatives(JointState z, double tipX, double radius, ref Vector3D gradient, ref Symmetric3 curvature)
    {
        double k = Stiffness / radius;
        double tip = z.Across + (tipX * z.Turn);
        gradient += new Vector3D(k * z.Across, TipPull + (k * tip), k * z.Along);
        curvature.AddDiagonal(k);
    }
}
