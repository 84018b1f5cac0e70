using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>Says why rings cannot come from one board, and what would be right.</summary>
internal static class BoardGroupCheck
{
    /// <summary>Rings of one board are made of the same wedges.</summary>
    public static void Alike(WantedFaces[] wanted)
    {
        BoardRing first = wanted[0].Ring;
        foreach (BoardRing ring in wanted.Select(w => w.Ring).Skip(1))
        {
            if (ring.Segments != first.Segments) throw Differs(ring, "segments", $"{ring.Segments}", first, $"{first.Segments}");
            if (Math.Abs(ring.Thickness.Millimetres - first.Thickness.Millimetres) > 1e-6) throw Differs(ring, "thickness", $"{ring.Thickness}", first, $"{first.Thickness}");
            if (!ring.Woods.SequenceEqual(first.Woods, StringComparer.OrdinalIgnoreCase)) throw Differs(ring, "woods", string.Join(", ", ring.Woods), first, string.Join(", ", first.Woods));
        }
    }

    /// <summary>A slot wider than the board is thick is no cut.</summary>
    public static void Kerf(BoardRing ring, double thickness, Length kerf)
    {
        if (kerf.Millimetres >= thickness)
            throw new BadInputException($"ring {ring.Name}, thickness", $"{ring.Thickness} is no more than the kerf of {kerf}", "a thicker board or a thinner blade is needed");
    }

    /// <summary>Refuses neighbours that no cut can part.</summary>
    /// <param name="ring">The ring outside the cut.</param>
    /// <param name="next">The ring inside it; null for the middle that is left.</param>
    /// <param name="range">The tilts the cut may have.</param>
    /// <param name="opened">The same if the outer ring had another inner diameter, mm.</param>
    public static void Room(BoardRing ring, BoardRing? next, TiltRange range, Func<double, TiltRange> opened)
    {
        if (!range.IsEmpty) return;
        if (next is null)
            throw new BadInputException($"ring {ring.Name}, innerDiameter", $"{ring.InnerDiameter} leaves no room for the cut inside it", "a larger inner diameter, or less wood for turning, is needed");
        string needs = range.Most < 0 ? "no cut fits between them" : $"the cut between them would have to tilt by {Degrees(range.LeastTilt)}, and {Degrees(range.MostTilt)} is the most";
        throw new BadInputException($"ring {ring.Name}, board", $"in {ring.Board} it collides with {next.Name}: {needs}", Right(ring, next, opened));
    }

    // Opening the outer ring makes room at both its faces, so halving finds the least that does; the two must still meet when stacked.
    private static string Right(BoardRing ring, BoardRing next, Func<double, TiltRange> opened)
    {
        double small = ring.InnerDiameter!.Value.Millimetres, large = Math.Min(next.Outside.Millimetres, ring.Outside.Millimetres);
        if (large <= small || opened(large).IsEmpty) return "it needs a board of its own";
        while (large - small > 1e-3)
        {
            double middle = (small + large) / 2;
            if (opened(middle).IsEmpty) small = middle;
            else large = middle;
        }

        double least = Math.Ceiling(large * 100) / 100;
        return string.Create(CultureInfo.InvariantCulture, $"an inner diameter of at least {least:0.##} mm, or a board of its own, is needed");
    }

    private static BadInputException Differs(BoardRing ring, string field, string own, BoardRing first, string other) =>
        new($"ring {ring.Name}, {field}", $"{own}, but {first.Name} of the same board has {other}", $"rings of {ring.Board} are sawn from the same wedges and need the same");

    private static string Degrees(double radians) => string.Create(CultureInfo.InvariantCulture, $"{double.RadiansToDegrees(radians):0.##}°");
}
