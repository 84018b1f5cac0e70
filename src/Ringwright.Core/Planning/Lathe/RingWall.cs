using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Planning;

/// <summary>The wall of a ring that is turned to its own sizes, without a shape.</summary>
internal static class RingWall
{
    /// <summary>From one of its faces to the other.</summary>
    /// <remarks>The wall leans with staves: its sizes are those outside at their wider end and inside at their narrower one.</remarks>
    public static WallSection Straight(RingPlan ring, double bottom, double top)
    {
        double outer = ring.Ring.Outside.Millimetres / 2;
        double inner = ring.Ring switch
        {
            WedgeDisc { Bore: Length bore } => bore.Millimetres / 2,
            IHollowRing { InnerDiameter: Length inside } => inside.Millimetres / 2,
            WedgeDisc => OpeningRadius(ring),
            _ => 0,
        };
        double lean = ring.Stave is StaveGeometry stave ? (top - bottom) * Math.Tan(stave.Lean) : 0;
        return new([new(bottom, outer - Math.Max(0, lean), inner + Math.Max(0, -lean)), new(top, outer - Math.Max(0, -lean), inner + Math.Max(0, lean))]);
    }

    // The opening between flat tips has corners; a round one of the same area stands for it.
    private static double OpeningRadius(RingPlan ring)
    {
        double apothem = Math.Max(0, ring.Glued.InnerApothem);
        return apothem * Math.Sqrt(ring.Ring.Around * Math.Tan(ring.Glued.HalfAngle) / Math.PI);
    }
}
