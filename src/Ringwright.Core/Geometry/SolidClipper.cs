namespace Ringwright.Core.Geometry;

/// <summary>
/// Clips a convex solid by a half-space on flat arrays: every face loop is cut, a corner on a crossed edge is made
/// once and shared by both faces, and the open edges that remain are linked to the new face.
/// </summary>
internal ref struct SolidClipper
{
    private const int SmallEnough = 64;

    private readonly ConvexSolid _solid;
    private readonly Span<double> _distances;
    private readonly Span<int> _newIndex;
    private readonly Span<Vector3D> _corners;
    private readonly Span<bool> _on;
    private readonly Span<(int Low, int High, int Corner)> _crossed;
    private readonly Span<(int From, int To)> _open;
    private readonly Span<int> _loops;
    private readonly Span<int> _starts;
    private readonly Span<HalfSpace> _planes;
    private readonly Span<int> _tags;
    private int _cornerCount;
    private int _crossedCount;
    private int _openCount;
    private int _loopCount;
    private int _faceCount;

    private SolidClipper(ConvexSolid solid, Span<double> distances, Span<Vector3D> corners, Span<bool> on, Span<int> whole,
        Span<HalfSpace> planes, Span<(int Low, int High, int Corner)> crossed, Span<(int From, int To)> open)
    {
        _solid = solid;
        _distances = distances;
        _corners = corners;
        _on = on;
        _planes = planes;
        _crossed = crossed;
        _open = open;
        int faces = solid.FaceCount;
        _newIndex = whole[..solid.Corners.Length];
        _newIndex.Fill(-1);
        _starts = whole.Slice(_newIndex.Length, faces + 2);
        _tags = whole.Slice(_newIndex.Length + faces + 2, faces + 1);
        _loops = whole[(_newIndex.Length + (2 * faces) + 3)..];
    }

    /// <summary>What of <paramref name="solid"/> lies in <paramref name="half"/>.</summary>
    public static ConvexSolid Clip(ConvexSolid solid, HalfSpace half, int tag)
    {
        int corners = solid.Corners.Length;
        Span<double> distances = corners <= SmallEnough ? stackalloc double[corners] : new double[corners];
        (bool inside, bool outside) = Measure(solid, half, distances);
        if (!outside) return solid;
        if (!inside) return ConvexSolid.Empty;

        int edges = solid.Loops.Length;
        int faces = solid.FaceCount;
        // A convex loop crosses a plane at most twice, so no face gains more than one corner; the cap has at most two a face.
        int most = corners + (2 * faces);
        int whole = corners + (2 * faces) + 3 + edges + (4 * faces);
        bool small = edges <= 4 * SmallEnough;
        Span<Vector3D> kept = small ? stackalloc Vector3D[most] : new Vector3D[most];
        Span<bool> on = small ? stackalloc bool[most] : new bool[most];
        Span<int> indices = small ? stackalloc int[whole] : new int[whole];
        Span<HalfSpace> planes = small ? stackalloc HalfSpace[faces + 1] : new HalfSpace[faces + 1];
        Span<(int, int, int)> crossed = small ? stackalloc (int, int, int)[2 * faces] : new (int, int, int)[2 * faces];
        Span<(int, int)> open = small ? stackalloc (int, int)[2 * edges] : new (int, int)[2 * edges];
        var clipper = new SolidClipper(solid, distances, kept, on, indices, planes, crossed, open);
        for (int face = 0; face < solid.FaceCount; face++) clipper.CutFace(face);
        clipper.Cap(half, tag);
        return clipper.Solid();
    }

    private static (bool Inside, bool Outside) Measure(ConvexSolid solid, HalfSpace half, Span<double> distances)
    {
        bool inside = false;
        bool outside = false;
        ReadOnlySpan<Vector3D> corners = solid.Corners;
        for (int i = 0; i < corners.Length; i++)
        {
            double distance = half.Distance(corners[i]);
            if (Math.Abs(distance) <= ConvexSolid.OnPlane) distance = 0;
            inside |= distance < 0;
            outside |= distance > 0;
            distances[i] = distance;
        }

        return (inside, outside);
    }

    private void CutFace(int face)
    {
        ReadOnlySpan<int> loop = _solid.FaceCorners(face);
        (bool inside, bool reached) = Sides(loop);
        if (!inside) return;
        if (reached) CutLoop(loop);
        else foreach (int corner in loop) _loops[_loopCount++] = Kept(corner);
        Close(_solid.Planes[face], _solid.Tags[face]);
    }

    private void CutLoop(ReadOnlySpan<int> loop)
    {
        int start = _loopCount;
        for (int i = 0; i < loop.Length; i++)
        {
            int a = loop[i];
            int b = loop[i + 1 == loop.Length ? 0 : i + 1];
            double da = _distances[a];
            if (da <= 0) _loops[_loopCount++] = Kept(a);
            if (da * _distances[b] < 0) _loops[_loopCount++] = Crossing(a, b);
        }

        NoteOpenEdges(start);
    }

    // Whether the face has a corner inside, and one on the cutting plane or beyond.
    private readonly (bool Inside, bool Reached) Sides(ReadOnlySpan<int> loop)
    {
        bool inside = false;
        bool reached = false;
        foreach (int corner in loop)
        {
            inside |= _distances[corner] < 0;
            reached |= _distances[corner] >= 0;
        }

        return (inside, reached);
    }

    private int Kept(int corner)
    {
        if (_newIndex[corner] < 0) _newIndex[corner] = AddCorner(_solid.Corners[corner], _distances[corner] == 0);
        return _newIndex[corner];
    }

    private int Crossing(int a, int b)
    {
        int low = Math.Min(a, b);
        int high = Math.Max(a, b);
        for (int i = 0; i < _crossedCount; i++)
            if (_crossed[i].Low == low && _crossed[i].High == high) return _crossed[i].Corner;

        Vector3D from = _solid.Corners[low];
        double share = _distances[low] / (_distances[low] - _distances[high]);
        int corner = AddCorner(from + (share * (_solid.Corners[high] - from)), true);
        _crossed[_crossedCount++] = (low, high, corner);
        return corner;
    }

    private int AddCorner(Vector3D point, bool on)
    {
        _corners[_cornerCount] = point;
        _on[_cornerCount] = on;
        return _cornerCount++;
    }

    // An edge in the cutting plane belongs to the cap unless the face on its other side was kept too.
    private void NoteOpenEdges(int start)
    {
        for (int i = start; i < _loopCount; i++)
        {
            int from = _loops[i];
            int to = _loops[i + 1 == _loopCount ? start : i + 1];
            if (_on[from] && _on[to] && !Paired(from, to)) _open[_openCount++] = (to, from);
        }
    }

    private bool Paired(int from, int to)
    {
        for (int i = 0; i < _openCount; i++)
        {
            if (_open[i].From != from || _open[i].To != to) continue;
            _open[i] = _open[--_openCount];
            return true;
        }

        return false;
    }

    private void Cap(HalfSpace half, int tag)
    {
        if (_openCount < 3) return;
        int first = _open[0].From;
        int corner = first;
        for (int i = 0; i < _openCount; i++)
        {
            _loops[_loopCount++] = corner;
            corner = Next(corner);
            if (corner == first) break;
        }

        Close(half, tag);
    }

    private readonly int Next(int corner)
    {
        for (int i = 0; i < _openCount; i++)
            if (_open[i].From == corner) return _open[i].To;
        return corner;
    }

    private void Close(HalfSpace plane, int tag)
    {
        _planes[_faceCount] = plane;
        _tags[_faceCount] = tag;
        _starts[++_faceCount] = _loopCount;
    }

    private readonly ConvexSolid Solid() => new(
        _corners[.._cornerCount].ToArray(),
        _loops[.._loopCount].ToArray(),
        _starts[..(_faceCount + 1)].ToArray(),
        _planes[.._faceCount].ToArray(),
        _tags[.._faceCount].ToArray());
}
