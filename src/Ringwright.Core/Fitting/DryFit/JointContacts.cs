using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// The clearances that keep two neighbouring faces apart. Across the joint, one face is the upper edge of a convex
/// section and the other the lower edge of another, so their distance is a convex, piecewise straight function of the
/// place along the face: it is smallest at a corner of either, or where one face ends. Corner against edge, both ways,
/// at both levels, is therefore all that has to be asked; at either end the face that ends first supplies the corner.
/// </summary>
internal static class JointContacts
{
    /// <summary>
    /// Ends of two faces this close, mm, count as even: the corners meet each other, and the mean of both directions
    /// holds. With rims in line, rounding would otherwise swap corner and face from step to step. It costs at most this
    /// times the joint's opening angle.
    /// </summary>
    private const double EvenEnds = 1e-7;

    /// <summary>How many clearances a joint has.</summary>
    public static int Count(RingModel model, int joint)
    {
        ref readonly FaceSide a = ref model.Plus(joint);
        ref readonly FaceSide b = ref model.Minus(model.Next(joint));
        int bottom = a.Bottom.Edges + b.Bottom.Edges;
        return model.IsUpright(joint) ? bottom : bottom + a.Top.Edges + b.Top.Edges;
    }

    /// <summary>Fills <paramref name="rows"/> with the clearances at <paramref name="state"/>.</summary>
    public static void Evaluate(RingModel model, int joint, JointState state, Span<JointRow> rows)
    {
        ref readonly FaceSide a = ref model.Plus(joint);
        ref readonly FaceSide b = ref model.Minus(model.Next(joint));
        int used = Level(new(model, a.Bottom, b.Bottom, state, model.TipX(joint)), rows);
        if (!model.IsUpright(joint)) Level(new(model, a.Top, b.Top, state, model.TipX(joint)), rows[used..]);
    }

    /// <summary>Opening at the rim and at the tip of one level, mm, square to the face and taken where both faces are still there.</summary>
    public static (double Rim, double Tip) Opening(RingModel model, int joint, JointState state, bool top)
    {
        ref readonly FaceSide a = ref model.Plus(joint);
        ref readonly FaceSide b = ref model.Minus(model.Next(joint));
        var pair = new FacePair(model, Read(top ? a.Top : a.Bottom), Read(top ? b.Top : b.Bottom), state, model.TipX(joint));
        return (pair.Rim().Clearance, pair.Tip().Clearance);
    }

    private static FaceSpan Read(FaceSpan span) => new(span.ReadStart, span.ReadEdges, span.ReadStart, span.ReadEdges);

    private static int Level(FacePair pair, Span<JointRow> rows)
    {
        rows[0] = pair.Tip();
        rows[1] = pair.Rim();
        int used = 2;
        for (int k = 1; k < pair.A.Edges; k++) rows[used++] = pair.CornerOfA(k);
        for (int k = 1; k < pair.B.Edges; k++) rows[used++] = pair.CornerOfB(k);
        return used;
    }

    private readonly ref struct FacePair(RingModel model, FaceSpan a, FaceSpan b, JointState state, double tipX)
    {
        private readonly ReadOnlySpan<Vector2D> _points = model.Points;
        private readonly ReadOnlySpan<Vector2D> _normals = model.Normals;
        private readonly double _tipX = tipX;
        private readonly Vector2D _shift = new(state.Along, state.Across);
        private readonly Vector2D _turn = Vector2D.AtAngle(state.Turn);

        public FaceSpan A { get; } = a;

        public FaceSpan B { get; } = b;

        public JointRow Tip() => AtEnd(Placed(_points[B.Start]).X - _points[A.Start].X, 0, 0);

        public JointRow Rim() => AtEnd(_points[A.Start + A.Edges].X - Placed(_points[B.Start + B.Edges]).X, A.Edges, B.Edges);

        public JointRow CornerOfB(int k)
        {
            Vector2D lever = Turned(_points[B.Start + k]);
            Vector2D place = lever + _shift;
            int edge = EdgeUnder(A, place.X);
            Vector2D n = _normals[edge];
            return new(n.Dot(place - _points[edge]), JointState.ByEnds(n.Y, lever.Cross(n), n.X, _tipX));
        }

        public JointRow CornerOfA(int k)
        {
            Vector2D place = TurnedBack(_points[A.Start + k] - _shift);
            int edge = EdgeUnder(B, place.X);
            Vector2D n = _normals[edge];
            Vector2D seen = Turned(n);
            return new(-n.Dot(place - _points[edge]), JointState.ByEnds(seen.Y, place.Cross(n), seen.X, _tipX));
        }

        /// <summary>The clearance at an end where A's face reaches <paramref name="farther"/> mm farther than B's.</summary>
        private JointRow AtEnd(double farther, int cornerOfA, int cornerOfB)
        {
            if (farther > EvenEnds) return CornerOfB(cornerOfB);
            if (farther < -EvenEnds) return CornerOfA(cornerOfA);
            JointRow a = CornerOfA(cornerOfA);
            JointRow b = CornerOfB(cornerOfB);
            return new((a.Clearance + b.Clearance) / 2, 0.5 * (a.Gradient + b.Gradient));
        }

        private int EdgeUnder(FaceSpan span, double x)
        {
            int edge = span.Start;
            while (edge < span.Start + span.Edges - 1 && _points[edge + 1].X <= x) edge++;
            return edge;
        }

        private Vector2D Placed(Vector2D p) => Turned(p) + _shift;

        private Vector2D Turned(Vector2D p) => new((_turn.X * p.X) - (_turn.Y * p.Y), (_turn.Y * p.X) + (_turn.X * p.Y));

        private Vector2D TurnedBack(Vector2D p) => new((_turn.X * p.X) + (_turn.Y * p.Y), (_turn.X * p.Y) - (_turn.Y * p.X));
    }
}
