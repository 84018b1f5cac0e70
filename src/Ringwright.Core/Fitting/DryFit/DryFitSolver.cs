using System.Collections.Immutable;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// The dry fit under a rubber band: rigid wedges flat on a table, no penetration at the bottom or the top, least band
/// length, what the band leaves open shared evenly among the joints (see the remarks).
/// One instance is a workspace that is kept between rings and allocates nothing once it has seen the largest; it is
/// not for use by two threads at once. The same wedges give the same answer to the bit.
/// </summary>
/// <remarks>
/// The band lies at mid height and is as long as the perimeter of the convex hull of the outer corners there. Where
/// it does not decide (a closing error can gather in one joint or be shared, at the same band length) a term a
/// thousand times weaker shares openings and rim steps evenly and closes tips; <see cref="DryFitResult.Gathered"/>
/// tells the other extreme. Where wedges are sawn to a point, tips that would run into the wedges opposite are kept apart
/// as well. Which way tips pass each other has many answers; the one given is where the ring comes to rest when it is
/// drawn in from outside, and no small motion shortens its band.
/// </remarks>
public sealed class DryFitSolver
{
    private readonly BandFit _fit = new();
    private readonly RingLayout _spare = new();
    private FitWedge[] _wedges = [];
    private DryFitSummary _summary;

    /// <summary>Dry-fits one ring and tells everything about it.</summary>
    /// <inheritdoc cref="Solve" path="/exception"/>
    public static DryFitResult Fit(ReadOnlySpan<FitWedge> wedges)
    {
        var solver = new DryFitSolver();
        solver.Solve(wedges);
        return solver.Detail();
    }

    /// <summary>Dry-fits a ring of wedges given counter-clockwise; wedge i's +y face meets wedge i + 1's -y face.</summary>
    /// <exception cref="BadInputException">Fewer than three wedges, or a wedge without two faces.</exception>
    public DryFitSummary Solve(ReadOnlySpan<FitWedge> wedges)
    {
        if (_wedges.Length != wedges.Length) _wedges = new FitWedge[wedges.Length];
        wedges.CopyTo(_wedges);
        bool settled = _fit.Run(wedges);
        return _summary = Summarise(settled);
    }

    /// <summary>All about the ring solved last.</summary>
    public DryFitResult Detail()
    {
        int n = _fit.Model.Count;
        var joints = ImmutableArray.CreateBuilder<JointGap>(n);
        for (int j = 0; j < n; j++) joints.Add(JointGapReader.Read(_fit.Model, j, _fit.States[j]));
        double full = 2 * Math.PI;
        ImmutableArray<WedgePose> poses = Poses();
        return new(
            _summary,
            [.. _wedges],
            poses,
            joints.MoveToImmutable(),
            full - _wedges.Sum(w => FaceChain.Angle(w.Bottom.Vertices)),
            full - _wedges.Sum(w => FaceChain.Angle(w.Top.Vertices)),
            Gathered(),
            CentreOverlap.Deepest(_wedges, poses));
    }

    /// <summary>The other extreme of the ring solved last: the whole opening gathered in one joint.</summary>
    public GatheredJoint Gathered() => GatheredJoint.Measure(_fit.Model, _spare, new JointState[_fit.Model.Count]);

    private DryFitSummary Summarise(bool settled)
    {
        int worstJoint = 0;
        JointGap worst = JointGapReader.Read(_fit.Model, 0, _fit.States[0]);
        for (int j = 1; j < _fit.Model.Count; j++)
        {
            JointGap gap = JointGapReader.Read(_fit.Model, j, _fit.States[j]);
            if (gap.Worst > worst.Worst) (worstJoint, worst) = (j, gap);
        }

        return new(
            settled,
            _fit.Steps,
            (2 * Math.PI) - _fit.Model.AngleSum,
            _fit.Band.Measure(_fit.Model, _fit.Layout),
            worst.Worst,
            worstJoint,
            worst.Widest);
    }

    /// <summary>The wedges' poses, the mean of the outer corners at the origin and the wedges turned as little as possible from the even ring.</summary>
    private ImmutableArray<WedgePose> Poses()
    {
        int n = _fit.Model.Count;
        Vector2D centre = Vector2D.Zero;
        double turn = 0;
        var placed = new WedgePose[n];
        for (int i = 0; i < n; i++)
        {
            placed[i] = _fit.Layout.Minus[i].Then(_fit.Model.Minus(i).Frame.Inverse());
            centre += (0.5 / n) * (_fit.Layout.Minus[i].Origin + _fit.Layout.Plus[i].Origin);
            turn += (placed[i].Angle - (i * 2 * Math.PI / n)) / n;
        }

        return [.. placed.Select(p => new WedgePose((p.Origin - centre).Rotated(-turn), p.Angle - turn))];
    }
}
