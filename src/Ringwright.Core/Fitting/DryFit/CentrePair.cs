using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Two wedges that are not neighbours, kept apart along an edge of either: their clearance with its slack (kept positive)
/// and contact force (in units of the band's tension), and the steps of both.
/// </summary>
internal struct CentrePair
{
    public WedgePair Wedges;
    public double Slack;
    public double Force;
    public double SlackStep;
    public double ForceStep;
    private Separation _seen;
    private bool _edgeIsLow;

    /// <summary>Distance of the two wedges, mm; negative when they overlap.</summary>
    public readonly double Clearance => _seen.Distance;

    /// <summary>Difference between the clearance and its slack, mm.</summary>
    public readonly double Mismatch => _seen.Distance - Slack;

    /// <summary>Sees the two outlines as they lie now, along the edge that sets them farthest apart.</summary>
    public void See(ReadOnlySpan<Vector2D> low, ReadOnlySpan<Vector2D> high)
    {
        Separation ofLow = Separation.Best(low, high);
        Separation ofHigh = Separation.Best(high, low);
        _edgeIsLow = ofLow.Distance >= ofHigh.Distance;
        _seen = _edgeIsLow ? ofLow : ofHigh;
    }

    /// <summary>Sees them along the same edge as before.</summary>
    public void SeeAgain(ReadOnlySpan<Vector2D> low, ReadOnlySpan<Vector2D> high) =>
        _seen = _edgeIsLow ? Separation.At(low, _seen.Edge, high) : Separation.At(high, _seen.Edge, low);

    /// <summary>
    /// How the clearance changes with a joint between the two wedges, by the ends of the joint. The joint turns all that
    /// follows about <paramref name="pivot"/>: the higher wedge's corner, or its edge under the lower wedge's corner.
    /// </summary>
    public readonly Vector3D Gradient(Vector2D axis, Vector2D pivot, double tipX)
    {
        Vector2D away = _edgeIsLow ? _seen.Normal : -_seen.Normal;
        return JointState.ByEnds(away.Dot(axis.Perpendicular()), (_seen.Corner - pivot).Cross(away), away.Dot(axis), tipX);
    }
}
