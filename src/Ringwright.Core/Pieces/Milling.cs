using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Pieces;

/// <summary>From rough wood to strips. Starting values are common practice, no source.</summary>
public sealed record Milling
{
    // Before everything that makes an instance.
    private static readonly ImmutableArray<Length> Metric = [.. new[] { 27.0, 34, 41, 54, 65, 80 }.Select(Length.FromMillimetres)];

    /// <summary>Thicknesses in which rough boards can be had, rising.</summary>
    public ImmutableArray<Length> RoughThicknesses { get; init; } = Metric;

    /// <summary>Wood to take off both faces together until a rough board is flat and clean.</summary>
    public Length ThicknessAllowance { get; init; } = Length.FromMillimetres(2);

    /// <summary>Wood to take off both edges of a ripped strip together until they are straight and parallel.</summary>
    public Length WidthAllowance { get; init; } = Length.FromMillimetres(3);

    /// <summary>Most that the planer takes off in one pass.</summary>
    public Length PerPass { get; init; } = Length.FromMillimetres(1);

    /// <summary>Shortest board that goes safely over jointer or through planer; the machine's manual says more than any rule.</summary>
    public Length LeastPlanerLength { get; init; } = Length.FromMillimetres(300);

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }

    /// <summary>The starting values in round inches.</summary>
    public static Milling InInches { get; } = new()
    {
        RoughThicknesses = [.. new[] { "1 in", "1 1/4 in", "1 1/2 in", "2 in", "2 1/2 in", "3 in" }.Select(t => Length.Parse(t))],
        ThicknessAllowance = Length.Parse("3/32 in"),
        WidthAllowance = Length.Parse("1/8 in"),
        PerPass = Length.Parse("1/32 in"),
        LeastPlanerLength = Length.Parse("12 in"),
    };
}
