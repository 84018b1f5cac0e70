using System.Collections.Immutable;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Planning;

/// <summary>A ring where it stands in its stack. Heights in mm above the bottom of the lowest ring.</summary>
/// <param name="Plan">The ring.</param>
/// <param name="Bottom">Its lower face as glued.</param>
/// <param name="Top">Its upper face as glued.</param>
/// <param name="Section">The wall turned out of it; null when it is turned away altogether.</param>
public sealed record StackedRing(RingPlan Plan, double Bottom, double Top, WallSection? Section)
{
    private readonly (BlankRadii Low, BlankRadii High) _blank = BlankRadii.Of(Plan);

    /// <summary>The rings of a plan from the bottom up.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="section">The walls between two heights: from the shape; each ring's own sizes when null.</param>
    internal static ImmutableArray<StackedRing> Of(Plan plan, Func<double, double, WallSection>? section)
    {
        var rings = ImmutableArray.CreateBuilder<StackedRing>(plan.Rings.Length);
        double bottom = 0;
        foreach (RingPlan ring in plan.Rings)
        {
            double top = bottom + ring.Ring.Thickness.Millimetres;
            // What lies above or below the shape is turned away.
            (double From, double To)? part = plan.Form is null ? (bottom, top) : Sizing.Within(plan.Form, bottom, top);
            rings.Add(new(ring, bottom, top, part is { } heights ? section?.Invoke(heights.From, heights.To) ?? RingWall.Straight(ring, bottom, top) : null));
            bottom = top;
        }

        return rings.MoveToImmutable();
    }

    /// <summary>How far its wood reaches before turning, at a height of the piece in mm.</summary>
    public BlankRadii BlankAt(double z) => _blank.Low.Towards(_blank.High, (z - Bottom) / (Top - Bottom));
}
