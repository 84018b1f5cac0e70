using CsCheck;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Tests.Planning;

/// <summary>Random rings and shops that can be made.</summary>
internal static class AnyPiece
{
    public static readonly Gen<Shop> Shop =
        from kerf in Gen.Double[0.3, 4]
        from hold in Gen.Double[10, 100]
        from sanding in Gen.Double[0, 0.3]
        from loss in Gen.Double[0, 0.3]
        from worth in Gen.OneOf(Gen.Const((double?)null), Gen.Double[1, 400].Select(w => (double?)w))
        from kind in Gen.Enum<SledKind>()
        select new Shop
        {
            Name = "Random",
            Saw = new() { Kerf = Mm(kerf), HoldingLength = Mm(hold) },
            Sled = new() { Kind = kind },
            Boards = new() { Length = Mm(2000) },
            Sanding = new() { PerFace = Mm(sanding) },
            Hands = new() { Loss = loss, LossWorth = worth },
        };

    public static readonly Gen<Ring> Disc =
        from n in Gen.Int[3, 360]
        from diameter in Gen.Double[8, 300]
        from tip in Gen.Double[0, 0.9]
        from bore in Gen.Double[0.1, 0.9]
        from woods in Gen.Int[1, 3]
        select (Ring)new WedgeDisc
        {
            Name = "Disc",
            Segments = n,
            Diameter = Mm(diameter),
            Thickness = Mm(20),
            Tip = Mm(tip * diameter * Math.Tan(Math.PI / n)),
            Bore = Mm(bore * diameter),
            Woods = [.. new[] { "maple", "padauk", "wenge" }.Take(woods)],
        };

    public static readonly Gen<Ring> Open =
        from n in Gen.Int[3, 360]
        from diameter in Gen.Double[40, 300]
        from inner in Gen.Double[0.3, 0.9]
        select (Ring)new SegmentRing { Name = "Ring", Segments = n, Diameter = Mm(diameter), InnerDiameter = Mm(inner * diameter), Thickness = Mm(20), Woods = ["oak"] };

    public static readonly Gen<Piece> Piece = Gen.OneOf(Disc, Open).Select(ring => new Piece { Name = "Random", Rings = [ring] });

    public static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);
}
