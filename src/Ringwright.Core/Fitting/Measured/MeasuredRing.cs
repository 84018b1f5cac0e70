using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Fitting;

/// <summary>The dry fit of real wedges, in the order in which they lie, from caliper readings; and what it says of the fences.</summary>
/// <param name="Wedges">The wedges, counter-clockwise.</param>
/// <param name="Fit">Their dry fit under a band.</param>
/// <param name="Readings">The angle of each wedge as a reading, with what the caliper leaves unknown of it.</param>
/// <param name="Diagnosis">What those readings say of the fences.</param>
public sealed record MeasuredRing(
    ImmutableArray<MeasuredWedge> Wedges, DryFitResult Fit, ImmutableArray<FitObservation> Readings, FitDiagnosis Diagnosis)
{
    // A ring that closes at the reading places may be this much larger than the planned one, as a share of its radius, before the readings are doubted.
    private const double Slack = 0.05;

    /// <summary>What the caliper leaves unknown of the closing error: standard deviation, radians.</summary>
    public double ClosingErrorSd => Math.Sqrt(Readings.Sum(r => r.Sd * r.Sd));

    /// <summary>Dry-fits the wedges.</summary>
    /// <param name="plan">The ring they are for.</param>
    /// <param name="sled">The sled they come from.</param>
    /// <param name="wedges">As many as the ring has segments, in their order.</param>
    /// <param name="depth">Radial distance between the two reading places, mm.</param>
    /// <param name="caliperSd">Standard deviation of one caliper reading, mm.</param>
    /// <exception cref="BadInputException">Too few or too many wedges, or readings that cannot belong to the ring.</exception>
    public static MeasuredRing Of(RingPlan plan, Sled sled, IReadOnlyList<MeasuredWedge> wedges, double depth, double caliperSd = WedgeChoiceInput.UsualCaliperSd)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(wedges);
        if (wedges.Count != plan.Ring.Around)
            throw new BadInputException("measured wedges", $"there are {wedges.Count}, and the ring has {plan.Ring.Around}", "one reading for each wedge of the ring is needed, in their order");
        if (!(depth > 0 && depth <= plan.Glued.Depth + 1e-9))
            throw new BadInputException("depth", FormattableString.Invariant($"the reading places cannot be {depth:0.###} mm apart"), FormattableString.Invariant($"more than 0 and at most the wedge's depth, {plan.Glued.Depth:0.###} mm, is needed"));
        double beyond = BeyondRimReading(plan.Glued, [.. wedges.SelectMany(w => new[] { w.Below, w.Above })], depth);
        FitWedge[] laid = [.. wedges.Select(w => Lay(w, plan.Glued, depth, beyond))];
        ImmutableArray<FitObservation> readings = [.. wedges.Select(w => Angle(w, depth, caliperSd))];
        return new([.. wedges], DryFitSolver.Fit(laid), readings, FitDiagnosis.Of(DiagnosedRing.Of(plan, sled), readings));
    }

    /// <summary>
    /// How far the rim lies outside of the place where the rim was read, mm. A ring of these wedges closes about right, so
    /// that place lies at the apothem mean width / (2 tan pi/N).
    /// </summary>
    private static double BeyondRimReading(WedgeGeometry glued, CaliperReading[] readings, double depth)
    {
        double place = readings.Average(r => r.Rim) / (2 * Math.Tan(glued.HalfAngle));
        double beyond = glued.OuterApothem - place;
        double slack = Slack * glued.OuterApothem;
        if (beyond < -slack || beyond + depth > glued.Depth + slack)
            throw new BadInputException("measured wedges", FormattableString.Invariant($"wedges so wide at the rim were read {place:0.##} mm from the centre, and the ring reaches from {glued.InnerApothem:0.##} mm to {glued.OuterApothem:0.##} mm"), FormattableString.Invariant($"readings inside the wedge, {depth:0.##} mm apart, are needed"));
        return Math.Clamp(beyond, 0, Math.Max(0, glued.Depth - depth));
    }

    private static FitWedge Lay(MeasuredWedge wedge, WedgeGeometry glued, double depth, double beyond) =>
        new(Section(wedge.Below, glued, depth, beyond), Section(wedge.Above, glued, depth, beyond));

    /// <summary>
    /// The wedge from rim to tip, its faces straight on from the reading places; shorter where they meet before the tip. The
    /// rims of both sides are level, whatever their depth.
    /// </summary>
    private static ConvexPolygon Section(CaliperReading reading, WedgeGeometry glued, double depth, double beyond)
    {
        double slope = (reading.Rim - reading.Tip) / (reading.Depth ?? depth);
        double rim = reading.Rim + (slope * beyond), tip = Math.Max(0, rim - (slope * glued.Depth));
        double deep = tip > 0 || slope <= 0 ? glued.Depth : rim / slope;
        Vector2D inwards = new(-deep, 0);
        return new([.. FitWedge.FromCaliper(rim, tip, deep).Bottom.Vertices.Select(v => v + inwards)]);
    }

    private static WedgeAngleReading Angle(MeasuredWedge wedge, double depth, double caliperSd)
    {
        double angle = (wedge.Below.Angle(depth) + wedge.Above.Angle(depth)) / 2;
        double sd = wedge.Below.AngleSd(depth, caliperSd);
        return new(angle, ReferenceEquals(wedge.Below, wedge.Above) ? sd : sd / Math.Sqrt(2));
    }
}
