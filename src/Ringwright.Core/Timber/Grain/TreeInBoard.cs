using System.Text;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Timber.Grain;

/// <summary>
/// Where a board came from in its tree, made up: nobody knows it of a board that is still to be bought. It is the same for the same
/// board in every run, so that a picture does not change from one look to the next.
/// </summary>
public static class TreeInBoard
{
    // Boards are sawn from some way off the pith, and their edges run along the trunk but for a degree or so.
    private const double Nearest = 35, Farthest = 150, Askew = 0.022;

    // Three boards of four come nearer to flat-sawn.
    private const double FlatShare = 0.75, FlatSpread = 0.5, QuarterSpread = 0.3;

    // Trees are told apart by how far along the trunk a board begins, mm; single precision still shows a hundredth there.
    private const double Trunk = 4000;

    /// <summary>
    /// The tree laid into the board: from tree coordinates (x along the pith; growth rings are circles about it) to those of
    /// the board (x along the board, y across its width, z through its thickness), mm.
    /// </summary>
    /// <param name="ring">The ring it is for.</param>
    /// <param name="wood">Its wood.</param>
    /// <param name="board">Its number among the ring's boards of that wood.</param>
    public static Frame3D Of(string ring, string wood, int board)
    {
        ArgumentNullException.ThrowIfNull(ring);
        ArgumentNullException.ThrowIfNull(wood);
        var draws = new Sequence(Hash(ring) ^ (Hash(wood.ToLowerInvariant()) * 3) ^ ((ulong)board * 0x9E3779B97F4A7C15));
        bool flat = draws.Next() < FlatShare;
        // Direction from the board to the pith, about the board's length: 0 is straight below its face.
        double turn = flat ? FlatSpread * draws.Signed() : (Math.PI / 2) + (QuarterSpread * draws.Signed());
        if (draws.Next() < 0.5) turn += Math.PI;
        double away = Nearest + ((Farthest - Nearest) * draws.Next());
        Vector3D along = new Vector3D(1, Askew * draws.Signed(), Askew * draws.Signed()).Normalized();
        Vector3D aside = new Vector3D(0, 1, 0) - (along.Y * along);
        (double sin, double cos) = Math.SinCos(2 * Math.PI * draws.Next());
        Vector3D y = aside.Normalized(), z = along.Cross(y);
        Vector3D pith = new(-Trunk * draws.Next(), away * Math.Sin(turn), -away * Math.Cos(turn));
        return new(along, (cos * y) + (sin * z), (cos * z) - (sin * y), pith);
    }

    // FNV-1a.
    private static ulong Hash(string text)
    {
        ulong hash = 14695981039346656037;
        foreach (byte b in Encoding.UTF8.GetBytes(text)) hash = unchecked((hash ^ b) * 1099511628211);
        return hash;
    }

    // SplitMix64 (Steele, Lea and Flood 2014).
    private sealed class Sequence(ulong state)
    {
        /// <summary>From 0 up to 1.</summary>
        public double Next()
        {
            ulong z = unchecked(state += 0x9E3779B97F4A7C15);
            z = unchecked((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9);
            z = unchecked((z ^ (z >> 27)) * 0x94D049BB133111EB);
            return ((z ^ (z >> 31)) >> 11) * (1.0 / (1UL << 53));
        }

        /// <summary>From −1 up to 1.</summary>
        public double Signed() => (2 * Next()) - 1;
    }
}
