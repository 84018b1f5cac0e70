using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// The band where it bends over one joint. With v the step from this wedge's outer corner to the next one's, the band
/// there is max v·y long, y ranging over the directions the band turns through at the joint (and their convex hull:
/// the unit disc cut by a chord): |v| while both corners carry the band, else what the sticking-out corner adds. That
/// is a convex function with a kink at v = 0, which is where closed rims lie; so y, the pull of the band across the
/// joint, is an unknown of its own, with a length for the disc's limit and one for the chord's, as primal-dual
/// methods treat norms. Vectors are (across, along) in the joint frame.
/// </summary>
internal struct BandPull
{
    /// <summary>Least height of the disc's segment, no unit: where the band runs all but straight over a joint.</summary>
    private const double LeastRise = 1e-12;

    private Vector2D _pull;
    private Vector2D _middle;
    private double _chord;
    private double _rise;
    private Limit _disc;
    private Limit _bend;
    private double _w00;
    private double _w01;
    private double _w11;
    private Vector2D _pullStep;

    /// <summary>Sum of the two products that the iteration drives to zero, mm.</summary>
    public readonly double Complementarity => (_disc.Length * _disc.Slack) + (_bend.Length * _bend.Slack);

    /// <summary>
    /// Takes the band's new directions before and after the joint. The pull turns with them and keeps its place between
    /// them, so that a bend that turns by more than its own width in one step still leaves the pull inside. False, with
    /// nothing worth keeping, if the bend has become another one: far sharper or far slacker.
    /// </summary>
    public bool Bend(in BandBend bend)
    {
        double depth = (_pull.Dot(_middle) - _chord) / _rise;
        double aside = _middle.Cross(_pull) / Math.Sqrt(_rise * (1 + _chord));
        double before = _rise;
        Face(bend);
        if (_rise > 4 * before || before > 4 * _rise) return false;
        _pull = ((_chord + (depth * _rise)) * _middle) + (aside * Math.Sqrt(_rise * (1 + _chord)) * _middle.Perpendicular());
        _disc.Slack *= _rise / before;
        _bend.Slack *= _rise / before;
        _disc.Off = ((1 - _pull.Dot(_pull)) / 2) - _disc.Slack;
        _bend.Off = (depth * _rise) - _bend.Slack;
        return true;
    }

    /// <summary>Starts in the middle of the bend, both products equal to <paramref name="product"/>.</summary>
    public void Begin(in BandBend bend, double product)
    {
        Face(bend);
        _pull = (1 - (_rise / 2)) * _middle;
        _disc = Limit.At((1 - _pull.Dot(_pull)) / 2, product);
        _bend = Limit.At(_rise / 2, product);
    }

    private void Face(in BandBend bend)
    {
        Vector2D sum = bend.Before + bend.After;
        Vector2D half = 0.5 * (bend.After - bend.Before);
        _middle = (1 / sum.Length) * sum;
        double sine = half.Dot(half);
        _rise = Math.Max(LeastRise, sine / (1 + Math.Sqrt(1 - sine)));
        _chord = 1 - _rise;
    }

    /// <summary>Adds pull and stiffness to the joint.</summary>
    public void AddTo(ref Vector3D gradient, ref Symmetric3 matrix)
    {
        double length = _disc.Length;
        double disc = length / _disc.Slack;
        double bend = _bend.Length / _bend.Slack;
        double a = length + (disc * _pull.X * _pull.X) + (bend * _middle.X * _middle.X);
        double b = (disc * _pull.X * _pull.Y) + (bend * _middle.X * _middle.Y);
        double c = length + (disc * _pull.Y * _pull.Y) + (bend * _middle.Y * _middle.Y);
        double skew = _pull.Cross(_middle);
        double det = (length * (length + (disc * _pull.Dot(_pull)) + bend)) + (disc * bend * skew * skew);
        (_w00, _w01, _w11) = (c / det, -b / det, a / det);
        gradient += new Vector3D(_pull.X, 0, _pull.Y);
        matrix.AddOuter(_w00, new(1, 0, _w01 / _w00));
        matrix.AddOuter(1 / c, new(0, 0, 1));
    }

    /// <summary>Asks for both products to become <paramref name="centre"/>, less the last steps' products when <paramref name="corrected"/>.</summary>
    public void Aim(double centre, bool corrected)
    {
        _disc.Aim = centre - (corrected ? _disc.LengthStep * _disc.SlackStep : 0);
        _bend.Aim = centre - (corrected ? _bend.LengthStep * _bend.SlackStep : 0);
    }

    /// <summary>What the aim and the mismatch with <paramref name="v"/> add to the joint's right-hand side.</summary>
    public readonly Vector3D Right(Vector2D v)
    {
        Vector2D d = Yield(Residual(v));
        return new(-d.X, 0, -d.Y);
    }

    /// <summary>Steps of the pull and the two limits, from the change of v.</summary>
    public void Step(Vector2D v, Vector2D change)
    {
        _pullStep = Yield(change + Residual(v));
        _disc.Step(-_pull.Dot(_pullStep));
        _bend.Step(_middle.Dot(_pullStep));
    }

    /// <summary>Shortens the two fractions (lengths go with the slacks of the ring, pull with its forces) so that at most <paramref name="share"/> is used up.</summary>
    public readonly (double Slack, double Force) Longest(double share, double slack, double force) =>
        (_bend.LongestLength(share, _disc.LongestLength(share, slack)), _bend.LongestSlack(share, _disc.LongestSlack(share, force)));

    /// <summary>The products' sum after the given fractions.</summary>
    public readonly double ComplementarityAfter(double slack, double force) => _disc.After(slack, force) + _bend.After(slack, force);

    /// <summary>Takes the given fractions of the steps.</summary>
    public void Move(double slack, double force)
    {
        _pull += force * _pullStep;
        _disc.Move(slack, force);
        _bend.Move(slack, force);
    }

    private readonly Vector2D Residual(Vector2D v) => v - (_disc.Wanted * _pull) + (_bend.Wanted * _middle);

    private readonly Vector2D Yield(Vector2D r) => new((_w00 * r.X) + (_w01 * r.Y), (_w01 * r.X) + (_w11 * r.Y));

    /// <summary>One limit of the pull: its slack (no unit), the band length that belongs to it (mm), and their steps.</summary>
    private struct Limit
    {
        public double Slack;
        public double Length;
        public double Off;
        public double Aim;
        public double SlackStep;
        public double LengthStep;

        /// <summary>The length that the aim asks for at the present slack.</summary>
        public readonly double Wanted => (Aim - (Length * Off)) / Slack;

        public static Limit At(double slack, double product) => new() { Slack = slack, Length = product / slack };

        public readonly double LongestLength(double share, double part) =>
            part * LengthStep < -share * Length ? -share * Length / LengthStep : part;

        public readonly double LongestSlack(double share, double part) =>
            part * SlackStep < -share * Slack ? -share * Slack / SlackStep : part;

        public readonly double After(double lengthPart, double slackPart) =>
            (Length + (lengthPart * LengthStep)) * (Slack + (slackPart * SlackStep));

        public void Step(double change)
        {
            SlackStep = change + Off;
            LengthStep = (Aim - (Length * (Slack + SlackStep))) / Slack;
        }

        public void Move(double lengthPart, double slackPart)
        {
            Length += lengthPart * LengthStep;
            Slack += slackPart * SlackStep;
        }
    }
}
