using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// The band where it bends over one joint. With v the step from this wedge's outer corner to the next one's, the band
/// there is max v·y long, y ranging over the directions between the two rims (their convex hull: the unit disc cut by a
/// chord): |v| while the rims leave both corners on the band, else what the sticking-out corner adds. That is a convex
/// function with a kink at v = 0, which is where closed rims lie; so y, the pull of the band across the joint, is an
/// unknown of its own, with a length for the disc's limit and one for the chord's, as primal-dual methods treat norms.
/// Vectors are (across, along) in the joint frame.
/// </summary>
internal struct BandPull
{
    private Vector2D _pull;
    private double _length;
    private double _chordLength;
    private Vector2D _middle;
    private double _chord;
    private double _lengthAim;
    private double _chordAim;
    private Vector2D _pullStep;
    private double _lengthStep;
    private double _chordStep;
    private double _w00;
    private double _w01;
    private double _w11;

    /// <summary>Sum of the two products that the iteration drives to zero, mm.</summary>
    public readonly double Complementarity => (_length * DiscSlack(_pull)) + (_chordLength * ChordSlack(_pull));

    /// <summary>By how much the band's piece at the joint misses v, mm.</summary>
    public readonly double Mismatch(Vector2D v) => (v - (_length * _pull) + (_chordLength * _middle)).Length;

    /// <summary>Sets the directions of the two rims, radians from the face line (both about a quarter turn).</summary>
    public void Between(double before, double after)
    {
        double half = Math.Max(1e-3, (after - before) / 2);
        (double sin, double cos) = Math.SinCos((before + after) / 2);
        _middle = new(sin, cos);
        _chord = Math.Cos(half);
    }

    /// <summary>Starts in the middle, all products equal to <paramref name="product"/>.</summary>
    public void Begin(double product)
    {
        _pull = (0.5 * (1 + _chord)) * _middle;
        _length = product / DiscSlack(_pull);
        _chordLength = product / ChordSlack(_pull);
    }

    /// <summary>Adds pull and stiffness to the joint.</summary>
    public void AddTo(ref Vector3D gradient, ref Symmetric3 matrix)
    {
        double disc = _length / DiscSlack(_pull);
        double chord = _chordLength / ChordSlack(_pull);
        double a = _length + (disc * _pull.X * _pull.X) + (chord * _middle.X * _middle.X);
        double b = (disc * _pull.X * _pull.Y) + (chord * _middle.X * _middle.Y);
        double c = _length + (disc * _pull.Y * _pull.Y) + (chord * _middle.Y * _middle.Y);
        double det = (_length * (_length + (disc * _pull.Dot(_pull)) + (chord * _middle.Dot(_middle)))) + (disc * chord * Math.Pow(_pull.Cross(_middle), 2));
        (_w00, _w01, _w11) = (c / det, -b / det, a / det);
        gradient += new Vector3D(_pull.X, 0, _pull.Y);
        matrix.AddOuter(_w00, new(1, 0, _w01 / _w00));
        matrix.AddOuter(1 / c, new(0, 0, 1));
    }

    /// <summary>Asks for both products to become <paramref name="centre"/>, less the last steps' products when <paramref name="corrected"/>.</summary>
    public void Aim(double centre, bool corrected)
    {
        _lengthAim = centre - (corrected ? _lengthStep * DiscStep() : 0);
        _chordAim = centre - (corrected ? _chordStep * _middle.Dot(_pullStep) : 0);
    }

    /// <summary>What the aim and the mismatch with <paramref name="v"/> add to the joint's right-hand side.</summary>
    public readonly Vector3D Right(Vector2D v)
    {
        Vector2D d = Yield(Residual(v));
        return new(-d.X, 0, -d.Y);
    }

    /// <summary>Steps of the pull and the two lengths, from the change of v.</summary>
    public void Step(Vector2D v, Vector2D change)
    {
        _pullStep = Yield(change + Residual(v));
        double disc = DiscSlack(_pull);
        double chord = ChordSlack(_pull);
        _lengthStep = (_lengthAim - (_length * disc) + (_length * _pull.Dot(_pullStep))) / disc;
        _chordStep = (_chordAim - (_chordLength * chord) - (_chordLength * _middle.Dot(_pullStep))) / chord;
    }

    /// <summary>Shortens the two fractions (lengths with the slacks, pull with the forces) so that at most <paramref name="share"/> is used up.</summary>
    public readonly (double Slack, double Force) Longest(double share, double slack, double force)
    {
        if (slack * _lengthStep < -share * _length) slack = -share * _length / _lengthStep;
        if (slack * _chordStep < -share * _chordLength) slack = -share * _chordLength / _chordStep;
        double towards = _middle.Dot(_pullStep);
        if (force * towards < -share * ChordSlack(_pull)) force = -share * ChordSlack(_pull) / towards;
        double room = share * DiscSlack(_pull);
        double b = _pull.Dot(_pullStep);
        double a = _pullStep.Dot(_pullStep);
        if ((force * b) + (force * force * a / 2) > room) force = 2 * room / (b + Math.Sqrt((b * b) + (2 * a * room)));
        return (slack, force);
    }

    /// <summary>The products' sum after the given fractions.</summary>
    public readonly double ComplementarityAfter(double slack, double force)
    {
        Vector2D pull = _pull + (force * _pullStep);
        return ((_length + (slack * _lengthStep)) * DiscSlack(pull)) + ((_chordLength + (slack * _chordStep)) * ChordSlack(pull));
    }

    /// <summary>Takes the given fractions of the steps.</summary>
    public void Move(double slack, double force)
    {
        _pull += force * _pullStep;
        _length += slack * _lengthStep;
        _chordLength += slack * _chordStep;
    }

    /// <summary>The exact pull at <paramref name="v"/> other than 0: its direction, kept between the rims.</summary>
    public readonly Vector2D Exact(Vector2D v)
    {
        double length = v.Length;
        if (v.Dot(_middle) >= _chord * length) return (1 / length) * v;
        double side = Math.Sqrt(1 - (_chord * _chord)) * Math.Sign(_middle.Cross(v));
        return (_chord * _middle) + (side * _middle.Perpendicular());
    }

    private readonly double DiscStep() => -_pull.Dot(_pullStep);

    private static double DiscSlack(Vector2D pull) => (1 - pull.Dot(pull)) / 2;

    private readonly double ChordSlack(Vector2D pull) => pull.Dot(_middle) - _chord;

    private readonly Vector2D Residual(Vector2D v) =>
        v - ((_lengthAim / DiscSlack(_pull)) * _pull) + ((_chordAim / ChordSlack(_pull)) * _middle);

    private readonly Vector2D Yield(Vector2D r) => new((_w00 * r.X) + (_w01 * r.Y), (_w01 * r.X) + (_w11 * r.Y));
}
