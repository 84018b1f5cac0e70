namespace Ringwright.Core.Geometry;

/// <summary>Room for one solid made by a clip, with what the clip itself needs; used again and again, it grows when needed.</summary>
internal sealed class ClipRoom
{
    private double[] _distances = [];
    private Vector3D[] _corners = [];
    private bool[] _on = [];
    private int[] _indices = [];
    private HalfSpace[] _planes = [];
    private (int Low, int High, int Corner)[] _crossed = [];
    private (int From, int To)[] _open = [];

    public SolidClipper Clipper(SolidView solid) => new(
        solid,
        Of(ref _distances, solid.Corners.Length),
        Of(ref _corners, SolidClipper.CornersFor(solid)),
        Of(ref _on, SolidClipper.CornersFor(solid)),
        Of(ref _indices, SolidClipper.IndicesFor(solid)),
        Of(ref _planes, solid.FaceCount + 1),
        Of(ref _crossed, 2 * solid.FaceCount),
        Of(ref _open, 2 * solid.Loops.Length));

    private static Span<T> Of<T>(ref T[] array, int length)
    {
        if (array.Length < length) array = new T[2 * length];
        return array.AsSpan(0, length);
    }
}

/// <summary>Two rooms, for clips one after another: each reads from the one and writes to the other.</summary>
internal sealed class ClipRooms
{
    public ClipRoom First { get; } = new();

    public ClipRoom Second { get; } = new();
}
