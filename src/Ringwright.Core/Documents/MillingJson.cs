using System.Text.Json;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Documents;

/// <summary>A milling plan as JSON: lengths in mm, volumes in mm³.</summary>
public static class MillingJson
{
    /// <summary>Writes the fields of a milling plan into the object that is open.</summary>
    public static void Write(Utf8JsonWriter json, MillingPlan plan, MeasureStyle style)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(plan);
        PlanJson.WriteFigures(json, plan.Figures, style);
        json.WriteStartArray("planer");
        foreach (PlanerSetting setting in plan.Planer) Write(json, setting);
        json.WriteEndArray();
        json.WriteStartArray("rip");
        foreach (RipSetting setting in plan.Rip)
        {
            json.WriteStartObject();
            json.WriteNumber("width", setting.Width);
            json.WriteNumber("roughWidth", setting.Rough);
            PlanJson.WriteTexts(json, "rings", setting.Strips.SelectMany(s => s.Rings).Distinct());
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("nearWidths");
        foreach (NearWidth near in plan.Near)
        {
            json.WriteStartObject();
            json.WriteString("ring", near.Ring);
            json.WriteNumber("width", near.Width);
            json.WriteNumber("wider", near.Wider);
            json.WriteString("as", near.Other);
            json.WriteNumber("extraWood", near.Extra);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        PlanJson.WriteTexts(json, "steps", plan.Steps().Select(s => s.In(style)));
        PlanJson.WriteTexts(json, "mind", plan.Minds.Select(s => s.In(style)));
    }

    private static void Write(Utf8JsonWriter json, PlanerSetting setting)
    {
        json.WriteStartObject();
        json.WriteNumber("thickness", setting.Thickness);
        if (setting.Rough is double rough)
        {
            json.WriteNumber("roughThickness", rough);
            json.WriteNumber("slices", setting.Slices);
            json.WriteNumber("passes", setting.Passes);
        }

        json.WriteStartArray("strips");
        foreach (MillingStrip strip in setting.Strips)
        {
            json.WriteStartObject();
            json.WriteString("use", JsonNamingPolicy.CamelCase.ConvertName(strip.Use.ToString()));
            json.WriteString("wood", strip.Wood);
            if (strip.Width is double width) json.WriteNumber("width", width);
            json.WriteNumber("length", strip.Length);
            json.WriteNumber("boards", strip.Boards);
            PlanJson.WriteTexts(json, "rings", strip.Rings);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
