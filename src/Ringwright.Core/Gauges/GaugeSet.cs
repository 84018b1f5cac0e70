using Ringwright.Core.Measures;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Gauges;

/// <summary>The gauges that the sawing of a plan needs.</summary>
public static class GaugeSet
{
    private const double Same = 1e-9;  // radians: settings nearer than this share a gauge
    private const double Least = 2e-3; // radians: what leans less is square

    /// <summary>A wedge gauge and a fence block for each setting of a ring, a block for the blade's tilt where there is one.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="bed">The greatest length and width, mm: a printer's bed.</param>
    /// <param name="ring">Only for this ring; for all when null, each angle once.</param>
    /// <exception cref="BadInputException">A bed that cannot be.</exception>
    public static IReadOnlyList<GaugeShape> Of(Plan plan, double bed = 180, RingPlan? ring = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        List<GaugeShape> gauges = [];
        foreach (RingPlan each in plan.Rings.Where(r => ring is null || ReferenceEquals(r, ring)))
            for (int b = 0; b < each.Batches.Length; b++)
            {
                RingPlan alone = each.Alone(b);
                string name = each.Batches.Length == 1 ? each.Ring.Name : $"{each.Ring.Name}, wedge {b + 1}";
                if (each.Stave is null) Add(gauges, "wedge gauge", 2 * alone.Glued.HalfAngle, name, (angle, title, text) => GaugeShape.Wedge(angle, title, text, bed));
                Add(gauges, "fence block", alone.Find("mitre")?.Value, name, Block);
                Add(gauges, "tilt block", alone.Find("blade-tilt")?.Value, name, Block);
            }

        return gauges;

        GaugeShape Block(double angle, string title, string text) => GaugeShape.Block(angle, title, text, plan.Shop.Sled.RuleDistance.Millimetres, bed);
    }

    private static void Add(List<GaugeShape> gauges, string kind, double? angle, string ring, Func<double, string, string, GaugeShape> make)
    {
        if (angle is not double known || known < Least) return;
        string degrees = MeasureStyle.Millimetres.Print(known, Quantity.Angle);
        int same = gauges.FindIndex(g => g.Name.EndsWith(kind, StringComparison.Ordinal) && Math.Abs(g.Angle - known) < Same);
        // One that serves several rings is called by its angle.
        if (same < 0) gauges.Add(make(known, $"{ring}: {kind}", $"{ring} {degrees}"));
        else gauges[same] = make(gauges[same].Angle, $"{degrees}: {kind}", degrees);
    }
}
