using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Planning;

/// <summary>
/// The chance that a ring of staves closes. Mitre and tilt are taken to scatter like any angle of these hands, each by itself;
/// what they turn the joint by follows from cos(π/N) = cos(tilt) · cos(mitre). A cut makes the edges of the staves on both its
/// sides, and of all staves crosscut from one ripped strip.
/// </summary>
internal static class StaveClosing
{
    public static ClosingBudget Add(StaveGeometry glued, StaveRing ring, Shop shop, FigureBook book)
    {
        double v = book.Know("V", "sum over all cuts of the square of the edges each one makes",
            SharedEdges(glued.IsUpright, (int)book["staves-across"].Value, (int)book["wedges-per-board"].Value, ring, shop), Quantity.Count);
        ClosingBudget budget = Budget(glued, v, book["closing-limit"].Value, shop);
        Know(Turn(glued, shop), shop, book);
        Enter(budget, book);
        return budget;
    }

    /// <summary>The budget of a planned ring of staves.</summary>
    public static ClosingBudget Of(RingPlan plan, StaveGeometry glued, Shop shop) =>
        Budget(glued, SharedEdges(glued.IsUpright, (int)plan["staves-across"].Value, (int)plan["wedges-per-board"].Value, plan.Ring, shop), plan["closing-limit"].Value, shop);

    private static ClosingBudget Budget(StaveGeometry glued, double v, double limit, Shop shop)
    {
        double sd = shop.Hands.AngleSd.Radians, setting = shop.Hands.SettingSd.Radians, turn = Turn(glued, shop);
        double st = glued.TiltCounts, sm = glued.MitreCounts, both = (st * st) + (sm * sm);
        int n = glued.Segments;
        return new(n, -2 * n * sm * shop.Hands.AngleBias.Radians, v * both * sd * sd, 4.0 * n * n * both * setting * setting, 2.0 * n * turn * turn, limit);
    }

    // Uneven strokes turn a face about its length (a tilt, over the board's thickness) and about its thickness (a mitre, over its length).
    private static double Turn(StaveGeometry glued, Shop shop)
    {
        if (shop.Sled.Kind == SledKind.DiscSander) return 0;
        double tilt = glued.TiltCounts * Math.Cos(glued.Tilt) / glued.Thickness, mitre = glued.MitreCounts * Math.Cos(glued.Mitre) / glued.Length;
        return shop.Sanding.PerFace.Millimetres == 0 ? 0 : shop.Sanding.Unevenness.Millimetres * Math.Sqrt((tilt * tilt) + (mitre * mitre));
    }

    private static double SharedEdges(bool upright, int columns, int perBoard, Ring ring, Shop shop)
    {
        if (shop.Sled.Kind == SledKind.DiscSander) return 2 * ring.Around;
        double sum = 0;
        foreach (int staves in Enumerable.Range(0, ring.Around).CountBy(ring.WoodOf, StringComparer.OrdinalIgnoreCase).Select(p => p.Value))
            for (int left = staves; left > 0; left -= perBoard)
                sum += OnBoard(upright, Math.Min(left, perBoard), columns);
        return sum;
    }

    private static double OnBoard(bool upright, int staves, int columns)
    {
        if (upright) return Cuts([.. Enumerable.Range(0, columns).Select(j => (staves - j + columns - 1) / columns)]);
        double sum = 0;
        for (int left = staves; left > 0; left -= columns) sum += Cuts([.. Enumerable.Repeat(1, Math.Min(left, columns))]);
        return sum;
    }

    // Each cut lies between two columns; the first and the last have a column on one side only.
    private static double Cuts(int[] column)
    {
        double sum = 0;
        for (int j = 0; j <= column.Length; j++)
        {
            double edges = (j > 0 ? column[j - 1] : 0) + (j < column.Length ? column[j] : 0);
            sum += edges * edges;
        }

        return sum;
    }

    private static void Know(double turn, Shop shop, FigureBook book)
    {
        string hands = shop.Hands.Basis is null ? "starting value" : "learned from the record";
        book.Know("σc", $"spread of mitre and of tilt from cut to cut ({hands})", shop.Hands.AngleSd.Radians, Quantity.FineAngle);
        book.Know("σf", "spread of setting the mitre, and of setting the tilt", shop.Hands.SettingSd.Radians, Quantity.FineAngle);
        book.Know("τ", "turn of a joint face by uneven sanding", turn, Quantity.FineAngle);
        book.Know("β", $"constant error of every mitre ({hands})", shop.Hands.AngleBias.Radians, Quantity.FineAngle);
    }

    private static void Enter(ClosingBudget budget, FigureBook book)
    {
        book.Know("m", "expected closing error", book.Add("closing-mean", "Expected closing error", budget.Mean, Quantity.FineAngle, "-2·N·Sm·β", "N Sm β",
            "Above 0 the ring opens outside, below 0 inside.", Sources.Chain), Quantity.FineAngle);
        book.Know("S", "spread of the closing error", book.Add("closing-spread", "Spread of the closing error", budget.Sd, Quantity.FineAngle,
            "sqrt(V·(St^2 + Sm^2)·σc^2 + 4·N^2·(St^2 + Sm^2)·σf^2 + 2·N·τ^2)", "V St Sm σc N σf τ",
            "A cut counts for all edges it makes; the setting counts in every stave; each face is sanded by itself.", Sources.Chain), Quantity.FineAngle);
        book.Add("chance-to-close", "Chance that it closes at the first try", budget.Chance, Quantity.Share, "Φ((L − m)/S) − Φ((−L − m)/S)", "L m S",
            "The closing error is normal, and all of it gathers in the last joint. Two halves whose faces are trued always close.", Sources.Chain);
        book.Know("Sc", "spread without the settings", budget.Corrected.Sd, Quantity.FineAngle);
        if (budget.Corrected.Sd > 0)
            book.Add("chance-after-correction", "The same, once a test half has corrected the settings", budget.Corrected.Chance, Quantity.Share, "Φ(L/Sc) − Φ(-L/Sc)", "L Sc",
                "A test half shows what is constant in all cuts; what scatters from cut to cut stays.", Sources.Chain);
    }
}
