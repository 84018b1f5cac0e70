using System.Collections.Immutable;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Planning;

/// <summary>How a planned piece is glued: each ring, then the stack. Same plan, same glue plan.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Rings">The rings from the bottom up.</param>
/// <param name="Stack">The joints between them in the order they are glued.</param>
/// <param name="Order">Why in that order.</param>
/// <param name="Figures">Numbers of the whole, each with its reason.</param>
/// <param name="Minds">What does not fit: too few clamps, too short a day.</param>
public sealed record GluePlan(
    Plan Plan, ImmutableArray<RingGluing> Rings, ImmutableArray<StackJoint> Stack, Sentence Order, ImmutableArray<Figure> Figures, ImmutableArray<Sentence> Minds)
{
    /// <summary>Whether anything is glued at all.</summary>
    public bool HasWork => Stack.Length > 0 || Rings.Any(r => r.GlueUps.Length > 0);

    /// <summary>The glue plan of a plan.</summary>
    public static GluePlan Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<RingGluing> rings = [.. plan.Rings.Select(r => RingGluer.Plan(r, plan.Shop))];
        StackOrder order = StackOrder.Of(plan);
        ImmutableArray<StackJoint> stack = [.. order.Joints(rings.Length).Select(j => StackJoint.Of(plan.Rings[j.Lower], j.Lower, plan.Rings[j.Lower + 1], (j.FromTop, j.Joins)))];
        var glue = new GluePlan(plan, rings, stack, order.Reason, [], []);
        return glue with { Figures = [.. GlueFigures.Of(glue), .. order.Figures], Minds = [.. GlueMinds.Of(glue)] };
    }

    /// <summary>The figure called <paramref name="name"/>, or null.</summary>
    public Figure? Find(string name) => Figures.FirstOrDefault(f => string.Equals(f.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>What to do to put the stack together, in order. Common practice, no source, but for the numbers.</summary>
    public IEnumerable<Sentence> StackSteps()
    {
        if (Stack.Length == 0) yield break;
        yield return Order;
        yield return Sentence.Of("Mark every ring on its rim before it is stacked: a pencil line over joint 1, which lies between the pieces 1 and 2, and an arrow for up. Pieces are counted counter-clockwise from above.");
        yield return Sentence.Of("Before each ring goes on, true the face that is there on the lathe with a straightedge across it: no light under it anywhere. The ring is flattened on both sides already; try it dry.");
        yield return Sentence.Of("Centre it as the chart says, turn it until its mark stands where the chart says, and draw a second line across both rims. Spread thinly on one face, press, and look at both lines again: wet rings slide.");
        yield return Sentence.Of("Press in the middle of the axis, as hard as makes an even bead all around. Turn the stack by hand on the lathe against a pencil on the rest: a rim that runs out by more than {0} is moved while the glue still lets it.", Measured.Length(Plan.Shop.Wanted.Allowance.Millimetres / 2));
        yield return Sentence.Of("Leave each joint pressed for {0}; turn the piece {1} after the last one at the earliest.", Measured.Time(Plan.Shop.Adhesive.ClampTime.Minutes), Measured.Time(Plan.Shop.Adhesive.CureTime.Minutes));
    }
}

/// <summary>The numbers of gluing a whole piece.</summary>
internal static class GlueFigures
{
    public static ImmutableArray<Figure> Of(GluePlan glue)
    {
        var book = new FigureBook();
        GluePace.Add(glue.Plan.Shop, book);
        GlueUp[] all = [.. glue.Rings.SelectMany(r => r.Boards.Concat(r.GlueUps))];
        double joints = book.Know("Pr", "joints within rings and boards", all.Sum(g => g.Joints.Length), Quantity.Count);
        double faces = book.Know("Ps", "faces spread in the stack", glue.Stack.Sum(s => s.Joints), Quantity.Count);
        book.Add("glue-joints", "Joints to glue in all", joints + faces, Quantity.Count, "Pr + Ps", "Pr Ps", "Each is glued once.", Sources.Layer);
        double ups = book.Know("Gr", "glue-ups within rings and boards", all.Length, Quantity.Count);
        double stacked = book.Know("Gs", "glue-ups of the stack", glue.Stack.Length, Quantity.Count);
        book.Add("glue-ups", "Glue-ups", ups + stacked, Quantity.Count, "Gr + Gs", "Gr Gs", "Each is one pot of time: spread, close, clamp.", Sources.Layer);
        book.Add("glue-minutes", "Handwork to glue it", ((ups + stacked) * glue.Plan.Shop.Gluing.MinutesPerGlueUp) + ((joints + faces) * glue.Plan.Shop.Gluing.MinutesPerJoint), Quantity.Time, "(Gr + Gs)·tg + (Pr + Ps)·tj", "Gr Gs tg Pr Ps tj",
            "Spreading, closing and clamping; truing, flattening and waiting come on top.", Sources.OwnRule);
        return book.Figures;
    }
}

/// <summary>Where the shop has less than the glue plan asks for.</summary>
internal static class GlueMinds
{
    public static IEnumerable<Sentence> Of(GluePlan glue)
    {
        Pieces.Gluing shop = glue.Plan.Shop.Gluing;
        RingGluing? banded = glue.Rings.MaxBy(r => r.Clamps(GlueClamp.Band));
        if (banded is not null && banded.Clamps(GlueClamp.Band) > shop.BandClamps)
            yield return Sentence.Of($"{Sentence.Escape(banded.Ring.Ring.Name)} takes {{0}} band clamps at once and the shop has {{1}}: borrow some, or wind on strips of tyre tube.", Measured.Count(banded.Clamps(GlueClamp.Band)), Measured.Count(shop.BandClamps));
        foreach (RingGluing late in glue.Rings.Where(r => r.GlueUps.Any(g => GluePace.Minutes(g.Joints.Length, glue.Plan.Shop) > glue.Plan.Shop.Adhesive.OpenTime.Minutes + 1e-9)).Take(1))
            yield return Sentence.Of($"{Sentence.Escape(late.Ring.Ring.Name)} has a glue-up of {0} joints, which takes {1}, and the glue stays open for {2}: take one that stays open longer, or a second pair of hands.",
                Measured.Count(Most(late)), Measured.Time(GluePace.Minutes(Most(late), glue.Plan.Shop)), Measured.Time(glue.Plan.Shop.Adhesive.OpenTime.Minutes));
    }

    private static int Most(RingGluing ring) => ring.GlueUps.Max(g => g.Joints.Length);
}
