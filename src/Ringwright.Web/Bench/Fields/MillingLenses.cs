namespace Ringwright.Web.Bench.Fields;

/// <summary>The fields of planer and rip saw: from rough wood to strips.</summary>
public static class MillingLenses
{
    private static readonly ShopLens At = new(Station.Timber, prefix: "milling.");

    /// <summary>All of them.</summary>
    public static ImmutableArray<Lens> All { get; } =
    [
        At.Lengths("roughThicknesses", "Rough boards come in", "Thicknesses, rising, with commas between", null, s => s.Milling.RoughThicknesses, (s, v) => s with { Milling = s.Milling with { RoughThicknesses = v } }),
        At.Length("thicknessAllowance", "Planed off, both faces", "Until it is flat and clean", s => s.Milling.ThicknessAllowance, (s, v) => s with { Milling = s.Milling with { ThicknessAllowance = v } }),
        At.Length("widthAllowance", "Planed off, both edges", "Until they are straight", s => s.Milling.WidthAllowance, (s, v) => s with { Milling = s.Milling with { WidthAllowance = v } }),
        At.Length("perPass", "At most in one pass", "Of the planer", s => s.Milling.PerPass, (s, v) => s with { Milling = s.Milling with { PerPass = v } }),
        At.Length("leastPlanerLength", "Shortest board to plane", "The machine’s manual says it", s => s.Milling.LeastPlanerLength, (s, v) => s with { Milling = s.Milling with { LeastPlanerLength = v } }),
    ];
}
