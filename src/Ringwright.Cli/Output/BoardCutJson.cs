using System.Text.Json;
using Ringwright.Core.Planning;

namespace Ringwright.Cli.Output;

/// <summary>The rings of simulated boards as JSON: mm, shares from 0 to 1.</summary>
internal static class BoardCutJson
{
    public static void Write(Utf8JsonWriter json, BoardCutForecast forecast)
    {
        json.WriteNumber("boards", forecast.Boards);
        json.WriteNumber("chance", forecast.Chance);
        json.WriteStartArray("rings");
        foreach (BoardRingOutcome ring in forecast.Rings)
        {
            json.WriteStartObject();
            json.WriteString("ring", ring.Ring.Ring.Name);
            json.WriteNumber("tilt", ring.Ring.Inside.Tilt);
            json.WriteNumber("outsideMiddle", ring.OuterReserve.Middle);
            json.WriteNumber("outsideLow", ring.OuterReserve.Low);
            json.WriteNumber("insideMiddle", ring.InnerReserve.Middle);
            json.WriteNumber("insideLow", ring.InnerReserve.Low);
            json.WriteNumber("chance", ring.Chance);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
