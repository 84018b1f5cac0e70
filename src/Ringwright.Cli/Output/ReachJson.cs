using System.Text.Json;
using Ringwright.Core.Documents;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;

namespace Ringwright.Cli.Output;

/// <summary>The reach map as JSON: lengths in mm, angles in radians.</summary>
internal static class ReachJson
{
    public static void Write(Utf8JsonWriter json, ReachMap map, MeasureStyle style)
    {
        json.WriteString("shop", map.Shop.Name);
        json.WriteObjects("cells", map.Cells, cell =>
        {
            json.WriteNumber("segments", cell.Segments);
            json.WriteNumber("diameter", cell.Diameter);
            json.WriteNumber("rimEdge", cell.RimEdge);
            json.WriteNumber("sawnTip", cell.SawnTip);
            json.WriteNumber("holdingSize", cell.HoldingSize);
            json.WriteNumber("required", cell.Required);
            json.WriteNumber("achieved", cell.Achieved);
            json.WriteNumber("chance", cell.Chance);
            json.WriteNumber("dust", cell.Dust);
            json.WriteString("stop", JsonNamingPolicy.CamelCase.ConvertName(cell.Stop.ToString()));
            json.WriteString("says", ReachMap.Say(cell, map.Shop).In(style));
        });
    }
}
