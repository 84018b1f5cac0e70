using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Paper.Tests.JobSheets;

/// <summary>Plans of known rings.</summary>
internal static class Example
{
    /// <summary>24 wedges, 19 mm, two woods, a bore of 7 mm.</summary>
    public static WedgeDisc Disc { get; } = new()
    {
        Name = "Disc",
        Segments = 24,
        Diameter = AnyPlan.Mm(19),
        Thickness = AnyPlan.Mm(30),
        Allowance = AnyPlan.Mm(0),
        Woods = ["maple", "padauk"],
        Bore = AnyPlan.Mm(7),
    };

    /// <summary>16 segments, 140 mm outside, 108 mm inside.</summary>
    public static SegmentRing Open { get; } = new()
    {
        Name = "Ring",
        Segments = 16,
        Diameter = AnyPlan.Mm(140),
        InnerDiameter = AnyPlan.Mm(108),
        Thickness = AnyPlan.Mm(20),
        Woods = ["walnut", "walnut", "walnut", "cherry"],
    };

    public static Plan PlanOf(Ring ring, SledKind kind = SledKind.TwoFences) => Planner.Plan(
        new() { Name = "Example", Rings = [ring] },
        Shop.Starting with { Sled = new() { Kind = kind }, Boards = new() { Length = AnyPlan.Mm(3000) } });
}
