using Ringwright.Core.Timber;
using Ringwright.Web.Bench;
using Ringwright.Web.Drawing;

namespace Ringwright.Web.Components;

/// <summary>The woods of the shown ring, in turn.</summary>
public partial class WoodInputs
{
    private ImmutableArray<string> Woods => Sheet.Draft.Ring.Woods;

    private FieldProblem? Problem => Sheet.Problems.FirstOrDefault(p => p.Key == Refusals.WoodsKey && p.Ring == Sheet.Draft.Selected);

    private WoodLook Look(string wood) => WoodLook.For(Woods).First(l => string.Equals(l.Name, wood, StringComparison.OrdinalIgnoreCase));

    private void Add() => Bench.AddWood(Wood.All.Select(w => w.Name).FirstOrDefault(name => !Woods.Contains(name, StringComparer.OrdinalIgnoreCase)) ?? Wood.All[0].Name);
}
