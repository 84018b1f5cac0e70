using System.Collections.Immutable;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Where the points and edges of one face at one level stand in the model's pool; openings are read between the ends of
/// <see cref="ReadEdges"/> edges from <see cref="ReadStart"/> on.
/// </summary>
internal readonly record struct FaceSpan(int Start, int Edges, int ReadStart, int ReadEdges);

/// <summary>One side of a wedge: its joint frame (in the wedge's frame) and its face at the bottom and top in that joint frame.</summary>
internal readonly record struct FaceSide(WedgePose Frame, FaceSpan Bottom, FaceSpan Top);

/// <summary>
/// The ring's shapes, prepared for the solver. Each wedge has a joint frame on either side: origin at the rim corner
/// that carries the band (mid height), x along the face from tip to rim, y across the joint counter-clockwise.
/// A joint is closed and flush when the two frames that meet there coincide. Arrays are kept between rings.
/// </summary>
internal sealed class RingModel
{
    private FaceSide[] _plus = [];
    private FaceSide[] _minus = [];
    private WedgePose[] _across = [];
    private bool[] _upright = [];
    private double[] _tipX = [];
    private Vector2D[] _points = new Vector2D[256];
    private Vector2D[] _normals = new Vector2D[256];
    private int _used;

    /// <summary>Number of wedges, and of joints; joint i lies between wedge i and wedge i + 1.</summary>
    public int Count { get; private set; }

    /// <summary>Face points, tip to rim, in their joint frame.</summary>
    public ReadOnlySpan<Vector2D> Points => _points;

    /// <summary>Unit normals of the face edges, pointing across the joint counter-clockwise; same index as the edge's first point.</summary>
    public ReadOnlySpan<Vector2D> Normals => _normals;

    /// <summary>Mean outer edge (between the band corners), mm.</summary>
    public double MeanRim { get; private set; }

    /// <summary>Radius of the band corners in the even ring of this mean outer edge, mm.</summary>
    public double Radius => MeanRim / (2 * Math.Sin(Math.PI / Count));

    /// <summary>Sum of the wedge angles at mid height, radians.</summary>
    public double AngleSum { get; private set; }

    /// <summary>
    /// How far from closed and even the ring is, mm: the closing error's share at a joint, plus the spread of wedge angles
    /// over the depth, plus the spread of the outer edges; at least a thousandth of the outer edge.
    /// </summary>
    public double Unevenness { get; private set; }

    /// <summary>The +y side of a wedge.</summary>
    public ref readonly FaceSide Plus(int wedge) => ref _plus[wedge];

    /// <summary>The -y side of a wedge.</summary>
    public ref readonly FaceSide Minus(int wedge) => ref _minus[wedge];

    /// <summary>The + frame of a wedge seen from its - frame; its angle is the wedge angle.</summary>
    public ref readonly WedgePose Across(int wedge) => ref _across[wedge];

    /// <summary>Where on a joint's face line (from the rim corner, negative, mm) the shorter of its two faces ends towards the centre.</summary>
    public double TipX(int joint) => _tipX[joint];

    /// <summary>Whether both wedges of a joint are upright, so that one level tells all.</summary>
    public bool IsUpright(int joint) => _upright[joint] && _upright[Next(joint)];

    /// <summary>The wedge after <paramref name="wedge"/>.</summary>
    public int Next(int wedge) => wedge + 1 == Count ? 0 : wedge + 1;

    /// <summary>Takes in a ring.</summary>
    /// <exception cref="BadInputException">Fewer than three wedges, or one without two faces.</exception>
    public void Load(ReadOnlySpan<FitWedge> wedges)
    {
        if (wedges.Length < 3)
            throw new BadInputException("Dry fit", $"{wedges.Length} wedges cannot close a ring", "give at least 3");
        Count = wedges.Length;
        if (_plus.Length < Count)
        {
            (_plus, _minus, _across) = (new FaceSide[Count], new FaceSide[Count], new WedgePose[Count]);
            (_upright, _tipX) = (new bool[Count], new double[Count]);
        }

        _used = 0;
        MeanRim = 0;
        AngleSum = 0;
        for (int i = 0; i < Count; i++) LoadWedge(i, wedges[i]);
        for (int j = 0; j < Count; j++) _tipX[j] = Math.Max(TipEnd(_plus[j].Bottom), TipEnd(_minus[Next(j)].Bottom));
        Unevenness = Spread();
    }

