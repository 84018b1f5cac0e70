using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Profiles;

namespace Ringwright.Core.Planning;

/// <summary>Whether the rings, as they will be glued, hold the shape: height, wall and glue faces.</summary>
internal static class ShapeFindings
{
    // Common practice, no source: less than this does not make a glue joint that survives the tool.
    private const double LeastOverlap = 3;

    private const double Forgiven = 1e-6;

    /// <summary>The rings with what the shape has to say about each.</summary>
    public static ImmutableArray<RingPlan> Add(ImmutableArray<RingPlan> rings, TurnedForm form, Piece piece)
    {
        var result = rings.ToBuilder();
        double z = 0;
        for (int i = 0; i < rings.Length; i++)
        {
            double top = z + rings[i].Ring.Thickness.Millimetres;
            Finding[] found = [.. Of(rings, i, z, top, form, piece)];
            if (found.Length > 0) result[i] = rings[i] with { Findings = [.. rings[i].Findings.Concat(found).OrderByDescending(f => f.Weight)] };
            z = top;
        }

        return result.MoveToImmutable();
    }

    private static IEnumerable<Finding> Of(ImmutableArray<RingPlan> rings, int i, double bottom, double top, TurnedForm form, Piece piece)
    {
        RingPlan ring = rings[i];
        if (i == rings.Length - 1)
            foreach (Finding finding in Height(ring, top, form)) yield return finding;
        if (Sizing.Within(form, bottom, top) is not { } part)
        {
            yield return new(Weight.Note, ring.Ring.Name, Sentence.Of("It lies beside the shape and is turned away altogether."));
            yield break;
        }

        foreach (Finding finding in Wall(ring, form.Extents(part.From, part.To))) yield return finding;
        if (i > 0 && Overlap(rings[i - 1], ring) is { } overlap && overlap < LeastOverlap)
            yield return new(overlap <= 0 ? Weight.Stop : Weight.Doubt, ring.Ring.Name, overlap <= 0
                ? Sentence.Of("It does not touch the ring below, there is nothing to glue: make one of them wider.")
                : Sentence.Of("Its glue face overlaps the ring below by only {0} on the radius; {1} and more holds while it is turned.", Measured.Length(overlap), Measured.Length(LeastOverlap)));
        if (i == 0 && piece.Shape?.Inside is Bore bore)
            foreach (Finding finding in Tube(ring, bore, form)) yield return finding;
    }

    private static IEnumerable<Finding> Height(RingPlan ring, double top, TurnedForm form)
    {
        if (top < form.Top - Forgiven)
            yield return new(Weight.Stop, ring.Ring.Name, Sentence.Of("The stack ends {0} below the top of the shape: add a ring, or use thicker ones.", Measured.Length(form.Top - top)));
        else if (top - form.Top > ring.Ring.Thickness.Millimetres / 2)
            yield return new(Weight.Note, ring.Ring.Name, Sentence.Of("The stack ends {0} above the shape; that much of the top ring is turned away.", Measured.Length(top - form.Top)));
    }

    private static IEnumerable<Finding> Wall(RingPlan ring, WallExtents wall)
    {
        double outer = ring.Ring.Outside.Millimetres / 2;
        if (ring.Ring is not StaveRing && outer < wall.MaxOuter - Forgiven)
            yield return new(Weight.Stop, ring.Ring.Name, Sentence.Of("Its diameter of {0} is smaller than the {1} that the shape reaches within its height.", Measured.Length(2 * outer), Measured.Length(2 * wall.MaxOuter)),
                new("diameter", 2 * wall.MaxOuter, Sentence.Of("Make it {0}", Measured.Length(2 * wall.MaxOuter))));
        if (ring.Ring is not StaveRing && ring.Ring is IHollowRing { InnerDiameter: Length inside } && inside.Millimetres / 2 > wall.MinInner + Forgiven)
            yield return new(Weight.Stop, ring.Ring.Name, Sentence.Of("Its inner diameter of {0} is larger than the {1} that the wall leaves within its height.", Measured.Length(inside.Millimetres), Measured.Length(2 * wall.MinInner)),
                new("innerDiameter", 2 * wall.MinInner, Sentence.Of("Make it {0}", Measured.Length(2 * wall.MinInner))));
    }

    // The glued faces: from the wider of the two holes to the narrower of the two rims.
    private static double? Overlap(RingPlan below, RingPlan above) =>
        Math.Min(OuterOf(below), OuterOf(above)) - Math.Max(InnerOf(below), InnerOf(above));

    private static double OuterOf(RingPlan ring) => ring.Batches.IsEmpty ? ring.Ring.Outside.Millimetres / 2 : ring.Batches.Min(b => b.Glued.ApexRadius + b.Glued.OuterApothem);

    private static double InnerOf(RingPlan ring) => ring.Batches.IsEmpty ? 0 : ring.Batches.Max(b => b.Glued.ApexRadius + b.Glued.InnerCorner);

    private static IEnumerable<Finding> Tube(RingPlan ring, Bore bore, TurnedForm form)
    {
        if (bore.Tube is not Length tube) yield break;
        double trimmed = form.Height - (2 * (bore.EndTrim?.Millimetres ?? 0));
        if (trimmed < tube.Millimetres - Forgiven)
            yield return new(Weight.Stop, ring.Ring.Name, Sentence.Of("Trimmed at both ends the blank is {0} long, shorter than its tube of {1}.", Measured.Length(trimmed), Measured.Length(tube.Millimetres)));
        if (trimmed > tube.Millimetres + Forgiven)
            yield return new(Weight.Note, ring.Ring.Name, Sentence.Of("The ends are trimmed flush with the tube: {0} at each.", Measured.Length((form.Height - tube.Millimetres) / 2)));
    }
}
