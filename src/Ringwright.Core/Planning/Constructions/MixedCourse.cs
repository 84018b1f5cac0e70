using System.Collections.Immutable;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>
/// A segment of a mixed ring in its place. Its faces are parallel to the rays through the middles of the spacers beside it, half
/// a stack of spacers away; they meet at (<see cref="Apex"/>, <see cref="Aside"/>) from the axis. Lengths in mm, angles in radians.
/// </summary>
/// <param name="Place">Its place in the layout.</param>
/// <param name="Wood">Its wood.</param>
/// <param name="Middle">Direction half way between the two rays.</param>
/// <param name="HalfAngle">Half the angle between them, a.</param>
/// <param name="Before">Spacers on its clockwise side together, t1.</param>
/// <param name="After">Spacers on its counter-clockwise side together, t2.</param>
internal sealed record CourseWedge(int Place, string Wood, double Middle, double HalfAngle, double Before, double After)
{
    /// <summary>Where the faces meet, along the middle: (t1 + t2)/(4 sin a).</summary>
    public double Apex => (Before + After) / (4 * Math.Sin(HalfAngle));

    /// <summary>Where the faces meet, counter-clockwise of the middle: (t1 − t2)/(4 cos a).</summary>
    public double Aside => (Before - After) / (4 * Math.Cos(HalfAngle));

    /// <summary>
    /// The flat as far from the axis as can be with both its corners within <paramref name="radius"/>: the corner beside the
    /// thinner stack m is the farther one, (m/2) beside its ray.
    /// </summary>
    public double InnerFlat(double radius)
    {
        double m = Math.Min(Before, After) / 2;
        return (Math.Cos(HalfAngle) * Math.Sqrt((radius * radius) - (m * m))) + (m * Math.Sin(HalfAngle));
    }

    /// <summary>From the middle line to the farther corner of a flat at <paramref name="flat"/> mm from the axis.</summary>
    public double FartherCorner(double flat) => Math.Abs(Aside) + ((flat - Apex) * Math.Tan(HalfAngle));

    /// <summary>How far along the ray beside it a face reaches, for a flat at <paramref name="flat"/>: its counter-clockwise or its clockwise face.</summary>
    public double AlongRay(double flat, bool after)
    {
        double aside = (after ? Aside : -Aside) + ((flat - Apex) * Math.Tan(HalfAngle));
        return (flat * Math.Cos(HalfAngle)) + (aside * Math.Sin(HalfAngle));
    }
}

/// <summary>A spacer of a mixed ring in its place, square to the ray through the middle of its stack.</summary>
/// <param name="Place">Its place in the layout.</param>
/// <param name="Wood">Its wood.</param>
/// <param name="Thickness">Between its faces, mm.</param>
/// <param name="Direction">The ray, radians.</param>
/// <param name="Offset">From the ray to its clockwise face, mm; negative before the ray.</param>
/// <param name="After">Number of the segment before it.</param>
internal sealed record CourseSpacer(int Place, string Wood, double Thickness, double Direction, double Offset, int After);

/// <summary>The parts of a mixed ring laid out all around.</summary>
internal sealed record MixedCourse(ImmutableArray<CourseWedge> Wedges, ImmutableArray<CourseSpacer> Spacers)
{
    /// <summary>Lays them out; the first segment's middle lies at the ring's shift, counted in segments of middle size.</summary>
    public static MixedCourse Of(MixedRing ring)
    {
        RingPart[] parts = [.. Enumerable.Repeat(ring.Parts, ring.Repeats).SelectMany(p => p)];
        double whole = parts.Sum(p => p.Weight);
        int[] segments = [.. Enumerable.Range(0, parts.Length).Where(i => !parts[i].IsSpacer)];
        double[] stacks = [.. segments.Select((at, i) => Between(at, i + 1 < segments.Length ? segments[i + 1] : parts.Length).Sum(p => p.Thickness!.Value.Millimetres))];
        var wedges = ImmutableArray.CreateBuilder<CourseWedge>(segments.Length);
        var spacers = ImmutableArray.CreateBuilder<CourseSpacer>(parts.Length - segments.Length);
        double from = (ring.Shift * 2 * Math.PI / segments.Length) - (Math.PI * parts[0].Weight / whole);
        for (int i = 0; i < segments.Length; i++)
        {
            RingPart part = parts[segments[i]];
            double half = Math.PI * part.Weight / whole;
            wedges.Add(new(segments[i], part.Wood, from + half, half, stacks[(i + stacks.Length - 1) % stacks.Length], stacks[i]));
            from += 2 * half;
            double offset = -stacks[i] / 2;
            for (int at = segments[i] + 1; at < parts.Length && parts[at].IsSpacer; at++)
            {
                double thickness = parts[at].Thickness!.Value.Millimetres;
                spacers.Add(new(at, parts[at].Wood, thickness, from, offset, i));
                offset += thickness;
            }
        }

        return new(wedges.MoveToImmutable(), spacers.MoveToImmutable());

        IEnumerable<RingPart> Between(int segment, int next) => parts.Skip(segment + 1).Take(next - segment - 1);
    }

    /// <summary>From the axis to both ends of the spacers behind segment <paramref name="index"/>: they cover the faces beside them and what is turned.</summary>
    public (double Inner, double Outer) Ends(int index, double innerFlat, double outerFlat)
    {
        CourseWedge before = Wedges[index], after = Wedges[(index + 1) % Wedges.Length];
        double inner = Math.Max(before.AlongRay(innerFlat, true), after.AlongRay(innerFlat, false));
        double outer = Math.Max(before.AlongRay(outerFlat, true), after.AlongRay(outerFlat, false));
        return (inner, Math.Max(outer, outerFlat));
    }

    /// <summary>Segments that are sawn alike: the same angle, and faces that meet equally far out. In the order they come around.</summary>
    public ImmutableArray<ImmutableArray<CourseWedge>> Alike() =>
        [.. Wedges.GroupBy(w => (Math.Round(w.HalfAngle, 12), Math.Round(w.Before + w.After, 9))).Select(g => g.ToImmutableArray())];
}
