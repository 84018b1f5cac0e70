using System.Collections.Immutable;
using Ringwright.Core.Rings;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Planning;

/// <summary>A ring where it stands in its stack. Heights in mm above the bottom of the lowest ring.</summary>
/// <param name="Plan">The ring.</param>
/// <param name="Bottom">Its lower face as glued.</param>
/// <param name="Top">Its upper face as glued.</param>
/// <param name="Section">The wall turned out of it; null when it is turned away altogether.</param>
public sealed record StackedRing(RingPlan Plan, double Bottom, double Top, WallSection? Section)
{
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

    /// <summary>The least radius of glued wood outside at a height of the piece: the middle of a flat.</summary>
    public double OuterFlat(double z) => Blank(z).Outer;

    /// <summary>The greatest radius of the hole before turning at a height of the piece: its corners; 0 without one.</summary>
    public double InnerCorner(double z) => Blank(z).Inner;

    /// <summary>The least radius of the hole before turning at a height of the piece: the middle of its flats; 0 without one.</summary>
    public double InnerFlat(double z) => InnerCorner(z) * Math.Cos(HalfAngle);

    /// <summary>The greatest radius of glued wood outside at a height of the piece: the corners.</summary>
    public double OuterCorner(double z) => OuterFlat(z) / Math.Cos(HalfAngle);

    // Sawn out of a board it is round already.
    private double HalfAngle => Plan.Board is not null || (Plan.Batches.IsEmpty && Plan.Stave is null) ? 0 : Math.PI / Plan.Ring.Around;

    private (double Outer, double Inner) Blank(double z)
    {
        if (Plan.Stave is StaveGeometry stave) return (stave.OuterApothem(z - Bottom), stave.InnerApothem(z - Bottom) / Math.Cos(stave.HalfAngle));
        if (Plan.Board?[Plan.Ring.Name] is SawnBoardRing sawn) return Slanted(sawn, (z - Bottom) / (Top - Bottom));
        return Plan.Batches.IsEmpty
            ? ((Plan.Find("round")?.Value ?? Plan.Ring.Outside.Millimetres) / 2, 0)
            : (Plan.Batches.Min(b => b.Glued.ApexRadius + b.Glued.OuterApothem), Plan.Batches.Max(b => b.Glued.ApexRadius + Math.Max(0, b.Glued.InnerCorner)));
    }

    // Sawn round out of its board, its walls leaning with the blade.
    private static (double Outer, double Inner) Slanted(SawnBoardRing sawn, double share)
    {
        var (low, high) = (sawn.Face(up: false), sawn.Face(up: true));
        return (low.Outer + (share * (high.Outer - low.Outer)), low.Inner + (share * (high.Inner - low.Inner)));
    }
}
