using System.Collections.Immutable;

namespace Ringwright.Core.Boards;

/// <summary>The parts of a board between its defects.</summary>
public static class SoundStretches
{
    /// <summary>
    /// From and to of each, mm from the labelled end. The blade runs in the defect; one that is narrower than the kerf takes its width.
    /// </summary>
    public static ImmutableArray<(double From, double To)> Of(RackBoard board, double kerf)
    {
        ArgumentNullException.ThrowIfNull(board);
        double length = board.Length.Millimetres, at = 0;
        var sound = ImmutableArray.CreateBuilder<(double, double)>();
        foreach (Defect defect in (board.Defects ?? []).OrderBy(d => d.From.Millimetres))
        {
            if (defect.From.Millimetres > at) sound.Add((at, defect.From.Millimetres));
            at = Math.Max(at, Math.Max(defect.To.Millimetres, defect.From.Millimetres + kerf));
        }

        if (at < length) sound.Add((at, length));
        return sound.ToImmutable();
    }
}
