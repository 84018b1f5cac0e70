using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Ringwright.Core.Pieces;

/// <summary>How quick these hands are at the work that is neither sawing, sanding nor gluing. Starting values are rough guesses, no source.</summary>
public sealed record Pace
{
    /// <summary>Minutes to set planer, rip fence or stop once, a trial cut included.</summary>
    public double MinutesPerSetting { get; init; } = 5;

    /// <summary>Minutes to rip and plane one strip at a setting that stands.</summary>
    public double MinutesPerStrip { get; init; } = 3;

    /// <summary>Minutes to set the fences to one angle, a test half included.</summary>
    public double MinutesPerFenceSetting { get; init; } = 15;

    /// <summary>Minutes to mount the work once on the lathe.</summary>
    public double MinutesPerMounting { get; init; } = 10;

    /// <summary>Minutes to turn away one litre (1 dm³) of wood.</summary>
    public double MinutesPerLitre { get; init; } = 40;

    /// <summary>Minutes of last cuts and sanding for one square decimetre of turned surface.</summary>
    public double MinutesPerSquareDecimetre { get; init; } = 4;

    /// <summary>How many times longer or shorter a work may take than these values say; 1 when they are timed exactly.</summary>
    public double Spread { get; init; } = 1.6;

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}

/// <summary>What wood and time are worth. Without prices only time and wood are told.</summary>
public sealed record Money
{
    /// <summary>Word or sign of the currency, printed behind amounts; none when absent.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Currency { get; init; }

    /// <summary>Prices of woods.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ImmutableArray<WoodPrice>? Woods { get; init; }

    /// <summary>Worth of one hour of work, in the shop's currency; not counted when absent.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? Hour { get; init; }

    /// <summary>Glue, abrasives, finish and the rest for one piece, in the shop's currency; not counted when absent.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? Supplies { get; init; }

    /// <summary>Share put on top of the cost for the price: 0.2 for a fifth; none when absent.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? Markup { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}

/// <summary>What a price of wood is for.</summary>
public enum WoodMeasure
{
    /// <summary>One litre, 1 dm³.</summary>
    [JsonStringEnumMemberName("litre")]
    Litre,

    /// <summary>One board foot, 144 in³.</summary>
    [JsonStringEnumMemberName("board foot")]
    BoardFoot,

    /// <summary>One cubic metre.</summary>
    [JsonStringEnumMemberName("cubic metre")]
    CubicMetre,
}

/// <summary>The price of a wood.</summary>
public sealed record WoodPrice
{
    /// <summary>The wood, as rings name it.</summary>
    public required string Wood { get; init; }

    /// <summary>What one measure of it costs, rough as it is bought, in the shop's currency.</summary>
    public required double Price { get; init; }

    /// <summary>What the price is for.</summary>
    public WoodMeasure Per { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}
