using Ringwright.Core.Geometry;

namespace Ringwright.Bench;

/// <summary>
/// A convex solid clipped the way one would write it first: each face a list of points, cut one after another, and the
/// new face made of all points found on the plane, sorted by angle.
/// </summary>
internal sealed class PlainSolid
{
    private const double OnPlane = 1e-9;
    private readonly List<List<Vector3D>> _faces = [];

    internal static PlainSolid Of(ConvexSolid solid)
    {
        var plain = new PlainSolid();
        for (int f = 0; f < solid.FaceCount; f++)
        {
            List<Vector3D> face = [];
            foreach (int corner in solid.FaceCorners(f)) face.Add(solid.Corners[corner]);
            plain._faces.Add(face);
        }

        return plain;
    }

    internal double Volume()
    {
        Vector3D apex = _faces[0][0];
        double six = 0;
        foreach (List<Vector3D> face in _faces)
            for (int i = 2; i < face.Count; i++) six += (face[0] - apex).Dot((face[i - 1] - apex).Cross(face[i] - apex));
        return six / 6;
    }

    internal double Least(Vector3D direction) => _faces.Min(face => face.Min(direction.Dot));

    internal PlainSolid Clip(HalfSpace half)
    {
        var clipped = new PlainSolid();
        List<Vector3D> on = [];
        foreach (List<Vector3D> face in _faces)
        {
            List<Vector3D> kept = Cut(face, half, on);
            if (kept.Count >= 3 && kept.Exists(p => half.Distance(p) < -OnPlane)) clipped._faces.Add(kept);
        }

        List<Vector3D> cap = InOrder(Distinct(on), half.Normal);
        if (cap.Count >= 3) clipped._faces.Add(cap);
        return clipped;
    }

    private static List<Vector3D> Cut(List<Vector3D> face, HalfSpace half, List<Vector3D> on)
    {
        List<Vector3D> kept = [];
        for (int i = 0; i < face.Count; i++)
        {
            (Vector3D a, Vector3D b) = (face[i], face[(i + 1) % face.Count]);
            (double da, double db) = (half.Distance(a), half.Distance(b));
            if (da <= OnPlane) kept.Add(a);
            if (Math.Abs(da) <= OnPlane) on.Add(a);
            if (!((da < -OnPlane && db > OnPlane) || (da > OnPlane && db < -OnPlane))) continue;
            Vector3D crossing = a + ((da / (da - db)) * (b - a));
            kept.Add(crossing);
            on.Add(crossing);
        }

        return kept;
    }

    private static List<Vector3D> Distinct(List<Vector3D> points)
    {
        List<Vector3D> distinct = [];
        foreach (Vector3D p in points)
            if (!distinct.Exists(q => (p - q).Length < 1e-8)) distinct.Add(p);
        return distinct;
    }

    private static List<Vector3D> InOrder(List<Vector3D> points, Vector3D normal)
    {
        if (points.Count < 3) return points;
        Vector3D middle = (1.0 / points.Count) * points.Aggregate((a, b) => a + b);
        Vector3D x = (points[0] - middle).Normalized();
        Vector3D y = normal.Cross(x);
        return [.. points.OrderBy(p => Math.Atan2((p - middle).Dot(y), (p - middle).Dot(x)))];
    }
}
