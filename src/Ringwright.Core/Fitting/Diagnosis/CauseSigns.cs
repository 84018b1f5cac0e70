namespace Ringwright.Core.Fitting;

/// <summary>
/// Which way each cause goes. A joint opens only one way at a time (at the rim or at the tip, at the top or at the
/// bottom, at both ends or not at all), so a reading depends on the causes linearly only once their signs are known;
/// all eight combinations are weighed against each other.
/// </summary>
internal readonly record struct CauseSigns(bool TooNarrow, bool OpenAtTop, bool Bellied)
{
    /// <summary>All combinations.</summary>
    public static IEnumerable<CauseSigns> All => Enumerable.Range(0, 8).Select(i => new CauseSigns((i & 1) == 0, (i & 2) == 0, (i & 4) == 0));

    /// <summary>+1 or -1 for cause 0 (closing error), 1 (taper), 2 (shape).</summary>
    public int Of(int cause) => (cause == 0 ? TooNarrow : cause == 1 ? OpenAtTop : Bellied) ? 1 : -1;
}
