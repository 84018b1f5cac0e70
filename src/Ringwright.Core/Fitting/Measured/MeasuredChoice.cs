using System.Globalization;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Asks the chooser about a planned ring. Segments of several widths are made comparable first: each is told by how its angle and
/// its width differ from what its width should have, on a wedge that is the same for all, and only its own width and wood suit a place.
/// </summary>
public static class MeasuredChoice
{
    private const double CommonTip = 10; // mm; only differences of it count

    /// <summary>What is asked.</summary>
    /// <param name="plan">The ring's plan.</param>
    /// <param name="wedges">The measured wedges, and which batch of the ring each is of.</param>
    /// <param name="depth">Distance between the two reading places, mm.</param>
    public static WedgeChoiceInput Of(RingPlan plan, IReadOnlyList<(MeasuredWedge Wedge, int Batch)> wedges, double depth)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(wedges);
        (IReadOnlyList<MeasuredWedge> level, depth) = plan.Stave is { } stave ? MeasuredStaves.Level(stave, [.. wedges.Select(w => w.Wedge)], depth) : ([.. wedges.Select(w => w.Wedge)], depth);
        (CaliperReading Wedge, int Batch)[] read = [.. level.Zip(wedges, (w, of) => (Mean(w), of.Batch))];
        var kinds = MeasuredRing.KindsOf(plan);
        bool alike = plan.Batches.Length == 1;
        return new()
        {
            Wedges = alike ? [.. read.Select(w => w.Wedge)] : [.. read.Select(w => Common(w.Wedge, plan.Batches[w.Batch].Glued, w.Batch, kinds.Length, depth))],
            Places = kinds.Length,
            Depth = depth,
            Radius = plan.Glued.Reach,
            Pattern = alike && plan.Woods.Length == 1 ? [] : [.. WoodsOf(plan).Select((wood, i) => alike ? wood : Label(kinds[i], wood))],
        };
    }

    /// <summary>The wood of each segment of a ring, counter-clockwise.</summary>
    public static IReadOnlyList<string> WoodsOf(RingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Lamination is not null) return [.. Enumerable.Repeat(plan.Woods[0].Wood, plan.Ring.Around)];
        HashSet<int> spacers = [.. plan.Spacers.SelectMany(s => s.Places)];
        return [.. plan.Layout.Where((_, place) => !spacers.Contains(place)).Select(s => s.Wood)];
    }

    // Of a wedge that was read on both sides, what lies half way.
    private static CaliperReading Mean(MeasuredWedge wedge) => wedge.Below with { Rim = (wedge.Below.Rim + wedge.Above.Rim) / 2, Tip = (wedge.Below.Tip + wedge.Above.Tip) / 2 };

    private static string Label(int batch, string wood) => string.Create(CultureInfo.InvariantCulture, $"wedge {batch + 1} of {wood}");

    private static CaliperReading Common(CaliperReading wedge, WedgeGeometry wanted, int batch, int places, double depth)
    {
        double tip = CommonTip + (wedge.Tip - wanted.Tip), angle = wedge.Angle(depth) - wanted.WedgeAngle + (2 * Math.PI / places);
        return wedge with { Wood = Label(batch, wedge.Wood), Tip = tip, Rim = tip + (2 * (wedge.Depth ?? depth) * Math.Tan(angle / 2)) };
    }
}
