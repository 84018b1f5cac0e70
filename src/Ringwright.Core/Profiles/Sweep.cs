using Ringwright.Core.Geometry;

namespace Ringwright.Core.Profiles;

/// <summary>Where a circle, centred on the outer curve and as big as the wall is thick, touches the line its neighbours envelop.</summary>
/// <param name="Point">The point of the inner wall.</param>
/// <param name="Tangent">Unit direction of the inner wall there.</param>
/// <param name="Speed">Length of inner wall per unit of the span's parameter; negative where neighbouring circles swallow it.</param>
internal readonly record struct Contact(Vector2D Point, Vector2D Tangent, double Speed);

/// <summary>
/// Circles sweeping along a span of the outer curve, their radius t the wall's thickness. With unit tangent T and inward normal N of
/// the curve and t' = dt/ds along it, a circle touches its envelope in the direction m = −t' T + √(1 − t'²) N. The inner wall
/// advances with √(1 − t'²) |C'| − t ω (1 + k T_r / √(1 − t'²)), ω the turning of T and k = dt/dz; for an even wall
/// |C'| (1 − κ t), the classic parallel curve.
/// </summary>
internal readonly record struct Sweep(CurveSpan Span, ThicknessStretch Thickness) : IRising
{
    /// <summary>Where the circle at <paramref name="u"/> touches.</summary>
    public Contact Touch(double u)
    {
        Vector2D run = Span.Run(u), centre = Span.At(u);
        double speed = run.Length;
        Vector2D tangent = 1 / speed * run;
        double change = Thickness.Slope * tangent.Y, rest = Math.Sqrt(1 - (change * change));
        Vector2D direction = (-change * tangent) + (rest * tangent.Perpendicular());
        double size = Thickness.At(centre.Y);
        double turning = Span.Turning.Value(u) / (speed * speed);
        double advance = (rest * speed) - (size * turning * (1 + (Thickness.Slope * tangent.X / rest)));
        return new(centre + (size * direction), -direction.Perpendicular(), advance);
    }

    /// <summary>Size of the circle at <paramref name="u"/>, mm.</summary>
    public double Size(double u) => Thickness.At(Span.Height.Value(u));

    /// <summary>Height of the inner wall and its derivative.</summary>
    public (double Value, double Slope) At(double u)
    {
        Contact contact = Touch(u);
        return (contact.Point.Y, contact.Tangent.Y * contact.Speed);
    }
}

/// <summary>A stretch of inner wall enveloped by a sweep over [<paramref name="First"/>, <paramref name="Last"/>] of the span's parameter.</summary>
/// <param name="Sweep">The circles.</param>
/// <param name="First">Parameter where the stretch could begin.</param>
/// <param name="Last">Parameter where it could end.</param>
/// <param name="from">Height where it starts.</param>
/// <param name="to">Height where it ends.</param>
internal sealed class SweepArc(Sweep Sweep, double First, double Last, double from, double to) : WallArc(from, to)
{
    private readonly double _touchFrom = Sweep.At(First).Value;
    private readonly double _touchTo = Sweep.At(Last).Value;

    /// <inheritdoc/>
    public override double Radius(double z)
    {
        // Not the touching point's radius: measured on the circle at the very height, an error of the parameter counts only squared.
        double u = ParameterAt(z);
        Vector2D centre = Sweep.Span.At(u);
        double size = Sweep.Thickness.At(centre.Y), above = z - centre.Y;
        return centre.X - Math.Sqrt(Math.Max(0, (size * size) - (above * above)));
    }

    /// <inheritdoc/>
    public override WallArc Cut(double from, double to) => new SweepArc(Sweep, First, Last, from, to);

    // The inner wall turns with ω (1 + k T_r / √(1 − t'²)), whose factor is positive: it bends back where the outer curve does.
    /// <inheritdoc/>
    protected override Quadratic Turning => Sweep.Span.Turning;

    /// <inheritdoc/>
    protected override double ParameterAt(double z) => Rising.Solve(Sweep, z, First, Last, _touchFrom, _touchTo);

    /// <inheritdoc/>
    protected override ArcPoint AtParameter(double parameter)
    {
        Contact contact = Sweep.Touch(parameter);
        return new(contact.Point.X, contact.Point.Y, contact.Tangent, contact.Speed);
    }
}
