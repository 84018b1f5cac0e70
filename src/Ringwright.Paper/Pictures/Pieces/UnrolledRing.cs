using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Turning;

namespace Ringwright.Paper.Pictures.Pieces;

/// <summary>A ring's outside laid flat: as long as it is around in the mean of its outline, as high as the outline is long.</summary>
/// <param name="Ring">The ring.</param>
/// <param name="Radius">Mean radius along the outline, mm: the strip has the area of what is seen.</param>
/// <param name="Low">Height of its lower edge in the picture, mm.</param>
/// <param name="High">Height of its upper edge, mm.</param>
internal sealed record UnrolledRing(PieceRing Ring, double Radius, double Low, double High)
{
    /// <summary>All of it is in view.</summary>
    public static readonly AroundView Turn = new(-Math.PI, Math.PI);

    /// <summary>Half its length, mm.</summary>
    public double Half => Math.PI * Radius;

    /// <summary>Half way up, at the mean radius.</summary>
    public WallLevel Middle => new((Ring.Levels[0].Z + Ring.Levels[^1].Z) / 2, Radius, 0);

    /// <summary>Where a level of the wall lies in the picture, mm.</summary>
    public double HeightOf(WallLevel level) => Low + ((High - Low) * (level.Z - Ring.Levels[0].Z) / (Ring.Levels[^1].Z - Ring.Levels[0].Z));

    /// <summary>Its pieces of wood; their sides run straight between the ring's faces.</summary>
    public IEnumerable<SeenSegment> Seen() => Ring.Seen([Ring.Levels[0], Ring.Levels[^1]]);

    /// <summary>One side of a piece in the picture, mm, the piece moved by whole turns.</summary>
    public IEnumerable<Vector2D> Edge(SeenSegment segment, double move, Func<SeenLevel, double> side) =>
        segment.Levels.Select(level => new Vector2D(Radius * Turn.Clamp(side(level) + move), HeightOf(level.Wall)));

    /// <summary>The rings from the bottom up, each on the one below; those turned away altogether are left out.</summary>
    public static ImmutableArray<UnrolledRing> Of(ImmutableArray<PieceRing> rings)
    {
        var rows = ImmutableArray.CreateBuilder<UnrolledRing>(rings.Length);
        double low = 0;
        foreach (PieceRing ring in rings.Where(r => r.Turned is not null))
        {
            (double length, double area) = Outline(ring.Levels);
            rows.Add(new(ring, area / length, low, low + length));
            low += length;
        }

        return rows.DrainToImmutable();
    }

    // A step's level face is not seen from the side and does not count.
    private static (double Length, double Area) Outline(ImmutableArray<WallLevel> levels)
    {
        double length = 0, area = 0;
        for (int i = 1; i < levels.Length; i++)
        {
            (WallLevel a, WallLevel b) = (levels[i - 1], levels[i]);
            if (a.Z == b.Z) continue;
            double along = Math.Sqrt(((b.Z - a.Z) * (b.Z - a.Z)) + ((b.Outer - a.Outer) * (b.Outer - a.Outer)));
            (length, area) = (length + along, area + (along * (a.Outer + b.Outer) / 2));
        }

        return (length, area);
    }
}
