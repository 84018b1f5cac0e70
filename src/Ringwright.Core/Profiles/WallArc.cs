using MathNet.Numerics.Integration;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Profiles;

/// <summary>A point of a wall.</summary>
/// <param name="Radius">Its radius, mm.</param>
/// <param name="Height">Its height, mm.</param>
/// <param name="Tangent">Unit direction of the wall there, going up.</param>
/// <param name="Speed">Length of wall per unit of the arc's parameter.</param>
internal readonly record struct ArcPoint(double Radius, double Height, Vector2D Tangent, double Speed);

/// <summary>Integrals of the squared radius over the height: ∫r²dz (mm³) and ∫z r²dz (mm⁴).</summary>
internal readonly record struct Moments(double Square, double Raised)
{
    public static Moments operator +(Moments a, Moments b) => new(a.Square + b.Square, a.Raised + b.Raised);

    public static Moments operator -(Moments a, Moments b) => new(a.Square - b.Square, a.Raised - b.Raised);
}

/// <summary>
/// A smooth stretch of wall over [<see cref="From"/>, <see cref="To"/>] of which radius and height both go one way only, so that
/// its extremes are at its ends.
/// </summary>
internal abstract class WallArc(double from, double to)
{
    private const double Agreement = 1e-12;
    private const int Halvings = 24;

    // Exact for the cubic spans, of degree 11 at most.
    private static readonly GaussLegendreRule Rule = new(0, 1, 12);
    private static readonly double[] Places = Rule.Abscissas;
    private static readonly double[] Weights = Rule.Weights;

    /// <summary>Height where it starts.</summary>
    public double From { get; } = from;

    /// <summary>Height where it ends.</summary>
    public double To { get; } = to;

    /// <summary>Radius at height <paramref name="z"/> within it.</summary>
    public abstract double Radius(double z);

    /// <summary>The part of it over [<paramref name="from"/>, <paramref name="to"/>].</summary>
    public abstract WallArc Cut(double from, double to);

    /// <summary>Radius and direction at exactly the height <paramref name="z"/> within it.</summary>
    public ArcPoint At(double z) => AtParameter(ParameterAt(z)) with { Height = z };

    /// <summary>Its moments over [<paramref name="z0"/>, <paramref name="z1"/>] within it.</summary>
    public Moments Moments(double z0, double z1)
    {
        double first = ParameterAt(z0), last = ParameterAt(z1);
        return Halved(first, last, Gauss(first, last), Halvings);
    }

    /// <summary>Heights within it where it may begin to bend the other way.</summary>
    public IEnumerable<double> Inflections()
    {
        (double first, double second) = Turning.Roots();
        double low = ParameterAt(From), high = ParameterAt(To);
        foreach (double root in new[] { first, second })
            if (root > low && root < high) yield return AtParameter(root).Height;
    }

    /// <summary>A quadratic of its parameter with the sign of its curvature.</summary>
    protected abstract Quadratic Turning { get; }

    // Both halves agree with the whole at once where the wall is a polynomial; a tight bend is halved until they do.
    private Moments Halved(double first, double last, Moments whole, int left)
    {
        double middle = (first + last) / 2;
        Moments low = Gauss(first, middle), high = Gauss(middle, last), both = low + high;
        if (left == 0 || Math.Abs((both - whole).Square) <= Agreement * both.Square) return both;
        return Halved(first, middle, low, left - 1) + Halved(middle, last, high, left - 1);
    }

    private Moments Gauss(double first, double last)
    {
        double width = last - first, square = 0, raised = 0;
        for (int i = 0; i < Places.Length; i++)
        {
            ArcPoint p = AtParameter(first + (width * Places[i]));
            double part = Weights[i] * width * p.Radius * p.Radius * p.Speed * p.Tangent.Y;
            square += part;
            raised += p.Height * part;
        }

        return new(square, raised);
    }

    /// <summary>The parameter of height <paramref name="z"/>.</summary>
    protected abstract double ParameterAt(double z);

    /// <summary>The point at a parameter.</summary>
    protected abstract ArcPoint AtParameter(double parameter);
}

/// <summary>A stretch of a span of a curve.</summary>
internal sealed class SpanArc(CurveSpan span, double from, double to) : WallArc(from, to)
{
    private readonly Cubic _radius = span.Radius;
    private readonly Cubic _height = span.Height;

    /// <summary>The whole span.</summary>
    public SpanArc(CurveSpan span)
        : this(span, span.Height.A, span.End.Y)
    {
    }

    /// <inheritdoc/>
    public override double Radius(double z) => _radius.Value(ParameterAt(z));

    /// <inheritdoc/>
    public override WallArc Cut(double from, double to) => new SpanArc(span, from, to);

    /// <inheritdoc/>
    protected override Quadratic Turning => span.Turning;

    /// <inheritdoc/>
    protected override double ParameterAt(double z) => Rising.Solve(_height, z, 0, 1, _height.A, span.End.Y);

    /// <inheritdoc/>
    protected override ArcPoint AtParameter(double parameter)
    {
        Vector2D run = span.Run(parameter);
        double speed = run.Length;
        return new(_radius.Value(parameter), _height.Value(parameter), 1 / speed * run, speed);
    }
}

/// <summary>The side towards the axis of a circle around a corner of the outer curve; half of it at most, above or below the centre.</summary>
/// <param name="Centre">The corner.</param>
/// <param name="Size">The wall's thickness there, mm.</param>
/// <param name="from">Height where it starts.</param>
/// <param name="to">Height where it ends.</param>
internal sealed class DiscArc(Vector2D Centre, double Size, double from, double to) : WallArc(from, to)
{
    /// <inheritdoc/>
    public override double Radius(double z)
    {
        double above = z - Centre.Y;
        return Centre.X - Math.Sqrt(Math.Max(0, (Size * Size) - (above * above)));
    }

    /// <inheritdoc/>
    public override WallArc Cut(double from, double to) => new DiscArc(Centre, Size, from, to);

    /// <inheritdoc/>
    protected override Quadratic Turning => new(1, 0, 0);

    /// <inheritdoc/>
    protected override double ParameterAt(double z) => Math.Asin(Math.Clamp((z - Centre.Y) / Size, -1, 1));

    /// <inheritdoc/>
    protected override ArcPoint AtParameter(double parameter)
    {
        (double sin, double cos) = Math.SinCos(parameter);
        return new(Centre.X - (Size * cos), Centre.Y + (Size * sin), new(sin, cos), Size);
    }
}
