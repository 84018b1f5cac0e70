using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Profiles;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Planning;

/// <summary>Fills in the sizes that rings leave to the piece's shape: what must be turned out of each over its whole height.</summary>
internal static class Sizing
{
    // Levels are close enough together that the wall leaves their chords by this at most, mm.
    private const double Chord = 0.01;

    /// <summary>The rings with all their sizes.</summary>
    /// <exception cref="BadInputException">A ring lies beside the shape, or needs an inside where the shape is solid.</exception>
    public static ImmutableArray<Ring> Of(Piece piece, TurnedForm? form)
    {
        if (form is null) return piece.Rings;
        var rings = ImmutableArray.CreateBuilder<Ring>(piece.Rings.Length);
        double z = 0;
        foreach (Ring ring in piece.Rings)
        {
            double top = z + ring.Thickness.Millimetres;
            rings.Add(Sized(ring, z, top, form, piece.Shape!));
            z = top;
        }

        return rings.MoveToImmutable();
    }

    /// <summary>The part of the heights from <paramref name="bottom"/> to <paramref name="top"/> that the form takes; none when they lie beside it.</summary>
    public static (double From, double To)? Within(TurnedForm form, double bottom, double top)
    {
        double from = Math.Max(bottom, form.Bottom), to = Math.Min(top, form.Top);
        return to - from > SolidCheck.Resolution ? (from, to) : null;
    }

    private static Ring Sized(Ring ring, double bottom, double top, TurnedForm form, Shape shape)
    {
        if (Within(form, bottom, top) is not { } part)
        {
            if (ring.Diameter is not null && (ring as IHollowRing)?.InnerDiameter is not null) return ring;
            throw new BadInputException($"ring {ring.Name}", $"it lies from {Text(bottom)} to {Text(top)} mm, the shape ends at {Text(form.Top)} mm", "leave the ring out, or make the shape higher");
        }

        WallExtents wall = form.Extents(part.From, part.To);
        if (ring is StaveRing stave) return Staves(stave, (bottom, top), form.SectionWithin(part.From, part.To, Chord));
        Length outer = ring.Diameter ?? Length.FromMillimetres(2 * wall.MaxOuter);
        return ring switch
        {
            WedgeDisc disc => disc with { Diameter = outer, Bore = disc.Bore ?? BoreOf(shape, wall) },
            SolidLayer layer => layer with { Diameter = outer },
            SegmentRing r => r with { Diameter = outer, InnerDiameter = r.InnerDiameter ?? Inside(r, wall) },
            OpenRing r => r with { Diameter = outer, InnerDiameter = r.InnerDiameter ?? Inside(r, wall) },
            MixedRing r => r with { Diameter = outer, InnerDiameter = r.InnerDiameter ?? Inside(r, wall) },
            LaminatedRing r => r with { Diameter = outer, InnerDiameter = r.InnerDiameter ?? Inside(r, wall) },
            BoardRing r => r with { Diameter = outer, InnerDiameter = r.InnerDiameter ?? Inside(r, wall) },
            _ => ring,
        };
    }

    // A bore right through goes through every disc; a floor is turned, not bored.
    private static Length? BoreOf(Shape shape, WallExtents wall) =>
        shape.Inside is Bore { Floor: null } bore && wall.MinInner > 0 ? bore.Diameter : null;

    private static Length Inside(Ring ring, WallExtents wall) => wall.MinInner > 0
        ? Length.FromMillimetres(2 * wall.MinInner)
        : throw new BadInputException($"ring {ring.Name}, innerDiameter", "the shape is solid somewhere within its height", "make it a wedge disc or a solid layer, or let it begin above the floor");

    // The straight wall that leans with the staves and holds the turned one, from the ring's one face to the other.
    private static StaveRing Staves(StaveRing ring, (double Bottom, double Top) faces, WallSection wall)
    {
        Angle lean = ring.Lean ?? Angle.FromRadians(StaveWall.LeanOf(wall));
        (double outside, double inside) = StaveWall.Diameters(wall, lean.Radians, faces.Bottom, faces.Top);
        if (ring.InnerDiameter is null && wall.Levels.Any(l => l.Inner <= 0)) Inside(ring, default);
        if (ring.InnerDiameter is null && inside <= 2 * Chord)
            throw new BadInputException($"ring {ring.Name}, lean", $"at {lean} the staves meet the axis before they reach the ring's narrower end", "a smaller lean, or several rings above each other, are needed");
        return ring with
        {
            Lean = lean,
            Diameter = ring.Diameter ?? Length.FromMillimetres(outside + (2 * Chord)),
            InnerDiameter = ring.InnerDiameter ?? Length.FromMillimetres(inside - (2 * Chord)),
        };
    }

    private static string Text(double mm) => mm.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture);
}
