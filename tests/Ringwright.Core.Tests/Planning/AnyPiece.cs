using CsCheck;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

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

    public static readonly Gen<OpenRing> Gapped =
        from n in Gen.Int[3, 120]
        from diameter in Gen.Double[40, 300]
        from inner in Gen.Double[0.3, 0.9]
        from gap in Gen.Double[0.05, 0.85]
        from shift in Gen.Int[0, 2]
        select new OpenRing { Name = "Gapped", Segments = n, Diameter = Mm(diameter), InnerDiameter = Mm(inner * diameter), Thickness = Mm(12), Gap = Angle.FromDegrees(gap * 360 / n), Shift = shift / 2.0, Woods = ["ash", "wenge"] };

    private static readonly Gen<RingPart> Part =
        from share in Gen.Int[2, 4]
        from wood in Gen.Bool
        select new RingPart { Wood = wood ? "maple" : "cherry", Share = share / 2.0 };

    private static readonly Gen<RingPart[]> SegmentAndSpacers =
        from segment in Part
        from layers in Gen.Int[0, 2]
        from thickness in Gen.Double[0.3, 4].Array[layers]
        from wood in Gen.Bool
        select (RingPart[])[segment, .. thickness.Select(t => new RingPart { Wood = wood ? "wenge" : "maple", Thickness = Mm(t) })];

    /// <summary>Mixed rings that can be made.</summary>
    public static readonly Gen<MixedRing> Mixed = (
        from parts in SegmentAndSpacers.Array[1, 4]
        from repeats in Gen.Int[3, 12]
        from diameter in Gen.Double[60, 300]
        from inner in Gen.Double[0.4, 0.9]
        from shift in Gen.Double[0, 1]
        select new MixedRing { Name = "Mixed", Diameter = Mm(diameter), InnerDiameter = Mm(inner * diameter), Thickness = Mm(15), Shift = shift, Parts = [.. parts.SelectMany(p => p)], Repeats = repeats })
        .Where(CanBeMade);

    public static readonly Gen<Piece> Piece = Gen.OneOf(Disc, Open, Gapped.Select(r => (Ring)r), Mixed.Select(r => (Ring)r)).Select(ring => new Piece { Name = "Random", Rings = [ring] });

    private static bool CanBeMade(Ring ring)
    {
        try
        {
            Planner.Plan(new() { Name = "Random", Rings = [ring] }, Pieces.Shop.Starting with { Boards = new() { Length = Mm(2000) } });
            return true;
        }
        catch (BadInputException)
        {
            return false;
        }
    }

    public static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);
}
