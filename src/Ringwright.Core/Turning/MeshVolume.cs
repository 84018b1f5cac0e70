namespace Ringwright.Core.Turning;

/// <summary>Volume inside closed triangles.</summary>
internal static class MeshVolume
{
    /// <summary>
    /// The divergence theorem for the field (0, 0, z): each triangle counts its area seen from above times its mean height.
    /// Coordinates of single precision are exact here, so nothing is lost however far from the origin the solid is.
    /// </summary>
    /// <returns>mm³; positive where the triangles turn counter-clockwise seen from outside.</returns>
    public static double Of(ReadOnlySpan<float> positions, ReadOnlySpan<int> indices)
    {
        double six = 0;
        for (int i = 0; i + 2 < indices.Length; i += 3)
        {
            ReadOnlySpan<float> a = positions.Slice(3 * indices[i], 3);
            ReadOnlySpan<float> b = positions.Slice(3 * indices[i + 1], 3);
            ReadOnlySpan<float> c = positions.Slice(3 * indices[i + 2], 3);
            double twiceArea = (((double)b[0] - a[0]) * ((double)c[1] - a[1])) - (((double)c[0] - a[0]) * ((double)b[1] - a[1]));
            six += twiceArea * ((double)a[2] + b[2] + c[2]);
        }

        return six / 6;
    }
}
