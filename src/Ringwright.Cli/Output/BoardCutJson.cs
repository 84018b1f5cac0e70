using System.Text.Json;
using Ringwright.Core.Documents;
using Ringwright.Core.Planning;

namespace Ringwright.Cli.Output;

/// <summary>The rings of simulated boards as JSON: mm, shares from 0 to 1.</summary>
internal static class BoardCutJson
{
    public static void Write(Utf8JsonWriter json, BoardCutForecast forecast)
    {
        json.WriteNumber("boards", forecast.Boards);
        json.WriteNumber("chance", forecast.Chance);
        json.WriteObjects("rings", forecast.Rings, ring =>
        {
            json.WriteString("ring", ring.Ring.Ring.Name);
            json.WriteNumber("tilt", ring.Ring.Inside.Tilt);
            json.WriteNumber("outsideMiddle", ring.OuterReserve.Middle);
            json.WriteNumber("outsideLow", ring.OuterReserve.Low);
            json.WriteNumber("insideMiddle", ring.InnerReserve.Middle);
            json.WriteNumber("insideLow", ring.InnerReserve.Low);
            json.WriteNumber("chance", ring.Chance);
        });
    }
}
