namespace Ringwright.Core.Geometry;

/// <summary>
/// A convex solid with flat faces, mm. Every face keeps the exact plane it was made by, so angles never depend on
/// computed corners, and a tag whose meaning belongs to whoever made the solid. Immutable; may be empty.
/// </summary>
public sealed class ConvexSolid
{
    /// <summary>Corners nearer than this to a cutting plane count as lying on it, mm: far below any tool, far above rounding.</summary>
    public const double OnPlane = 1e-9;

    /// <summary>The solid without points.</summary>
    public static readonly ConvexSolid Empty = new([], [], [0], [], []);

    private readonly Vector3D[] _corners;
    private readonly int[] _loops;
    private readonly int[] _starts;
    private readonly HalfSpace[] _planes;
    private readonly int[] _tags;

    /// <summary>Takes the arrays as they are: <paramref name="starts"/> has one entry more than there are faces.</summary>
    internal ConvexSolid(Vector3D[] corners, int[] loops, int[] starts, HalfSpace[] planes, int[] tags)
    {
        _corners = corners;
        _loops = loops;
        _starts = starts;
        _planes = planes;
        _tags = tags;
    }

    /// <summary>Whether nothing is left.</summary>
    public bool IsEmpty => _corners.Length == 0;

    /// <summary>The corners, mm.</summary>
    public ReadOnlySpan<Vector3D> Corners => _corners;

    /// <summary>How many faces there are.</summary>
    public int FaceCount => _planes.Length;

    /// <summary>The planes of all faces, outward.</summary>
    public ReadOnlySpan<HalfSpace> Planes => _planes;

    /// <summary>The tags of all faces.</summary>
    public ReadOnlySpan<int> Tags => _tags;

    /// <summary>Its numbers.</summary>
    internal SolidView View => new(_corners, _loops, _starts, _planes, _tags);

    /// <summary>Volume, mm³: the divergence theorem, summed as tetrahedra about the first corner to keep digits.</summary>
    public double Volume
    {
        get
        {
            double six = 0;
            for (int face = 0; face < FaceCount; face++) six += SixTetrahedra(FaceCorners(face));
            return six / 6;
        }
    }

    /// <summary>The corners of a face as indices into <see cref="Corners"/>, counter-clockwise seen from outside.</summary>
    public ReadOnlySpan<int> FaceCorners(int face) => _loops.AsSpan(_starts[face], _starts[face + 1] - _starts[face]);

    /// <summary>Whether a face with this tag is left.</summary>
    public bool HasFace(int tag) => Array.IndexOf(_tags, tag) >= 0;

    /// <summary>
    /// What of this solid lies in <paramref name="half"/>; the new face gets <paramref name="tag"/>. Exact up to
    /// rounding: only new corners are computed, all others are kept bit for bit. Parts without volume vanish.
    /// </summary>
    public ConvexSolid Clip(HalfSpace half, int tag) => SolidClipper.Clip(this, half, tag);

    /// <summary>What of this solid lies in all of <paramref name="halves"/>: the same as clipping by one after another, but faster, in rooms that are used again and again.</summary>
    internal ConvexSolid ClipAll(ReadOnlySpan<HalfSpace> halves, int tag, ClipRooms rooms) => SolidClipper.ClipAll(this, halves, tag, rooms);

    /// <summary>Least and greatest reach along <paramref name="direction"/>, mm. Not defined for the empty solid.</summary>
    public (double Least, double Greatest) Extent(Vector3D direction)
    {
        double least = double.PositiveInfinity;
        double greatest = double.NegativeInfinity;
        foreach (Vector3D corner in _corners)
        {
            double reach = direction.Dot(corner);
            if (reach < least) least = reach;
            if (reach > greatest) greatest = reach;
        }

        return (least, greatest);
    }

