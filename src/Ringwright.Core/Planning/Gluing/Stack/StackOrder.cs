using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>In which order the rings go onto each other: one stack from the bottom, or two sections that are turned inside before they are joined.</summary>
/// <param name="JoinBelow">Number of the lowest ring of the upper section; null for one stack.</param>
/// <param name="Figures">Why.</param>
/// <param name="Reason">Why, in words.</param>
internal sealed record StackOrder(int? JoinBelow, ImmutableArray<Figure> Figures, Sentence Reason)
{
    public static StackOrder Of(Plan plan)
    {
        var book = new FigureBook();
        double reach = book.Know("Lr", "deepest hollow these tools turn from one end", plan.Shop.Gluing.HollowingReach.Millimetres, Quantity.Length);
        int open = OpenFrom(plan.Rings);
        double depth = Height(plan.Rings, open, plan.Rings.Length);
        book.Know("ΣTh", "heights of the rings with an open middle, from the top down", depth, Quantity.Length);
        if (depth > 0) book.Add("hollow", "Depth to turn inside", depth, Quantity.Length, "ΣTh", "ΣTh", "From the mouth down to the first ring without an opening.", Sources.Layer);
        Measured deep = Measured.Length(depth), reaches = Measured.Length(reach);
        // What a drill makes right through needs no hollowing.
        bool bored = plan.Piece.Shape?.Inside is Bore;
        if (bored || depth <= reach || plan.Rings.Length - open < 2)
            return new(null, book.Figures, Sentence.Of(bored || depth == 0 ? "One stack, from the bottom up." : "One stack, from the bottom up: the hollow is {0} deep and the tools reach {1}.", deep, reaches));
        int join = Enumerable.Range(open + 1, plan.Rings.Length - open - 1).MinBy(j => Deeper(plan.Rings, open, j));
        double each = Deeper(plan.Rings, open, join);
        book.Know("Sj", "height up to the joint that is left open", Height(plan.Rings, open, join), Quantity.Length);
        book.Add("hollow-in-sections", "Deeper of the two sections", each, Quantity.Length, "max(Sj, ΣTh − Sj)", "Sj ΣTh", "The joint that divides the hollow most evenly is left open until both are turned inside.", Sources.OwnRule);
        string still = each > reach ? " One of them is still {2} deep: it takes a longer tool, or a third section." : " They are {2} deep at most.";
        return new(join, book.Figures, Sentence.Of($"Two sections: the hollow is {{0}} deep and the tools reach {{1}} from one end. Glue the lower one from the bottom up and the upper one from the mouth down, turn each inside from its open end, then join them under {Sentence.Escape(plan.Rings[join].Ring.Name)}.{still}", deep, reaches, Measured.Length(each)));
    }

    /// <summary>The joints in the order in which each section grows, the joining one last.</summary>
    public IEnumerable<(int Lower, bool FromTop, bool Joins)> Joints(int rings)
    {
        int join = JoinBelow ?? rings;
        for (int i = 0; i + 1 < join; i++) yield return (i, false, false);
        for (int i = rings - 2; i >= join; i--) yield return (i, true, false);
        if (join < rings) yield return (join - 1, false, true);
    }

    private static int OpenFrom(ImmutableArray<RingPlan> rings)
    {
        int open = rings.Length;
        while (open > 0 && rings[open - 1].Ring is IHollowRing) open--;
        return open;
    }

    private static double Height(ImmutableArray<RingPlan> rings, int from, int to) => rings.Skip(from).Take(to - from).Sum(r => r.Ring.Thickness.Millimetres);

    private static double Deeper(ImmutableArray<RingPlan> rings, int open, int join) => Math.Max(Height(rings, open, join), Height(rings, join, rings.Length));
}
