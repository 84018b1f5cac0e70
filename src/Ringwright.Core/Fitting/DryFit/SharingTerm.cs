using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// What decides where the band does not. If the wedge angles sum to less than a full turn, the band is (to third order)
/// equally long however the opening is shared among the joints, and if they sum to more it does not feel the tips at
/// all. So a weak pull closes the tips, as hands do, and a weak square on rim opening, tip opening and rim step shares
/// what is left evenly, and wins over the second-order terms of turning, which would favour now this joint, now that.
/// </summary>
/// <remarks>
/// With the band's tension as unit of force, a rim that steps out by s costs s sin(pi/N). Pull and square are kept
/// below that for openings up to several times the ring's unevenness, so that neither opens a joint or makes a step
/// that the band would close: the band is longer than the least possible by at most the square's value in the ring
/// with the shortest band, <c>Stiffness / 2 x sum of (rim² + tip² + step²)</c>.
/// </remarks>
internal readonly struct SharingTerm
{
    private const double PullShare = 0.02;
    private const double SquareShare = 0.1;

    /// <summary>Sets the term for one ring.</summary>
    public SharingTerm(RingModel model)
    {
        double step = Math.Sin(Math.PI / model.Count);
        Pull = PullShare * step;
        Stiffness = SquareShare * step / model.Unevenness;
    }

    /// <summary>Force that closes each tip, in units of the band's tension.</summary>
    public double Pull { get; }

    /// <summary>Force per mm of rim opening, tip opening and rim step, in units of the band's tension.</summary>
    public double Stiffness { get; }

    /// <summary>Adds gradient and curvature of the term for one joint whose tip lies at <paramref name="tipX"/> (negative, mm) in the joint frame.</summary>
    public void AddDerivatives(JointState z, double tipX, ref Vector3D gradient, ref Symmetric3 curvature)
    {
        double tip = z.Across + (tipX * z.Turn);
        gradient += new Vector3D(Stiffness * z.Across, Pull + (Stiffness * tip), Stiffness * z.Along);
        curvature.AddDiagonal(Stiffness);
    }
}
