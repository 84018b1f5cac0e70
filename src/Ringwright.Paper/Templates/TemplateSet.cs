using Ringwright.Core.Gauges;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;

namespace Ringwright.Paper.Templates;

/// <summary>All templates of a plan.</summary>
public static class TemplateSet
{
    /// <summary>The templates of some kinds, the piece's first, then ring by ring from the bottom up.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="kinds">Which; all when null.</param>
    /// <param name="ring">Only those of this ring; of all when null.</param>
    public static IEnumerable<Template> Of(Plan plan, MeasureStyle style, IReadOnlySet<TemplateKind>? kinds = null, RingPlan? ring = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        return Lazily(plan, style, ring).Where(t => kinds?.Contains(t.Kind) ?? true).Select(t => t.Draw()).OfType<Template>();
    }

    // What is not wanted is not drawn.
    private static IEnumerable<(TemplateKind Kind, Func<Template?> Draw)> Lazily(Plan plan, MeasureStyle style, RingPlan? only)
    {
        if (plan.Form is { } form && only is null)
        {
            yield return (TemplateKind.Outside, () => ProfileTemplates.Outside(plan, form));
            yield return (TemplateKind.Inside, () => ProfileTemplates.Inside(plan, form));
        }

        foreach (GaugeShape gauge in GaugeSet.Of(plan, ring: only))
            yield return (gauge.Name.EndsWith("block", StringComparison.Ordinal) ? TemplateKind.Block : TemplateKind.Gauge, () => GaugeTemplates.Of(gauge));
        for (int i = 0; i < plan.Rings.Length; i++)
        {
            RingPlan ring = plan.Rings[i], below = plan.Rings[Math.Max(0, i - 1)];
            if (only is not null && !ReferenceEquals(ring, only)) continue;
            yield return (TemplateKind.Quarter, () => RingTemplates.Quarter(ring));
            yield return (TemplateKind.Disc, () => RingTemplates.Disc(ring));
            bool lowest = i == 0;
            if (plan.Rings.Length > 1) yield return (TemplateKind.Stack, () => RingTemplates.Stack(ring, lowest ? null : below));
            yield return (TemplateKind.Plate, () => RingTemplates.Plate(ring));
            yield return (TemplateKind.Spacer, () => RingTemplates.Spacer(ring));
            for (int b = 0; b < ring.Batches.Length; b++)
            {
                WedgeBatch batch = ring.Batches[b];
                string name = ring.Batches.Length == 1 ? ring.Ring.Name : $"{ring.Ring.Name}, wedge {b + 1}";
                yield return (TemplateKind.Wedge, () => WedgeTemplates.Wedge(batch, name, style));
                if (ring.Stave is null) yield return (TemplateKind.Lap, () => WedgeTemplates.Lap(batch, name, style));
            }
        }
    }
}
