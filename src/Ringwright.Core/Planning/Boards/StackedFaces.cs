using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>Where a board ring rests on a board ring below it: the glue surface as sawn and as turned. Lengths in mm.</summary>
/// <param name="Below">The ring it rests on.</param>
/// <param name="AsSawn">Width of wood on wood as both are sawn; below 0 they do not meet.</param>
/// <param name="AsTurned">The same when both are turned to their sizes, less for a wall that bends.</param>
internal sealed record StackedFaces(BoardRing Below, double AsSawn, double AsTurned)
{
    /// <summary>The joint below ring <paramref name="index"/> of the piece, or null when no board ring lies there.</summary>
    public static StackedFaces? Of(ImmutableArray<Ring> all, int index, IReadOnlyDictionary<string, BoardGroupPlan> boards)
    {
        if (index == 0 || all[index - 1] is not BoardRing below) return null;
        var ring = (BoardRing)all[index];
        FaceRadii lower = boards[below.Board][below.Name].Face(up: true), upper = boards[ring.Board][ring.Name].Face(up: false);
        double sawn = Math.Min(lower.Outer, upper.Outer) - Math.Max(lower.Inner, upper.Inner);
        double turned = Math.Min(below.Outside.Millimetres, ring.Outside.Millimetres) - Math.Max(Inner(below), Inner(ring));
        return new(below, sawn, turned / 2);
    }

    /// <summary>Enters both widths.</summary>
    public void Add(BoardRing ring, BoardGroupPlan own, BoardGroupPlan other, FigureBook book)
    {
        FaceRadii lower = other[Below.Name].Face(up: true), upper = own[ring.Name].Face(up: false);
        book.Know("ro", "smaller outside of the two faces, radius", Math.Min(lower.Outer, upper.Outer), Quantity.Length);
        book.Know("ri", "larger inside of the two faces, radius", Math.Max(lower.Inner, upper.Inner), Quantity.Length);
        book.Know("Ro", $"smaller outside of this ring and {Below.Name}, turned", Math.Min(Below.Outside.Millimetres, ring.Outside.Millimetres), Quantity.Length);
        book.Know("Ri", $"larger inside of this ring and {Below.Name}, turned", Math.Max(Inner(Below), Inner(ring)), Quantity.Length);
        book.Add("glue-width", $"Glue surface on {Below.Name}, as sawn", AsSawn, Quantity.Length, "ro − ri", "ro ri",
            "Width of wood on wood when the ring is centred on the one below.", Sources.Cones);
        book.Add("glue-width-turned", $"Glue surface on {Below.Name}, as turned", AsTurned, Quantity.Length, "(Ro − Ri)/2", "Ro Ri",
            "What holds the two together in the finished wall.", Sources.Cones);
    }

    private static double Inner(Ring ring) => 2 * WantedFaces.Inner(ring);
}