    /// <summary>
    /// Least and greatest reach along <paramref name="direction"/> of the face made by exactly <paramref name="plane"/>,
    /// mm; both zero when there is none.
    /// </summary>
    public (double Least, double Greatest) FaceExtent(HalfSpace plane, Vector3D direction)
    {
        int face = Array.IndexOf(_planes, plane);
        if (face < 0) return default;
        double least = double.PositiveInfinity;
        double greatest = double.NegativeInfinity;
        foreach (int corner in FaceCorners(face))
        {
            double reach = direction.Dot(_corners[corner]);
            least = Math.Min(least, reach);
            greatest = Math.Max(greatest, reach);
        }

        return (least, greatest);
    }

    /// <summary>The same solid in the coordinates of <paramref name="frame"/>, which is given in this solid's coordinates.</summary>
    public ConvexSolid ToLocal(Frame3D frame)
    {
        var corners = new Vector3D[_corners.Length];
        for (int i = 0; i < corners.Length; i++) corners[i] = frame.ToLocal(_corners[i]);
        var planes = new HalfSpace[_planes.Length];
        for (int i = 0; i < planes.Length; i++) planes[i] = frame.ToLocal(_planes[i]);
        return new(corners, _loops, _starts, planes, _tags);
    }

    /// <summary>The same solid, given in the coordinates of <paramref name="frame"/>, in the frame's outer coordinates.</summary>
    public ConvexSolid ToOuter(Frame3D frame) => ToLocal(frame.Inverse);

    /// <summary>
    /// The cross-section at level <paramref name="z"/> mm, from the exact planes of the faces (so it is as good on the
    /// bottom and top faces as between them). Empty outside the solid.
    /// </summary>
    public ConvexPolygon Section(double z)
    {
        if (IsEmpty) return ConvexPolygon.Empty;
        (double left, double right) = Extent(new(1, 0, 0));
        (double front, double back) = Extent(new(0, 1, 0));
        var section = ConvexPolygon.Rectangle(left - 1, front - 1, right - left + 2, back - front + 2);
        foreach (HalfSpace plane in _planes)
        {
            if (!IsLevel(plane)) section = section.Clip(plane.Trace(z));
            else if ((plane.Normal.Z * z) - plane.Offset > OnPlane) return ConvexPolygon.Empty;
        }

        return section;
    }

    /// <summary>
    /// The length of the line in which the boundary of <paramref name="plane"/> crosses the solid at level
    /// <paramref name="z"/>, mm; zero where it does not. Faces tagged <paramref name="ignoring"/> do not count.
    /// </summary>
    public double Chord(HalfSpace plane, double z, int ignoring)
    {
        HalfPlane trace = plane.Trace(z);
        Vector2D along = trace.Normal.Perpendicular();
        Vector2D foot = trace.Offset * trace.Normal;
        double from = double.NegativeInfinity;
        double to = double.PositiveInfinity;
        for (int i = 0; i < _planes.Length; i++)
        {
            if (_tags[i] == ignoring) continue;
            if (!Narrow(_planes[i], z, foot, along, ref from, ref to)) return 0;
        }

        return IsEmpty ? 0 : Math.Max(0, to - from);
    }

    private static bool Narrow(HalfSpace plane, double z, Vector2D foot, Vector2D along, ref double from, ref double to)
    {
        double slope = (plane.Normal.X * along.X) + (plane.Normal.Y * along.Y);
        double over = plane.Distance(new(foot.X, foot.Y, z));
        if (IsLevel(plane) || Math.Abs(slope) < 1e-14) return over <= OnPlane;
        if (slope > 0) to = Math.Min(to, -over / slope);
        else from = Math.Max(from, -over / slope);
        return true;
    }

    // A face level but for rounding has no trace worth the name.
    private static bool IsLevel(HalfSpace plane) =>
        (plane.Normal.X * plane.Normal.X) + (plane.Normal.Y * plane.Normal.Y) < 1e-18;

    private double SixTetrahedra(ReadOnlySpan<int> loop)
    {
        double six = 0;
        Vector3D apex = _corners[0];
        Vector3D first = _corners[loop[0]] - apex;
        for (int i = 2; i < loop.Length; i++)
            six += first.Dot((_corners[loop[i - 1]] - apex).Cross(_corners[loop[i]] - apex));
        return six;
    }
}
