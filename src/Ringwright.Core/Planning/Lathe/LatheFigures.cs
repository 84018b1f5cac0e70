using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Profiles;

namespace Ringwright.Core.Planning;

/// <summary>Numbers of the walls at the lathe.</summary>
internal static class LatheFigures
{
    private const double Slender = 12; // times its shank a tool may reach over the rest. Common practice, no source.

    public static void Add(Plan plan, ImmutableArray<RingPasses> rings, FigureBook book)
    {
        if (rings.IsEmpty) return;
        double cut = book.Know("c", "depth of one roughing cut", plan.Shop.Lathe.RoughCut.Millimetres, Quantity.Length);
        double left = book.Know("l", "left on each side for the last cuts", plan.Shop.Lathe.FinishAllowance.Millimetres, Quantity.Length);
        Centring(rings, book);
        Cuts("outside", "outside", rings.MaxBy(r => r.OutsideStock)!, r => r.OutsideStock, cut, book);
        Cuts("inside", "inside", rings.MaxBy(r => r.InsideStock)!, r => r.InsideStock, cut, book);
        if (rings.All(r => r[LathePass.Finished].Inner <= 0)) return;
        Thinnest(rings, LathePass.InsideRoughed, "wall-roughed", "Thinnest wall once roughed inside", "While this much is left the wall can still be trued; let the piece rest here when its wood was not quite dry.", book);
        Thinnest(rings, LathePass.Finished, "wall-finished", "Thinnest wall when finished", "Along the radius; square to a slanting wall it is less, see the thinnest wood.", book);
        book.AddFound("finish-allowance", "Leave on each side for the last cuts", left, Quantity.Length, "l", "l", "The shop's own value: finishAllowance of its lathe.", "common practice, no source");
        if (plan.Form is TurnedForm form && BoringPlan.Floor(form) is double floor) Reach(form, floor, book);
    }

    private static void Centring(ImmutableArray<RingPasses> rings, FigureBook book)
    {
        RingPasses tightest = rings.MinBy(r => r.CentreWithin)!;
        book.AddFound("centre-within", $"Centre every ring within ({tightest.Ring.Plan.Ring.Name} is the tightest)", Math.Max(0, tightest.CentreWithin), Quantity.Length,
            "least of blank radius − turned radius outside, turned radius − hole's corner inside, over all heights", "", "Further off and a flat or a corner is left on the wall.");
    }

    private static void Cuts(string name, string where, RingPasses most, Func<RingPasses, double> stock, double cut, FigureBook book)
    {
        if (stock(most) <= 0) return;
        double s = book.Know("s" + name[0], $"most wood to rough off {where}, in ring {most.Ring.Plan.Ring.Name}", stock(most), Quantity.Length);
        book.AddFound($"cuts-{name}", $"Roughing cuts {where}, at most", Math.Ceiling((s / cut) - 1e-9), Quantity.Count, $"s{name[0]}/c, rounded up", $"s{name[0]} c", "Corners of the segments included; the first cuts meet only them.");
    }

    private static void Thinnest(ImmutableArray<RingPasses> rings, LathePass pass, string name, string label, string reason, FigureBook book)
    {
        // A hole narrower than what is left for the last cuts is not bored yet when the inside is roughed.
        if (rings.Where(r => r[pass].Inner > 0).MinBy(r => r[pass].Thickness) is not RingPasses thin) return;
        book.AddFound(name, $"{label} (in {thin.Ring.Plan.Ring.Name})", thin[pass].Thickness, Quantity.Length, "least of outer − inner radius over all heights of the hollow rings", "", reason);
    }

    private static void Reach(TurnedForm form, double floor, FigureBook book)
    {
        book.Know("zt", "height of the rim", form.Top, Quantity.Length);
        book.Know("zl", "height of the floor", floor, Quantity.Length);
        double deep = book.Know("R", "depth of the hollow", form.Top - floor, Quantity.Length);
        book.Add("hollow-depth", "Depth of the hollow", deep, Quantity.Length, "zt − zl", "zt zl", "So far the tool reaches over its rest at the end.");
        book.Add("mouth", "Its mouth is", book.Know("Dm", "inner diameter at the rim", 2 * form.Inner(form.Top), Quantity.Length), Quantity.Length, "Dm", "Dm", "What tool, and hand with sandpaper, must pass.");
        book.Add("tool-shank", "A tool's shank of at least", deep / Slender, Quantity.Length, $"R/{Slender:0}", "R", "Thinner ones spring and catch near the floor; a rest that reaches into the hollow shortens the way.", "common practice, no source");
    }
}
