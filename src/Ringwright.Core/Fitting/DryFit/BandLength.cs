using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// The rubber band: at mid height, stretched around the outer corners of all wedges, so its length is the perimeter of
/// their convex hull. A hull edge that spans one wedge has a fixed length, one that spans joints depends on the states
/// of just those joints; the hull's length is a convex function of the corners with a continuous gradient wherever
/// no two corners coincide.
/// </summary>
internal sealed class BandLength
{
    /// <summary>Corners closer than this share of the ring's radius count as one.</summary>
    private const double Closed = 1e-9;

    private Vector2D[] _corners = [];
    private int[] _hull = [];
    private int _count;
    private double _closed;

    /// <summary>Band length of the ring as laid out, mm.</summary>
    public double Measure(RingModel model, RingLayout layout)
    {
        int size = Wrap(model, layout);
        double sum = 0;
        for (int e = 0; e < size; e++) sum += (_corners[_hull[(e + 1) % size]] - _corners[_hull[e]]).Length;
        return sum;
    }

    /// <summary>
    /// Wraps the band and tells for every joint where it bends over it (<paramref name="bends"/>), and what of the band's
    /// length the bends leave out: an edge that passes over corners pulls with its lever on the joints it spans, and
    /// wholly on those it does not touch (<paramref name="gradient"/>), and it stiffens all of them
    /// (added to <paramref name="curvature"/>; several joints are bounded from above by a form that does not couple them).
    /// </summary>
    public void Wrap(RingModel model, RingLayout layout, Span<BandBend> bends, Span<Vector3D> gradient, Span<Symmetric3> curvature)
    {
        bends[..model.Count].Clear();
        gradient[..model.Count].Clear();
        int size = Wrap(model, layout);
        for (int e = 0; e < size; e++)
        {
            int from = From(_hull[e]);
            int to = _hull[(e + 1) % size];
            Vector2D edge = _corners[to] - _corners[from];
            double length = edge.Length;
            Vector2D u = (1 / length) * edge;
            int first = from / 2;
            int last = ((to / 2) + model.Count - 1) % model.Count;
            int joints = (last + 1 - first + model.Count) % model.Count;
            bool within = joints == 1 && from % 2 == 1 && to % 2 == 0;
            if (!within) TellBends(layout, first, last, from, to, u, bends);
            if (within || joints == 0) continue;
            for (int k = 0, j = first; k < joints; k++, j = model.Next(j))
            {
                bool touches = (k == 0 && from % 2 == 1) || (k == joints - 1 && to % 2 == 0);
                Vector2D along = layout.Axis[j];
                Vector2D lever = _corners[to] - layout.Minus[j + 1].Origin;
                Vector2D pull = touches ? Vector2D.Zero : InJoint(along, u);
                gradient[j] += JointState.ByEnds(pull.X, lever.Cross(u), pull.Y, model.TipX(j));
                curvature[j].AddOuter(joints / length, JointState.ByEnds(-u.Dot(along), -lever.Dot(u), along.Cross(u), model.TipX(j)));
            }
        }
    }

    /// <summary>A band edge leaves the joint it starts at and arrives at the joint it ends at.</summary>
    private void TellBends(RingLayout layout, int first, int last, int from, int to, Vector2D u, Span<BandBend> bends)
    {
        int start = from % 2 == 1 ? first : (first + (_count / 2) - 1) % (_count / 2);
        int end = to % 2 == 0 ? last : to / 2;
        bends[start].After = InJoint(layout.Axis[start], u);
        bends[end].Before = InJoint(layout.Axis[end], u);
        bends[end].OnBand = true;
    }

    private static Vector2D InJoint(Vector2D along, Vector2D u) => new(along.Cross(u), along.Dot(u));

    /// <summary>
    /// Hull of the corners, which come in order around the ring (Graham's scan without sorting), from the farthest one
    /// on. Where the two corners of a joint all but coincide, rounding must not decide between them: they count as one,
    /// listed as the + corner.
    /// </summary>
    private int Wrap(RingModel model, RingLayout layout)
    {
        int n = _count = 2 * model.Count;
        if (_corners.Length < n) (_corners, _hull) = (new Vector2D[n], new int[n + 1]);
        _closed = Closed * model.Radius;
        for (int i = 0; i < model.Count; i++)
        {
            _corners[2 * i] = layout.Minus[i].Origin;
            _corners[(2 * i) + 1] = layout.Plus[i].Origin;
        }

        int start = Farthest();
        int size = 0;
        for (int k = 0; k <= n; k++)
        {
            int next = (start + k) % n;
            if (next % 2 == 0 && IsClosed(next)) continue;
            while (size >= 2 && IsInside(_hull[size - 2], _hull[size - 1], next)) size--;
            _hull[size++] = next;
        }

        return size - 1;
    }

    /// <summary>The corner farthest from the origin, which is on the hull.</summary>
    private int Farthest()
    {
        int best = 1;
        for (int c = 0; c < _count; c++)
        {
            if (_corners[c].Dot(_corners[c]) <= _corners[best].Dot(_corners[best])) continue;
            if (c % 2 == 1 || !IsClosed(c)) best = c;
        }

        return best;
    }

    /// <summary>The corner an edge starts from; of two that count as one it is the later.</summary>
    private int From(int corner)
    {
        int next = (corner + 1) % _count;
        return corner % 2 == 1 && IsClosed(next) ? next : corner;
    }

    private bool IsClosed(int minusCorner)
    {
        Vector2D step = _corners[minusCorner] - _corners[(minusCorner + _count - 1) % _count];
        return step.Dot(step) < _closed * _closed;
    }

    private bool IsInside(int before, int corner, int after) =>
        (_corners[corner] - _corners[before]).Cross(_corners[after] - _corners[corner]) <= 0;
}
