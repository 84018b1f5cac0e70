using MathNet.Numerics.Integration;

namespace Ringwright.Core.Turning;

/// <summary>Integrals over one ring's wall, for density 1 g/mm³.</summary>
internal sealed class WallIntegrals
{
    // Over a slab the integrands of radial joints are polynomials of degree 4 at most; 3 points are exact to degree 5.
    private static readonly GaussLegendreRule Polynomial = new(0, 1, 3);
    private static readonly GaussLegendreRule Smooth = new(0, 1, 12);

    private const double Hair = 1e-9;

    private readonly WallSection _section;
    private readonly Dictionary<SegmentShape, MassProperties> _known = [];

    // Per radian, and per unit of the chord of a unit circle: integrals of (R² − r²)/2, (R³ − r³)/3, (R⁴ − r⁴)/4.
    private readonly double _second;
    private readonly double _secondHeight;
    private readonly double _third;
    private readonly double _thirdHeight;
    private readonly double _fourth;
    private readonly double _outer;
    private readonly double _inner;

    public WallIntegrals(WallSection section)
    {
        _section = section;
        for (int i = 1; i < section.Levels.Length; i++)
        {
            (WallLevel below, WallLevel above) = (section.Levels[i - 1], section.Levels[i]);
            _outer += Cone(below.Outer, above.Outer, above.Z - below.Z);
            _inner += Cone(below.Inner, above.Inner, above.Z - below.Z);
            for (int node = 0; node < Polynomial.Order; node++)
            {
                WallLevel at = WallLevel.Between(below, above, Polynomial.GetAbscissa(node));
                double weight = Polynomial.GetWeight(node) * (above.Z - below.Z);
                double second = weight * ((at.Outer * at.Outer) - (at.Inner * at.Inner)) / 2;
                double third = weight * (Cube(at.Outer) - Cube(at.Inner)) / 3;
                _second += second;
                _secondHeight += second * at.Z;
                _third += third;
                _thirdHeight += third * at.Z;
                _fourth += weight * ((at.Outer * Cube(at.Outer)) - (at.Inner * Cube(at.Inner))) / 4;
            }
        }
    }

    public MassProperties Over(TurnedSegment segment)
    {
        if (segment.Within is null && new SegmentSpan(segment) is { IsRadial: true } span) return OverRadial(span);
        TurnedSegment atZero = SegmentShape.AtZero(segment);
        SegmentShape shape = SegmentShape.Of(atZero);
        if (!_known.TryGetValue(shape, out MassProperties mass))
        {
            foreach (SegmentSpan cell in SegmentCells.Of(atZero)) mass += OverSlabs(cell);
            _known.Add(shape, mass);
        }

        return mass.Turned(segment.From.Direction);
    }

    private MassProperties OverRadial(in SegmentSpan span)
    {
        double angle = Math.Max(0, span.Angle);
        (double sinFrom, double cosFrom) = Math.SinCos(span.From);
        (double sinTo, double cosTo) = Math.SinCos(span.From + angle);
        double x = span.IsFullTurn ? 0 : sinTo - sinFrom;
        double y = span.IsFullTurn ? 0 : cosFrom - cosTo;
        return new(
            angle * _second, angle * _second, new(x * _third, y * _third, angle * _secondHeight), angle * _fourth,
            x * _thirdHeight, y * _thirdHeight, angle * _outer, angle * _inner);
    }

    private MassProperties OverSlabs(in SegmentSpan span)
    {
        MassProperties sum = default;
        foreach (List<WallLevel> run in SectionClip.Runs(_section, span))
        {
            for (int i = 1; i < run.Count; i++) sum += OverSlab(run[i - 1], run[i], span);
        }

        return sum;
    }

    private static MassProperties OverSlab(WallLevel below, WallLevel above, in SegmentSpan span)
    {
        MassProperties sum = default;
        double height = above.Z - below.Z;
        double outer = Math.Sqrt((height * height) + Square(above.Outer - below.Outer));
        double inner = Math.Sqrt((height * height) + Square(above.Inner - below.Inner));
        for (int node = 0; node < Smooth.Order; node++)
        {
            WallLevel at = WallLevel.Between(below, above, Smooth.GetAbscissa(node));
            double weight = Smooth.GetWeight(node);
            // What ends before the wall is not turned there.
            (double least, double greatest) = span.Reach(at.Z);
            sum += new CrossSection(span, SectionClip.Clipped(at, (least, greatest))).Slice(weight * height) with
            {
                OuterArea = at.Outer < greatest - Hair ? weight * outer * at.Outer * Math.Max(0, span.Width(at.Outer, at.Z)) : 0,
                InnerArea = at.Inner > least + Hair || least == 0 ? weight * inner * at.Inner * Math.Max(0, span.Width(at.Inner, at.Z)) : 0,
            };
        }

        return sum;
    }

    // Per radian: a frustum's side, or the ring of a step.
    private static double Cone(double a, double b, double height) => (a + b) / 2 * Math.Sqrt((height * height) + Square(b - a));

    private static double Square(double x) => x * x;

    private static double Cube(double x) => x * x * x;
}
