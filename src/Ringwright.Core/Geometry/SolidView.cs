namespace Ringwright.Core.Geometry;

/// <summary>A convex solid whose numbers lie in somebody else's memory; see <see cref="ConvexSolid"/>.</summary>
internal readonly ref struct SolidView(
    ReadOnlySpan<Vector3D> corners, ReadOnlySpan<int> loops, ReadOnlySpan<int> starts, ReadOnlySpan<HalfSpace> planes, ReadOnlySpan<int> tags)
{
    public ReadOnlySpan<Vector3D> Corners { get; } = corners;

    public ReadOnlySpan<int> Loops { get; } = loops;

    public ReadOnlySpan<int> Starts { get; } = starts;

    public ReadOnlySpan<HalfSpace> Planes { get; } = planes;

    public ReadOnlySpan<int> Tags { get; } = tags;

    public int FaceCount => Planes.Length;

    public ReadOnlySpan<int> FaceCorners(int face) => Loops[Starts[face]..Starts[face + 1]];

    public ConvexSolid Copied() => new(Corners.ToArray(), Loops.ToArray(), Starts.ToArray(), Planes.ToArray(), Tags.ToArray());
}
