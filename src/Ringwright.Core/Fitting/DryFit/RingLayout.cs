using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Lays the wedges out one after another, joint by joint, and tells by how much the last one misses the first.
/// The first wedge's - frame lies where it would lie in the even ring about the origin.
/// </summary>
internal sealed class RingLayout
{
    private WedgePose[] _minus = [];
    private WedgePose[] _plus = [];
    private Vector2D[] _axis = [];

    /// <summary>The + joint frame of each wedge on the table.</summary>
    public ReadOnlySpan<WedgePose> Plus => _plus;

    /// <summary>The - joint frame of each wedge on the table; one more than there are wedges, the last should be the first again.</summary>
    public ReadOnlySpan<WedgePose> Minus => _minus;

    /// <summary>Unit vector along the face of each wedge's + frame.</summary>
    public ReadOnlySpan<Vector2D> Axis => _axis;

    /// <summary>How far the chain of wedges misses its own start: x, y in mm, and angle in radians.</summary>
    public (double X, double Y, double Angle) Miss { get; private set; }

    /// <summary>Places all wedges for the given joint states.</summary>
    public void Place(RingModel model, ReadOnlySpan<JointState> states)
    {
        int n = model.Count;
        if (_plus.Length < n) (_minus, _plus, _axis) = (new WedgePose[n + 1], new WedgePose[n], new Vector2D[n]);
        _minus[0] = new(Vector2D.Polar(model.Radius, -Math.PI / n), -Math.PI / n);
        for (int i = 0; i < n; i++)
        {
            WedgePose plus = _minus[i].Then(model.Across(i));
            Vector2D axis = Vector2D.AtAngle(plus.Angle);
            JointState z = states[i];
            _plus[i] = plus;
            _axis[i] = axis;
            _minus[i + 1] = new(plus.Origin + (z.Along * axis) + (z.Across * axis.Perpendicular()), plus.Angle + z.Turn);
        }

        Vector2D off = _minus[n].Origin - _minus[0].Origin;
        Miss = (off.X, off.Y, _minus[n].Angle - _minus[0].Angle - (2 * Math.PI));
    }
}
