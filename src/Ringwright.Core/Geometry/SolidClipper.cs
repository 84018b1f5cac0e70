namespace Ringwright.Core.Geometry;

/// <summary>
/// Clips a convex solid by a half-space on flat arrays: every face loop is cut, a corner on a crossed edge is made
/// once and shared by both faces, and the open edges that remain are linked to the new face.
/// </summary>
internal ref struct SolidClipper
{
    private const int SmallEnough = 256;
    private const int NotYet = -1; // below it: a corner in the plane that is kept

    private readonly SolidView _solid;
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

    public SolidClipper(SolidView solid, Span<double> distances, Span<Vector3D> corners, Span<bool> on, Span<int> indices,
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
        _newIndex = indices[..solid.Corners.Length];
        _starts = indices.Slice(_newIndex.Length, faces + 2);
        _tags = indices.Slice(_newIndex.Length + faces + 2, faces + 1);
        _loops = indices[(_newIndex.Length + (2 * faces) + 3)..];
    }

    /// <summary>What of <paramref name="solid"/> lies in <paramref name="half"/>.</summary>
    public static ConvexSolid Clip(ConvexSolid solid, HalfSpace half, int tag)
    {
        SolidView view = solid.View;
        int corners = CornersFor(view);
        int indices = IndicesFor(view);
        int faces = view.FaceCount;
        int edges = view.Loops.Length;
        bool small = edges <= SmallEnough;
        var clipper = new SolidClipper(
            view,
            small ? stackalloc double[view.Corners.Length] : new double[view.Corners.Length],
            small ? stackalloc Vector3D[corners] : new Vector3D[corners],
            small ? stackalloc bool[corners] : new bool[corners],
            small ? stackalloc int[indices] : new int[indices],
            small ? stackalloc HalfSpace[faces + 1] : new HalfSpace[faces + 1],
            small ? stackalloc (int, int, int)[2 * faces] : new (int, int, int)[2 * faces],
            small ? stackalloc (int, int)[2 * edges] : new (int, int)[2 * edges]);
        return clipper.Clip(half, tag) switch
        {
            ClipResult.Nothing => ConvexSolid.Empty,
            ClipResult.All => solid,
            _ => clipper.Result.Copied(),
        };
    }

    /// <summary>What of <paramref name="solid"/> lies in all of <paramref name="halves"/>, clipped one after another without a solid in between.</summary>
    public static ConvexSolid ClipAll(ConvexSolid solid, ReadOnlySpan<HalfSpace> halves, int tag, ClipRooms rooms)
    {
        ClipRoom room = rooms.First;
        ClipRoom other = rooms.Second;
        SolidView rest = solid.View;
        bool clipped = false;
        foreach (HalfSpace half in halves)
        {
            SolidClipper clipper = room.Clipper(rest);
            ClipResult result = clipper.Clip(half, tag);
            if (result == ClipResult.Nothing) return ConvexSolid.Empty;
            if (result == ClipResult.All) continue;
            rest = clipper.Result;
            clipped = true;
            (room, other) = (other, room);
        }

        return clipped ? rest.Copied() : solid;
    }

    /// <summary>Corners for which a clip needs room: a convex loop crosses a plane at most twice, so no face gains more than two.</summary>
    public static int CornersFor(SolidView solid) => solid.Corners.Length + (2 * solid.FaceCount);

    /// <summary>Indices for which a clip needs room: new numbers of corners, starts, tags, and loops with a cap of at most two corners a face.</summary>
    public static int IndicesFor(SolidView solid) =>
        solid.Corners.Length + (2 * solid.FaceCount) + 3 + solid.Loops.Length + (4 * solid.FaceCount);

    /// <summary>What is left, after a clip that left a part.</summary>
    public readonly SolidView Result => new(
        _corners[.._cornerCount], _loops[.._loopCount], _starts[..(_faceCount + 1)], _planes[.._faceCount], _tags[.._faceCount]);

    /// <summary>Clips, once.</summary>
    public ClipResult Clip(HalfSpace half, int tag)
    {
        (bool inside, bool outside) = Measure(half);
        if (!outside) return ClipResult.All;
        if (!inside) return ClipResult.Nothing;
        KeepInside();
        _starts[0] = 0;
        for (int face = 0; face < _solid.FaceCount; face++) CutFace(face);
        Cap(half, tag);
        return ClipResult.Part;
    }

    private readonly (bool Inside, bool Outside) Measure(HalfSpace half)
    {
        bool inside = false;
        bool outside = false;
        ReadOnlySpan<Vector3D> corners = _solid.Corners;
        for (int i = 0; i < corners.Length; i++)
        {
            double distance = half.Distance(corners[i]);
            if (Math.Abs(distance) <= ConvexSolid.OnPlane) distance = 0;
            inside |= distance < 0;
            outside |= distance > 0;
            _distances[i] = distance;
        }

        return (inside, outside);
    }

    // Most corners lie inside and keep their order; one in the plane is kept by the first face that needs it.
    private void KeepInside()
    {
        for (int i = 0; i < _distances.Length; i++) _newIndex[i] = _distances[i] < 0 ? AddCorner(_solid.Corners[i], false) : NotYet;
    }

    private void CutFace(int face)
    {
        ReadOnlySpan<int> loop = _solid.FaceCorners(face);
        if (!KeepLoop(loop))
        {
            if (!IsPartlyInside(loop)) return;
            CutLoop(loop);
        }

        Close(_solid.Planes[face], _solid.Tags[face]);
    }

    // Keeps a face that the cutting plane does not reach, as most are; otherwise what was noted of it is forgotten.
    private bool KeepLoop(ReadOnlySpan<int> loop)
    {
        int count = _loopCount;
        foreach (int corner in loop)
        {
            int kept = _newIndex[corner];
            if (kept < 0) return false;
            _loops[count++] = kept;
        }

        _loopCount = count;
        return true;
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

    private readonly bool IsPartlyInside(ReadOnlySpan<int> loop)
    {
        foreach (int corner in loop)
            if (_newIndex[corner] >= 0) return true;
        return false;
    }

    private int Kept(int corner)
    {
        ref int index = ref _newIndex[corner];
        if (index == NotYet) index = ~AddCorner(_solid.Corners[corner], true) - 1;
        return index >= 0 ? index : ~(index + 1);
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
}

/// <summary>What a clip leaves of a solid.</summary>
internal enum ClipResult
{
    /// <summary>Nothing with a volume.</summary>
    Nothing,

    /// <summary>All of it: nothing was cut.</summary>
    All,

    /// <summary>A part.</summary>
    Part,
}