    private double Spread()
    {
        double depth = 0;
        double angles = 0;
        double rims = 0;
        for (int i = 0; i < Count; i++)
        {
            depth -= _tipX[i] / Count;
            angles += Math.Pow(_across[i].Angle - (AngleSum / Count), 2) / Count;
            rims += Math.Pow(_across[i].Origin.Length - MeanRim, 2) / Count;
        }

        double share = Math.Abs((2 * Math.PI) - AngleSum) / Count;
        return Math.Max(1e-3 * MeanRim, (depth * (share + Math.Sqrt(angles))) + Math.Sqrt(rims));
    }

    private void LoadWedge(int i, FitWedge wedge)
    {
        _plus[i] = LoadSide(i, wedge, plus: true);
        _minus[i] = LoadSide(i, wedge, plus: false);
        _upright[i] = wedge.IsUpright;
        _across[i] = _minus[i].Frame.Inverse().Then(_plus[i].Frame);
        MeanRim += _across[i].Origin.Length / Count;
        AngleSum += _across[i].Angle;
    }

    private FaceSide LoadSide(int i, FitWedge wedge, bool plus)
    {
        ImmutableArray<Vector2D> bottom = wedge.Bottom.Vertices;
        ImmutableArray<Vector2D> top = wedge.Top.Vertices;
        int mainBottom = FaceChain.MainEdge(bottom, plus);
        int mainTop = wedge.IsUpright ? mainBottom : FaceChain.MainEdge(top, plus);
        if (mainBottom < 0 || mainTop < 0)
            throw new BadInputException($"Wedge {i + 1}", $"no face looks towards {(plus ? "+y" : "-y")}", "give sections with the rim towards +x and a face on either side");

        Vector2D face = FaceChain.Chord(bottom, plus) + FaceChain.Chord(top, plus);
        double angle = Math.Atan2(face.Y, face.X);
        var frame = new WedgePose(0.5 * (Farthest(bottom, face) + Farthest(top, face)), angle);
        FaceSpan low = LoadFace(bottom, mainBottom, frame, plus);
        return new(frame, low, wedge.IsUpright ? low : LoadFace(top, mainTop, frame, plus));
    }

    private FaceSpan LoadFace(ImmutableArray<Vector2D> corners, int main, WedgePose frame, bool plus)
    {
        (int first, int count) = FaceChain.Extent(corners, main, FaceChain.Touching);
        (int readFirst, int readCount) = FaceChain.Extent(corners, main, FaceChain.Reading);
        int before = (readFirst - first + corners.Length) % corners.Length;
        var span = new FaceSpan(_used, count, _used + (plus ? count - before - readCount : before), readCount);
        Reserve(count + 1);
        for (int k = 0; k <= count; k++)
        {
            Vector2D corner = corners[(first + (plus ? count - k : k)) % corners.Length];
            _points[_used + k] = (corner - frame.Origin).Rotated(-frame.Angle);
        }

        for (int k = 0; k < count; k++)
        {
            Vector2D edge = _points[_used + k + 1] - _points[_used + k];
            _normals[_used + k] = (1 / edge.Length) * edge.Perpendicular();
        }

        _used += count + 1;
        return span;
    }

    private double TipEnd(FaceSpan face) => _points[face.ReadStart].X;

    private void Reserve(int more)
    {
        if (_used + more <= _points.Length) return;
        Array.Resize(ref _points, 2 * (_used + more));
        Array.Resize(ref _normals, _points.Length);
    }

    private static Vector2D Farthest(ImmutableArray<Vector2D> corners, Vector2D direction)
    {
        Vector2D best = corners[0];
        foreach (Vector2D p in corners)
            if (p.Dot(direction) > best.Dot(direction)) best = p;
        return best;
    }
}
