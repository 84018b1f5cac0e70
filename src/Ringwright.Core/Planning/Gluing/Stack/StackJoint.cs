using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>How a ring is centred on its neighbour.</summary>
public enum Centring
{
    /// <summary>On a circle drawn around the outside of the upper blank.</summary>
    OuterCircle,

    /// <summary>On a circle drawn inside the opening of the upper blank.</summary>
    InnerCircle,

    /// <summary>By cross lines through the axis, carried over both rims.</summary>
    CrossLines,
}

/// <summary>Two rings glued to each other.</summary>
/// <param name="Lower">Number of the lower ring in the plan, 0-based.</param>
/// <param name="Upper">Number of the upper ring.</param>
/// <param name="FromTop">Whether the lower ring is laid on the upper one, the section standing on its head.</param>
/// <param name="Joins">Whether it joins two sections of the piece.</param>
/// <param name="Turn">Joint 1 of the upper ring against joint 1 of the lower one, radians counter-clockwise from above; null when one of them has no joints.</param>
/// <param name="Joint">The lower ring's joint that is nearest to the upper ring's joint 1, 0-based.</param>
/// <param name="Along">From there along the lower rim to the upper joint 1, mm, counter-clockwise.</param>
/// <param name="Edge">Length of the lower rim edge it stands over, mm.</param>
/// <param name="Centring">How it is centred.</param>
/// <param name="Circle">Diameter of the circle to draw, mm; 0 for cross lines.</param>
/// <param name="Joints">Faces to spread: one, or one for each piece where one of them has open segments.</param>
public sealed record StackJoint(int Lower, int Upper, bool FromTop, bool Joins, double? Turn, int Joint, double Along, double Edge, Centring Centring, double Circle, int Joints)
{
    private const double Over = 0.1; // mm: finer than a pencil line

    /// <summary>Where the mark of the upper ring goes, in words.</summary>
    public Sentence Mark
    {
        get
        {
            Measured joint = Measured.Count(Joint + 1), along = Measured.Length(Math.Abs(Along));
            if (Turn is null) return Sentence.Of("Carry the pencil line straight up over the rim.");
            if (Math.Abs(Along) < Over) return Sentence.Of("Joint 1 straight over joint {0}.", joint);
            if (Math.Abs(Along - (Edge / 2)) < Over) return Sentence.Of("Joint 1 over the middle of the rim edge after joint {0}: {1} counter-clockwise of it.", joint, along);
            return Sentence.Of($"Joint 1 {{1}} {(Along > 0 ? "counter-clockwise" : "clockwise")} of joint {{0}}.", joint, along);
        }
    }

    /// <summary>The same in few words, for a chart; "after" is counter-clockwise seen from above.</summary>
    public Sentence InShort
    {
        get
        {
            Measured joint = Measured.Count(Joint + 1), along = Measured.Length(Math.Abs(Along));
            if (Turn is null) return Sentence.Of("line carried up");
            if (Math.Abs(Along) < Over) return Sentence.Of("over joint {0}", joint);
            return Sentence.Of($"{{1}} {(Along > 0 ? "after" : "before")} joint {{0}}", joint, along);
        }
    }

    /// <summary>How to centre it, in words.</summary>
    public Sentence Centre => Centring switch
    {
        Centring.OuterCircle => Sentence.Of("Circle of {0} drawn on the turning face below: the corners of the upper ring touch it from inside.", Measured.Length(Circle)),
        Centring.InnerCircle => Sentence.Of("Circle of {0} drawn on the turning face below: it shows evenly inside the opening, touching its flats.", Measured.Length(Circle)),
        _ => Sentence.Of("Cross lines through the axis on both rims, a quarter turn apart; measure from rim to rim at all four."),
    };

    internal static StackJoint Of(RingPlan lower, int at, RingPlan upper, (bool FromTop, bool Joins) how)
    {
        RimMarks below = RimMarks.Of(lower), above = RimMarks.Of(upper);
        bool marked = !below.Joints.IsEmpty && !above.Joints.IsEmpty;
        (int joint, double along) = marked ? below.At(above.Joints[0]) : (0, 0);
        double edge = marked ? below.Edge(joint) : 0;
        double? turn = marked ? RimMarks.Wrap(above.Joints[0] - below.Joints[0]) : null;
        (Centring centring, double circle) = CentringOf(how.FromTop ? (upper, lower) : (lower, upper));
        int joints = upper.Ring is OpenRing ? upper.Ring.Around : lower.Ring is OpenRing ? lower.Ring.Around : 1;
        return new(at, at + 1, how.FromTop, how.Joins, turn, joint, along, edge, centring, circle, joints);
    }

    // The circle must lie on wood of the ring that is there already, where the other leaves it to be seen.
    private static (Centring, double) CentringOf((RingPlan Laid, RingPlan Put) pair)
    {
        double outer = Size(pair.Laid, "across-flats", "round"), inner = Size(pair.Laid, "opening-corners");
        double corners = Size(pair.Put, "across-corners", "round"), opening = Size(pair.Put, "opening-flats");
        if (corners > inner && corners < outer) return (Centring.OuterCircle, corners);
        if (opening > inner && opening < outer) return (Centring.InnerCircle, opening);
        return (Centring.CrossLines, 0);
    }

    private static double Size(RingPlan plan, params string[] names) => names.Select(plan.Find).OfType<Figure>().Select(f => f.Value).FirstOrDefault();
}
