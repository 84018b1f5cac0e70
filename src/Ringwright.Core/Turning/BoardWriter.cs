using Ringwright.Core.Geometry;

namespace Ringwright.Core.Turning;

/// <summary>Points of the piece laid back into the board they were cut from.</summary>
internal static class BoardWriter
{
    /// <summary>Both spans hold x, y, z in turn, mm.</summary>
    public static void Write(Frame3D board, ReadOnlySpan<float> positions, Span<float> coordinates)
    {
        for (int i = 0; i + 2 < positions.Length; i += 3)
        {
            Vector3D point = board.ToLocal(new Vector3D(positions[i], positions[i + 1], positions[i + 2]));
            coordinates[i] = (float)point.X;
            coordinates[i + 1] = (float)point.Y;
            coordinates[i + 2] = (float)point.Z;
        }
    }
}
