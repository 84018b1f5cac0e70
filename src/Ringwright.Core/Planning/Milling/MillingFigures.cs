using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>How exactly strips must be milled, and what an error does.</summary>
internal static class MillingFigures
{
    private const double Told = 0.1; // mm: what a caliper surely shows

    public static ImmutableArray<Figure> Of(Plan plan)
    {
        RingPlan[] rings = [.. plan.Rings.Where(r => !r.Batches.IsEmpty && r.Stave is null)];
        if (rings.Length == 0) return [];
        var book = new FigureBook();
        // On the sander each face is trued against its own rim edge, so edges that are not parallel turn nothing.
        if (plan.Shop.Sled.Kind != SledKind.DiscSander && rings.Where(r => r.Find("angle-per-wedge") is not null).MinBy(r => r["angle-per-wedge"].Value) is RingPlan strict) AddTaper(strict, plan.Shop, book);
        AddThickness(plan.Shop, book);
        AddWidth(rings, plan.Shop, book);
        return book.Figures;
    }

    private static void AddTaper(RingPlan ring, Shop shop, FigureBook book)
    {
        double limit = book.Know("x", $"error of each wedge's angle that ring {ring.Ring.Name} allows, the same in all", ring["angle-per-wedge"].Value, Quantity.FineAngle);
        double length = book.Know("Ls", "length of a strip", shop.Boards.Length.Millimetres, Quantity.Length);
        book.Add("strip-taper", "Width may change along a strip by", length * Math.Tan(limit), Quantity.FineLength, "Ls·tan(x)", "Ls x",
            "The two edges lie against the fence in turn, so edges that are not parallel change every wedge by the same angle, all one way: the ring gathers it N times. This uses up all that the ring allows joint by joint; halves that are trued allow more.", Sources.SmallAngle);
        book.Know("N", "segments around it", ring.Ring.Around, Quantity.Count);
        book.Know("R", "distance from its centre to the outer end of a joint", ring.Glued.OuterCorner, Quantity.Length);
        book.Know("d", "change of the width along a strip", Told, Quantity.FineLength);
        book.Add("taper-opens", "A strip that changes by 0.1 mm (0.004 in) opens the ring at the rim by", ring.Ring.Around * ring.Glued.OuterCorner * Told / length, Quantity.FineLength, "N·R·d/Ls", "N R d Ls",
            "All joints together, or the centre by as much: where halves are trued, truing must take this off as well.", Sources.SmallAngle);
    }

    private static void AddThickness(Shop shop, FigureBook book)
    {
        double c = book.Know("c", "wood taken off each flat side after gluing", shop.Sanding.Flattening.Millimetres, Quantity.FineLength);
        book.Add("thickness-step", "Strips of one ring alike in thickness within", c, Quantity.FineLength, "c", "c",
            "Glued flat on a plate all steps are on the other face, and flattening takes no more than this off it: a thinner piece keeps a hollow, or the ring comes out low.", Sources.Layer);
    }

    private static void AddWidth(RingPlan[] rings, Shop shop, FigureBook book)
    {
        double q = book.Know("q", "least wood left on the radius for turning", rings.Min(r => (r.Ring.Allowance ?? shop.Wanted.Allowance).Millimetres), Quantity.Length);
        book.Add("width-error", "A strip is too narrow when it lacks", q, Quantity.Length, "q", "q",
            "The stop sets the rim, so an error of the width moves only the inner end. Narrower by this, nothing is left there for turning; joints close all the same.", Sources.Layer);
    }
}
