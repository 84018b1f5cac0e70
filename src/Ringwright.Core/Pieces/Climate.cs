using System.Text.Json;
using System.Text.Json.Serialization;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Pieces;

/// <summary>
/// The air where pieces are glued and where they will live, by season. Starting values are common practice, no source: a shop
/// that is heated a little, a home that is heated in winter.
/// </summary>
public sealed record Climate
{
    /// <summary>Where the piece is glued and turned.</summary>
    public Seasons Shop { get; init; } = Seasons.Of("16 °C", 45, "24 °C", 55);

    /// <summary>Where the piece will live.</summary>
    public Seasons Home { get; init; } = Seasons.Of("21 °C", 35, "24 °C", 55);

    /// <summary>Moisture measured in the wood when it is glued, percent; absent: somewhere between the shop's winter and summer.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? WoodMoisture { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }

    /// <summary>The starting values in round °F.</summary>
    public static Climate InFahrenheit { get; } = new() { Shop = Seasons.Of("60 °F", 45, "75 °F", 55), Home = Seasons.Of("70 °F", 35, "75 °F", 55) };
}

/// <summary>The air of one place through the year.</summary>
public sealed record Seasons
{
    /// <summary>In winter.</summary>
    public required Air Winter { get; init; }

    /// <summary>In summer.</summary>
    public required Air Summer { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }

    internal static Seasons Of(string winter, double winterHumidity, string summer, double summerHumidity) => new()
    {
        Winter = new() { Temperature = Temperature.Parse(winter), Humidity = winterHumidity },
        Summer = new() { Temperature = Temperature.Parse(summer), Humidity = summerHumidity },
    };
}

/// <summary>The air of one place and season, as it is for weeks.</summary>
public sealed record Air
{
    /// <summary>Its temperature.</summary>
    public required Temperature Temperature { get; init; }

    /// <summary>Its relative humidity, percent.</summary>
    public required double Humidity { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}
