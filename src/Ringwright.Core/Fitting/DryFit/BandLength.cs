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

    /// <summary>Band length of the ring as laid out, mm.</summary>
    public double Measure(RingModel model, RingLayout layout)
    {
        int size = Wrap(model, layout);
        double sum = 0;
        for (int e = 0; e < size; e++) sum += (_corners[_hull[(e + 1) % size]] - _corners[_hull[e]]).Length;
        return sum;
    }

    /// <summary>
    /// Adds what <see cref="BandPull"/> leaves out: where the hull passes over corners, the exact gradient of that edge's
    /// length less that of the joints' own bends, and the edge's curvature. An edge over several joints is bounded
    /// from above by a form that does not couple them.
    /// </summary>
    public void AddSpans(RingModel model, RingLayout layout, ReadOnlySpan<BandPull> pulls, ReadOnlySpan<JointState> states, Span<Vector3D> gradient, Span<Symmetric3> curvature)
    {
        int size = Wrap(model, layout);
        for (int e = 0; e < size; e++)
        {
            int from = From(_hull[e], model);
            int to = _hull[(e + 1) % size];
            int joints = ((to / 2) - (from / 2) + model.Count) % model.Count;
            if (joints == 0 || (to - from + (2 * model.Count)) % (2 * model.Count) == 1) continue;
            Vector2D edge = _corners[to] - _corners[from];
            double length = edge.Length;
            Vector2D u = (1 / length) * edge;
            for (int k = 0, j = from / 2; k < joints; k++, j = model.Next(j))
            {
                Vector2D own = pulls[j].Exact(new(states[j].Across, states[j].Along));
                gradient[j] -= new Vector3D(own.X, 0, own.Y);
                AddJoint(layout, j, model.TipX(j), _corners[to], u, joints / length, ref gradient[j], ref curvature[j]);
            }
        }
    }

    private static void AddJoint(RingLayout layout, int j, double tipX, Vector2D end, Vector2D u, double weight, ref Vector3D gradient, ref Symmetric3 curvature)
    {
        Vector2D along = layout.Axis[j];
        Vector2D lever = end - layout.Minus[j + 1].Origin;
        gradient += JointState.ByEnds(along.Cross(u), lever.Cross(u), u.Dot(along), tipX);
        curvature.AddOuter(weight, JointState.ByEnds(-u.Dot(along), -lever.Dot(u), along.Cross(u), tipX));
    }

    /// <summary>
    /// Hull of the corners, which come in order around the ring (Graham's scan without sorting), from the farthest one
    /// on. Where the two corners of a joint all but coincide, rounding must not decide between them: they count as one,
    /// listed as the + corner.
    /// </summary>
    private int Wrap(RingModel model, RingLayout layout)
    {
        int n = _count = 2 * model.Count;
        if (_corners.Length < n) (_corners, _hull) = (new Vector2D[n], new int[n + 1]);
        double closed = Closed * model.Radius;
        int start = 1;
        for (int i = 0; i < model.Count; i++)
        {
            _corners[2 * i] = layout.Minus[i].Origin;
            _corners[(2 * i) + 1] = layout.Plus[i].Origin;
            if (_corners[(2 * i) + 1].Dot(_corners[(2 * i) + 1]) > _corners[start].Dot(_corners[start])) start = (2 * i) + 1;
        }

        int size = 0;
        for (int k = 0; k <= n; k++)
        {
            int next = (start + k) % n;
            if (next % 2 == 0 && IsClosed(next, closed)) continue;
            while (size >= 2 && IsInside(_hull[size - 2], _hull[size - 1], next)) size--;
            _hull[size++] = next;
        }

        return size - 1;
    }

    /// <summary>The corner an edge starts from; of two that count as one it is the later.</summary>
    private int From(int corner, RingModel model)
    {
        int next = (corner + 1) % (2 * model.Count);
        return corner % 2 == 1 && IsClosed(next, Closed * model.Radius) ? next : corner;
    }

    private bool IsClosed(int minusCorner, double closed)
    {
        Vector2D step = _corners[minusCorner] - _corners[(minusCorner + _count - 1) % _count];
        return step.Dot(step) < closed * closed;
    }

    private bool IsInside(int before, int corner, int after) =>
        (_corners[corner] - _corners[before]).Cross(_corners[after] - _corners[corner]) <= 0;
}
