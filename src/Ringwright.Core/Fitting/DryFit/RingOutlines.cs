using System.Collections.Immutable;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>The wedges' whole outlines at both levels, on the table, so that wedges that are not neighbours can be kept apart. Arrays are kept between rings.</summary>
internal sealed class RingOutlines
{
    private RingModel _model = null!;
    private int[] _start = [];
    private Vector2D[] _local = [];
    private Vector2D[] _placed = [];
    private bool[] _upright = [];
    private double[] _begin = [];
    private double[] _end = [];

    /// <summary>Takes in the outlines of a ring.</summary>
    public void Load(RingModel model, ReadOnlySpan<FitWedge> wedges)
    {
        _model = model;
        int n = wedges.Length;
        if (_upright.Length < n) (_start, _upright, _begin, _end) = (new int[(2 * n) + 1], new bool[n], new double[n + 2], new double[n + 2]);
        for (int i = 0; i < n; i++)
        {
            _upright[i] = wedges[i].IsUpright;
            WedgePose seen = model.Minus(i).Frame.Inverse();
            _start[(2 * i) + 1] = Add(wedges[i].Bottom.Vertices, seen, _start[2 * i]);
            _start[(2 * i) + 2] = wedges[i].IsUpright ? _start[(2 * i) + 1] : Add(wedges[i].Top.Vertices, seen, _start[(2 * i) + 1]);
        }
    }

    /// <summary>The corners of a wedge's section on the table, counter-clockwise, mm.</summary>
    public ReadOnlySpan<Vector2D> Of(int wedge, bool top)
    {
        int section = (2 * wedge) + (top && !_upright[wedge] ? 1 : 0);
        return _placed.AsSpan(_start[section].._start[section + 1]);
    }

    /// <summary>Whether two wedges have to be asked at the top as well.</summary>
    public bool HasTop(int a, int b) => !(_upright[a] && _upright[b]);

    /// <summary>Lays the outlines where the wedges lie.</summary>
    public void Place(RingLayout layout)
    {
        for (int i = 0; i < _model.Count; i++)
        {
            Vector2D origin = layout.Minus[i].Origin;
            Vector2D x = Vector2D.AtAngle(layout.Minus[i].Angle);
            for (int p = _start[2 * i]; p < _start[(2 * i) + 2]; p++)
                _placed[p] = origin + (_local[p].X * x) + (_local[p].Y * x.Perpendicular());
        }
    }

    /// <summary>
    /// Whether the ring clearly has an opening in the middle: seen from the mean of its outer corners no wedge reaches
    /// back past that point, and no wedge's angle of view meets that of the next but one. Then only neighbours can touch.
    /// </summary>
    public bool HasOpening(RingLayout layout)
    {
        int n = _model.Count;
        Vector2D centre = Vector2D.Zero;
        for (int i = 0; i < n; i++) centre += (0.5 / n) * (layout.Minus[i].Origin + layout.Plus[i].Origin);
        for (int i = 0; i < n; i++)
            if (!SeeFrom(centre, i, (layout.Minus[i].Angle + layout.Plus[i].Angle) / 2)) return false;
        for (int k = 0; k < 2; k++) (_begin[n + k], _end[n + k]) = (_begin[k] + (2 * Math.PI), _end[k] + (2 * Math.PI));
        for (int i = 0; i < n; i++)
            if (_end[i] > _begin[i + 2] || _begin[i] > _begin[i + 1]) return false;
        return true;
    }

    private bool SeeFrom(Vector2D centre, int wedge, double middle)
    {
        Vector2D ahead = Vector2D.AtAngle(middle);
        (double least, double most) = (double.PositiveInfinity, double.NegativeInfinity);
        for (int p = _start[2 * wedge]; p < _start[(2 * wedge) + 2]; p++)
        {
            Vector2D seen = _placed[p] - centre;
            double depth = seen.Dot(ahead);
            if (depth <= 0) return false;
            double slope = ahead.Cross(seen) / depth;
            (least, most) = (Math.Min(least, slope), Math.Max(most, slope));
        }

        (_begin[wedge], _end[wedge]) = (middle + Math.Atan(least), middle + Math.Atan(most));
        return true;
    }

    private int Add(ImmutableArray<Vector2D> corners, WedgePose seen, int from)
    {
        int to = from + corners.Length;
        if (_local.Length < to)
        {
            Array.Resize(ref _local, 2 * to);
            Array.Resize(ref _placed, 2 * to);
        }

        (double sin, double cos) = Math.SinCos(seen.Angle);
        for (int k = 0; k < corners.Length; k++)
        {
            Vector2D p = corners[k];
            _local[from + k] = seen.Origin + new Vector2D((cos * p.X) - (sin * p.Y), (sin * p.X) + (cos * p.Y));
        }

        return to;
    }
}
