using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Fitting;

/// <summary>The dry fit of real wedges or staves, in the order in which they lie, from caliper readings; and what it says of each setting.</summary>
/// <param name="Wedges">The wedges, counter-clockwise.</param>
/// <param name="Fit">Their dry fit under a band; spacers of even thickness are taken to be as wanted.</param>
/// <param name="Readings">The angle of each wedge as a reading, with what the caliper leaves unknown of it.</param>
/// <param name="Kinds">What they say of each setting, those that are sawn alike together.</param>
public sealed record MeasuredRing(
    ImmutableArray<MeasuredWedge> Wedges, DryFitResult Fit, ImmutableArray<FitObservation> Readings, ImmutableArray<MeasuredKind> Kinds)
{
    // A ring that closes at the reading places may be this much larger than the planned one, as a share of its radius, before the readings are doubted.
    private const double Slack = 0.05;

    /// <summary>What the readings say of the setting that asks most for a change.</summary>
    public FitDiagnosis Diagnosis => Urgent.Diagnosis;

    /// <summary>Those wedges whose setting asks most for a change, beside its uncertainty.</summary>
    public MeasuredKind Urgent => Kinds.MaxBy(k => Math.Abs(k.Diagnosis.Correction.FenceAngle) / Math.Max(1e-12, k.Diagnosis.Correction.FenceAngleSd))!;

    /// <summary>What the caliper leaves unknown of the closing error: standard deviation, radians.</summary>
    public double ClosingErrorSd => Math.Sqrt(Readings.Sum(r => r.Sd * r.Sd));

    /// <summary>How the ring leans by its staves' widths at both ends, radians; null for wedges and for staves read at one end.</summary>
    public double? Lean { get; init; }

    /// <summary>The distance between the two reading places, mm, where none is told: the whole wedge; for staves between the edges of an end.</summary>
    public static double UsualDepth(RingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Stave is { } stave ? MeasuredStaves.Depth(stave) : plan.Glued.Depth;
    }

    /// <summary>Which of the ring's batches each segment is of, counter-clockwise.</summary>
    /// <exception cref="BadInputException">The ring has no segments of its own.</exception>
    public static ImmutableArray<int> KindsOf(RingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Batches.IsEmpty) throw plan.NoWedges();
        return plan.Batches.Length == 1
            ? [.. Enumerable.Repeat(0, plan.Ring.Around)]
            : [.. plan.Batches.SelectMany((b, kind) => b.Places.Select(place => (place, kind))).OrderBy(p => p.place).Select(p => p.kind)];
    }

    /// <summary>Dry-fits the wedges.</summary>
    /// <param name="plan">The ring they are for.</param>
    /// <param name="sled">The sled they come from.</param>
    /// <param name="wedges">As many as the ring has segments, in their order; of unequal segments each one of the width its place wants.</param>
    /// <param name="depth">Radial distance between the two reading places, mm.</param>
    /// <param name="caliperSd">Standard deviation of one caliper reading, mm.</param>
    /// <exception cref="BadInputException">Too few or too many wedges, or readings that cannot belong to the ring.</exception>
    public static MeasuredRing Of(RingPlan plan, Sled sled, IReadOnlyList<MeasuredWedge> wedges, double depth, double caliperSd = WedgeChoiceInput.UsualCaliperSd)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(wedges);
        if (plan.Ring is OpenRing)
            throw new BadInputException($"ring {plan.Ring.Name}", "open segments do not close, so there is no dry fit", "a ring without gaps has one");
        ImmutableArray<int> kinds = KindsOf(plan);
        if (wedges.Count != kinds.Length)
            throw new BadInputException("measured wedges", $"there are {wedges.Count}, and the ring has {kinds.Length}", "one reading for each wedge of the ring is needed, in their order");
        double most = UsualDepth(plan);
        if (!(depth > 0 && depth <= most + 1e-9))
            throw new BadInputException("depth", FormattableString.Invariant($"the reading places cannot be {depth:0.###} mm apart"), FormattableString.Invariant($"more than 0 and at most the wedge's depth, {most:0.###} mm, is needed"));
        (IReadOnlyList<MeasuredWedge> level, double deep) = (wedges, depth);
        if (plan.Stave is { } stave)
        {
            MeasuredStaves.Check(stave, wedges);
            (level, deep) = MeasuredStaves.Level(stave, wedges, depth);
        }

        ImmutableArray<FitWedge> laid = plan.Stave is { } turned ? MeasuredStaves.Lay(turned, level, deep, MeasuredStaves.Lean(turned, wedges, depth)) : Lay(plan, kinds, wedges, depth);
        ImmutableArray<FitObservation> readings = [.. level.Select(w => Angle(w, deep, caliperSd))];
        return new([.. wedges], DryFitSolver.Fit(laid.AsSpan()), readings, [.. Enumerable.Range(0, plan.Batches.Length).Where(kinds.Contains).Select(k => Kind(plan, sled, k, kinds, readings))])
        {
            Lean = plan.Stave is { } standing && wedges.All(w => !ReferenceEquals(w.Below, w.Above)) ? MeasuredStaves.Lean(standing, wedges, depth) : null,
        };
    }

    private static MeasuredKind Kind(RingPlan plan, Sled sled, int kind, ImmutableArray<int> kinds, ImmutableArray<FitObservation> readings)
    {
        ImmutableArray<int> places = [.. Enumerable.Range(0, kinds.Length).Where(i => kinds[i] == kind)];
        ImmutableArray<FitObservation> own = [.. places.Select(p => readings[p])];
        DiagnosedRing ring = DiagnosedRing.Of(plan, sled, kind);
        return new(kind, places, ring.Wanted, own.OfType<WedgeAngleReading>().Average(r => r.Angle), own, FitDiagnosis.Of(ring, own));
    }

    private static ImmutableArray<FitWedge> Lay(RingPlan plan, ImmutableArray<int> kinds, IReadOnlyList<MeasuredWedge> wedges, double depth)
    {
        double[] beyond = [.. plan.Batches.Select((b, kind) => Enumerable.Range(0, wedges.Count).Where(i => kinds[i] == kind).SelectMany(i => new[] { wedges[i].Below, wedges[i].Above }).ToArray() is { Length: > 0 } readings ? BeyondRimReading(b.Glued, readings, depth, plan.Batches.Length == 1 ? "measured wedges" : FormattableString.Invariant($"measured wedges, wedge {kind + 1}")) : 0)];
        ImmutableArray<FitWedge> laid = [.. wedges.Select((w, i) => Lay(w, plan.Batches[kinds[i]].Glued, depth, beyond[kinds[i]]))];
        return RingJobs.WithSpacers(plan, laid);
    }

    /// <summary>
    /// How far the rim lies outside of the place where the rim was read, mm. A ring of these wedges closes about right, so
    /// that place lies at the apothem mean width / (2 tan pi/N).
    /// </summary>
    private static double BeyondRimReading(WedgeGeometry glued, CaliperReading[] readings, double depth, string where)
    {
        double place = readings.Average(r => r.Rim) / (2 * Math.Tan(glued.HalfAngle));
        double beyond = glued.OuterApothem - place;
        double slack = Slack * glued.OuterApothem;
        if (beyond < -slack || beyond + depth > glued.Depth + slack)
            throw new BadInputException(where, FormattableString.Invariant($"wedges so wide at the rim were read {place:0.##} mm from the centre, and the ring reaches from {glued.InnerApothem:0.##} mm to {glued.OuterApothem:0.##} mm"), FormattableString.Invariant($"readings inside the wedge, {depth:0.##} mm apart, are needed"));
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
