using Ringwright.Core.Rings;

namespace Ringwright.Core.Planning;

/// <summary>How much wood is glued before it is turned.</summary>
internal static class BlankVolumes
{
    /// <summary>The glued ring's wood, mm³: the area of its pieces from above times its height; of staves between the two pyramids of their faces.</summary>
    public static double Of(RingPlan plan)
    {
        double height = plan.Ring.Thickness.Millimetres;
        if (plan.Stave is StaveGeometry stave) return stave.RingVolume(0, height);
        if (!plan.Batches.IsEmpty)
            return height * (plan.Batches.Sum(b => b.Places.Length * b.Glued.Area) + plan.Spacers.Sum(s => s.Places.Length * s.Thickness * s.Length));
        // Rings from one board share its wood, which counts with the ring that carries the board's plan.
        if (plan.Board is not null) return 0;
        double across = plan.Find("across-flats")?.Value ?? plan.Ring.Outside.Millimetres;
        return height * Math.PI * across * across / 4;
    }
}
