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
        json.WriteObjects("planer", plan.Planer, setting => Write(json, setting));
        json.WriteObjects("rip", plan.Rip, setting =>
        {
            json.WriteNumber("width", setting.Width);
            json.WriteNumber("roughWidth", setting.Rough);
            json.WriteTexts("rings", setting.Strips.SelectMany(s => s.Rings).Distinct());
        });
        json.WriteObjects("nearWidths", plan.Near, near =>
        {
            json.WriteString("ring", near.Ring);
            json.WriteNumber("width", near.Width);
            json.WriteNumber("wider", near.Wider);
            json.WriteString("as", near.Other);
            json.WriteNumber("extraWood", near.Extra);
        });
        json.WriteTexts("steps", plan.Steps().Select(s => s.In(style)));
        json.WriteTexts("mind", plan.Minds.Select(s => s.In(style)));
    }

    private static void Write(Utf8JsonWriter json, PlanerSetting setting)
    {
        json.WriteNumber("thickness", setting.Thickness);
        if (setting.Rough is double rough)
        {
            json.WriteNumber("roughThickness", rough);
            json.WriteNumber("slices", setting.Slices);
            json.WriteNumber("passes", setting.Passes);
        }

        json.WriteObjects("strips", setting.Strips, strip =>
        {
            json.WriteString("use", JsonNamingPolicy.CamelCase.ConvertName(strip.Use.ToString()));
            json.WriteString("wood", strip.Wood);
            if (strip.Width is double width) json.WriteNumber("width", width);
            json.WriteNumber("length", strip.Length);
            json.WriteNumber("boards", strip.Boards);
            json.WriteTexts("rings", strip.Rings);
        });
    }
}
