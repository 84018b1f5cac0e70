using CsCheck;
using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Paper.Tests.JobSheets;

/// <summary>Random plans from one end of what is allowed to the other, with names as long as they may be.</summary>
internal static class AnyPlan
{
    private static readonly string[] Names = ["maple", "padauk", "African blackwood from an old clarinet", "holly", new('W', 40), "oak", "ash"];

    private static readonly Gen<Shop> Shops =
        from kerf in Gen.Double[0.1, 5]
        from hold in Gen.Double[10, 120]
        from sanding in Gen.Double[0, 0.5]
        from kind in Gen.Enum<SledKind>()
        from rule in Gen.Double[20, 1200]
        from board in Gen.Double[2000, 10000]
        select new Shop
        {
            Name = "Random",
            Saw = new() { Kerf = Mm(kerf), HoldingLength = Mm(hold) },
            Sled = new() { Kind = kind, RuleDistance = Mm(rule) },
            Boards = new() { Length = Mm(board) },
            Sanding = new() { PerFace = Mm(sanding) },
        };

    private static readonly Gen<Ring> Rings =
        from n in Gen.OneOf(Gen.Int[3, 48], Gen.Int[3, 360])
        from diameter in Gen.OneOf(Gen.Double[8, 60], Gen.Double[8, 600], Gen.Double[0.5, 3000])
        from inner in Gen.Double[0.1, 0.9]
        from kind in Gen.Int[0, 4]
        from woods in Gen.OneOf(Gen.Int[1, 4], Gen.Int[1, 360])
        from wide in Gen.Bool
        select Ring(n, diameter, inner, kind, Math.Min(woods, n), wide);

    /// <summary>Plans of one ring. A ring that no saw could make is replaced by a plain one.</summary>
    public static readonly Gen<Plan> Plans = Gen.Select(Rings, Shops, Gen.Enum<LengthUnit>()).Select(
        (ring, shop, unit) => Plan(new Piece { Name = new string('M', 120), Units = unit, Rings = [ring] }, shop));

    public static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);

    private static Plan Plan(Piece piece, Shop shop)
    {
        try
        {
            return Planner.Plan(piece, shop);
        }
        catch (BadInputException)
        {
            return Planner.Plan(piece with { Rings = [Ring(12, 100, 0.7, 0, 2, false)] }, shop);
        }
    }

    // Every third segment is wider, every second has spacers of two layers behind it.
    private static IEnumerable<RingPart> Parts(string wood, int i) =>
    [
        new() { Wood = wood, Share = i % 3 == 0 ? 1.5 : 1 },
        .. i % 2 == 0 ? new RingPart[] { new() { Wood = "wenge", Thickness = Mm(0.5) }, new() { Wood = "maple", Thickness = Mm(1.5) } } : [],
    ];

    private static Ring Ring(int n, double diameter, double inner, int kind, int woods, bool wide)
    {
        string name = wide ? new string('W', 60) : "Disc";
        string[] pattern = [.. Enumerable.Range(0, woods).Select(i => i < Names.Length ? Names[i] : $"wood number {i}")];
        double tip = kind == 2 ? inner * diameter * Math.Tan(Math.PI / n) : 0;
        if (kind == 3)
            return new OpenRing { Name = name, Segments = n, Diameter = Mm(diameter), InnerDiameter = Mm(inner * diameter), Thickness = Mm(20), Allowance = Mm(0.01 * diameter), Gap = Angle.FromDegrees(300 * inner / n), Woods = [.. pattern] };
        if (kind == 4)
            return new MixedRing { Name = name, Diameter = Mm(diameter), InnerDiameter = Mm(inner * diameter), Thickness = Mm(20), Allowance = Mm(0.01 * diameter), Parts = [.. pattern.SelectMany(Parts)], Repeats = Math.Max(1, n / woods) };
        return kind == 0
            ? new SegmentRing { Name = name, Segments = n, Diameter = Mm(diameter), InnerDiameter = Mm(inner * diameter), Thickness = Mm(20), Allowance = Mm(0.01 * diameter), Woods = [.. pattern] }
            : new WedgeDisc { Name = name, Segments = n, Diameter = Mm(diameter), Thickness = Mm(20), Tip = Mm(tip), Bore = kind == 1 ? Mm(inner * diameter) : null, Woods = [.. pattern] };
    }
}
