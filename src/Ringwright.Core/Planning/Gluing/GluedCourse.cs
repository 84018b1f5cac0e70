using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>The pieces around a closed ring as they are glued: segments, and spacers between them.</summary>
internal sealed class GluedCourse
{
    private readonly bool[] _spacer;

    public GluedCourse(RingPlan ring)
    {
        Pieces = ring.Batches.Sum(b => b.Places.Length) + ring.Spacers.Sum(s => s.Places.Length);
        _spacer = new bool[Pieces];
        foreach (int place in ring.Spacers.SelectMany(s => s.Places)) _spacer[place] = true;
        Half = ring.Ring switch
        {
            MixedRing mixed => mixed.Repeats % 2 == 0 ? WithoutSpacersBehind(Pieces / 2) : null,
            _ => Pieces % 2 == 0 ? Pieces / 2 : null,
        };
    }

    /// <summary>How many there are.</summary>
    public int Pieces { get; }

    /// <summary>
    /// Pieces in each half, spacers at its ends left out: the end faces of such a half lie in one plane. Null when there are no two equal
    /// halves. The second half begins at the middle piece.
    /// </summary>
    public int? Half { get; }

    /// <summary>Pieces before the last segment, and before the spacers in front of it.</summary>
    public int BeforeLast => WithoutSpacersBehind(WithoutSpacersBehind(Pieces) - 1);

    private int WithoutSpacersBehind(int count)
    {
        while (count > 0 && _spacer[count - 1]) count--;
        return count;
    }
}
