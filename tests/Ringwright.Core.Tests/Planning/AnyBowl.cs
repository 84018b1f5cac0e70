using CsCheck;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Tests.Planning;

/// <summary>Random bowls and domes: a base and rings out of one board, each a step wider than the one below, or the same upside down.</summary>
internal sealed record AnyBowl(Piece Piece, Shop Shop, double[] Interfaces, double[] Walls)
{
    public static readonly Gen<AnyBowl> Any =
        from rings in Gen.Int[1, 6]
        from height in Gen.Double[6, 40]
        from foot in Gen.Double[30, 60]
        from room in Gen.Double[0.95, 1.6].Array[6]
        from walls in Gen.Double[1, 12].Array[6]
        from same in Gen.Bool
        from allowance in Gen.Double[0, 2]
        from kerf in Gen.Double[0.3, 2]
        from segments in Gen.Int[3, 24]
        from dome in Gen.Bool
        let all = walls.Select(w => same ? walls[0] : w).ToArray()
        select Of(height, foot, [.. Enumerable.Range(0, rings).Select(i => room[i] * (Math.Max(all[i], all[Math.Min(i + 1, rings - 1)]) + (2 * allowance) + (1.2 * kerf)))], all, allowance, kerf, segments, dome);

    /// <summary>Radii at the faces between the layers, from the base on; a wall is told at the lower face of each ring.</summary>
    public static AnyBowl Of(double height, double foot, double[] steps, double[] walls, double allowance, double kerf, int segments, bool dome)
    {
        double[] faces = [.. steps.Aggregate(new List<double> { foot }, (list, s) => [.. list, list[^1] + s])];
        BoardRing[] rings =
        [
            .. steps.Select((_, i) => new BoardRing
            {
                Name = $"Ring {i}",
                Segments = segments,
                Diameter = AnyPiece.Mm(2 * faces[i + 1]),
                InnerDiameter = AnyPiece.Mm(2 * (faces[i] - walls[i])),
                Thickness = AnyPiece.Mm(height),
                Allowance = AnyPiece.Mm(allowance),
                Shift = i % 2 / 2.0,
                Woods = segments % 3 == 0 ? ["maple", "padauk", "wenge"] : ["maple"],
                Board = "Board A",
            }),
        ];
        SolidLayer foot0 = new() { Name = "Base", Diameter = AnyPiece.Mm(2 * foot), Thickness = AnyPiece.Mm(5), Wood = "oak" };
        Ring[] all = [foot0, .. rings];
        Shop shop = Shop.Starting with { Saw = new() { Kerf = AnyPiece.Mm(kerf) }, Boards = new() { Length = AnyPiece.Mm(3000) } };
        return new(new() { Name = "Random", Rings = [.. dome ? all.Reverse() : all] }, shop, faces, walls);
    }
}
