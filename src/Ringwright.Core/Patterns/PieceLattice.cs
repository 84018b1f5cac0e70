using System.Collections.Immutable;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Profiles;

namespace Ringwright.Core.Patterns;

/// <summary>A piece's rings as the lattice that patterns are laid on, and patterns put into its rings.</summary>
public static class PieceLattice
{
    /// <summary>The lattice of a planned piece. A ring's height is measured along its outline, as one sees it.</summary>
    public static Lattice Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var rings = new List<LatticeRing>(plan.Rings.Length);
        double z = 0;
        foreach (RingPlan ring in plan.Rings)
        {
            double top = z + ring.Ring.Thickness.Millimetres;
            (double radius, double height) = Seen(ring, z, top, plan.Form);
            rings.Add(new(ring.Ring.Around, ring.Ring.Shift, radius, height));
            z = top;
        }

        return new(rings);
    }

    /// <summary>
    /// The piece with these woods in its rings of equal segments; other rings stay as they are. Each list is written as the
    /// shortest that repeats to it.
    /// </summary>
    /// <param name="piece">The piece.</param>
    /// <param name="rows">Per ring from the bottom up, per segment counter-clockwise.</param>
    /// <exception cref="BadInputException">Not one row for each ring, or not one wood for each segment.</exception>
    public static Piece Paint(Piece piece, ImmutableArray<ImmutableArray<string>> rows)
    {
        ArgumentNullException.ThrowIfNull(piece);
        if (rows.Length != piece.Rings.Length) throw new BadInputException("pattern", $"it has {rows.Length} rings, the piece {piece.Rings.Length}", "one for each ring is needed");
        return piece with { Rings = [.. piece.Rings.Select((ring, i) => Paint(ring, rows[i]))] };
    }

    private static Ring Paint(Ring ring, ImmutableArray<string> woods)
    {
        if (ring is not SegmentedRing segmented) return ring;
        if (woods.Length != segmented.Segments) throw new BadInputException($"ring {ring.Name}, pattern", $"it names {woods.Length} woods for {segmented.Segments} segments", "one for each segment is needed");
        return segmented with { Woods = Shortest(woods) };
    }

    private static ImmutableArray<string> Shortest(ImmutableArray<string> woods)
    {
        for (int period = 1; period <= woods.Length / 2; period++)
            if (woods.Length % period == 0 && Enumerable.Range(period, woods.Length - period).All(i => woods[i] == woods[i - period])) return woods[..period];
        return woods;
    }

    private static (double Radius, double Height) Seen(RingPlan ring, double bottom, double top, TurnedForm? form)
    {
        if (form is null || Sizing.Within(form, bottom, top) is not { } part) return (ring.Ring.Outside.Millimetres / 2, top - bottom);
        double from = form.Outer(part.From), to = form.Outer(part.To, Side.Below);
        double rise = part.To - part.From;
        return (form.Outer((part.From + part.To) / 2), Math.Sqrt((rise * rise) + ((to - from) * (to - from))));
    }
}
