using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Web.Bench.Fields;

/// <summary>The fields of the lathe, of what holds the work on it, and of how it is cut.</summary>
public static class LatheLenses
{
    private static readonly ShopLens At = new(Station.Lathe, prefix: "lathe.");

    /// <summary>Those that every shop has.</summary>
    public static ImmutableArray<Lens> All { get; } =
    [
        At.Length("swing", "Swing", "Largest diameter over the bed", "not checked", s => s.Lathe.Swing, (s, v) => s with { Lathe = s.Lathe with { Swing = v } }),
        At.Length("between", "Between the centres", "Longest work", "not checked", s => s.Lathe.Between, (s, v) => s with { Lathe = s.Lathe with { Between = v } }),
        At.Number("slowestTurns", "Slowest speed", "Turns a minute", "rpm", "not checked", s => s.Lathe.SlowestTurns, (s, v) => s with { Lathe = s.Lathe with { SlowestTurns = v } }),
        At.Lengths("drills", "Drills at hand", "With commas between", "any", s => s.Lathe.Drills ?? [], (s, v) => s with { Lathe = s.Lathe with { Drills = v.IsEmpty ? null : v } }),
        At.Angle("drillPoint", "Point of the drills", "Its full angle; 180° has none", s => s.Lathe.DrillPoint, (s, v) => s with { Lathe = s.Lathe with { DrillPoint = v } }),
        At.Length("roughCut", "One roughing cut", "On the radius", s => s.Lathe.RoughCut, (s, v) => s with { Lathe = s.Lathe with { RoughCut = v } }),
        At.Length("finishAllowance", "Left by roughing", "On each side of the wall", s => s.Lathe.FinishAllowance, (s, v) => s with { Lathe = s.Lathe with { FinishAllowance = v } }),
        At.Number("toolForce", "Push of the tool", "That the holding must bear", "N", s => s.Lathe.ToolForce, (s, v) => s with { Lathe = s.Lathe with { ToolForce = v } }),
    ];

    /// <summary>What the chuck's jaws grip, once that is told.</summary>
    public static IEnumerable<Lens> Jaws(Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        if (shop.Lathe.Jaws is null) return [];
        Lens Of(string key, string label, Func<Jaws, Length> get, Func<Jaws, Length, Jaws> set) =>
            At.Length($"jaws.{key}", label, "", s => get(s.Lathe.Jaws!), (s, v) => s with { Lathe = s.Lathe with { Jaws = set(s.Lathe.Jaws!, v) } });
        return
        [
            Of("tenonFrom", "Tenon, smallest", j => j.TenonFrom, (j, v) => j with { TenonFrom = v }),
            Of("tenonTo", "Tenon, largest", j => j.TenonTo, (j, v) => j with { TenonTo = v }),
            Of("recessFrom", "Recess, smallest", j => j.RecessFrom, (j, v) => j with { RecessFrom = v }),
            Of("recessTo", "Recess, largest", j => j.RecessTo, (j, v) => j with { RecessTo = v }),
        ];
    }

    /// <summary>Jaws to start with, to be replaced by one's own. Common practice, no source.</summary>
    public static Jaws UsualJaws(LengthUnit unit) => unit == LengthUnit.Inch
        ? new() { TenonFrom = Length.Parse("1 1/2 in"), TenonTo = Length.Parse("2 1/8 in"), RecessFrom = Length.Parse("2 in"), RecessTo = Length.Parse("2 3/4 in") }
        : new() { TenonFrom = Length.Parse("38 mm"), TenonTo = Length.Parse("54 mm"), RecessFrom = Length.Parse("50 mm"), RecessTo = Length.Parse("70 mm") };
}
