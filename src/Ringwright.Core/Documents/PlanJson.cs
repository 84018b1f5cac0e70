using System.Text.Json;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Documents;

/// <summary>A plan as JSON text for other programs: every figure with value, unit, printed text and reason.</summary>
public static class PlanJson
{
    /// <summary>The plan as JSON text, ending with a line feed. Values are in mm, radians, mm² or plain numbers, as <c>unit</c> says.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="style">How the printed texts show lengths.</param>
    public static string Write(Plan plan, MeasureStyle style) => JsonText.Write(json =>
    {
        json.WriteString("format", "ringwright/plan");
        json.WriteNumber("version", 1);
        json.WriteString("piece", plan.Piece.Name);
        json.WriteString("shop", plan.Shop.Name);
        json.WriteString("verdict", plan.Verdict.In(style));
        WriteFigures(json, plan.Figures, style);
        json.WriteObjects("rings", plan.Rings, ring => WriteRing(json, ring, style));
        json.WriteStartObject("milling");
        MillingJson.Write(json, MillingPlan.Of(plan), style);
        json.WriteEndObject();
        json.WriteStartObject("glue");
        GlueJson.Write(json, GluePlan.Of(plan), style);
        json.WriteEndObject();
    });

    /// <summary>The unit a figure's value is written in.</summary>
    public static string UnitOf(Quantity quantity) => quantity switch
    {
        Quantity.Length or Quantity.FineLength => "mm",
        Quantity.Angle or Quantity.FineAngle => "rad",
        Quantity.Area => "mm²",
        Quantity.Volume => "mm³",
        Quantity.Count => "pieces",
        Quantity.Stress => "MPa",
        Quantity.Turns => "rpm",
        Quantity.Mass => "g",
        Quantity.Density => "kg/m³",
        Quantity.Unbalance => "g·mm",
        Quantity.Force => "N",
        Quantity.Time => "min",
        _ => "1",
    };

    private static void WriteRing(Utf8JsonWriter json, RingPlan ring, MeasureStyle style)
    {
        json.WriteString("name", ring.Ring.Name);
        WriteFigures(json, ring.Figures, style);
        WriteWoods(json, ring);
        IEnumerable<string> order = ring.Spacers.IsEmpty && ring.Lamination is null ? Enumerable.Range(0, ring.Ring.Around).Select(ring.Ring.WoodOf) : ring.Layout.Select(l => l.Wood);
        json.WriteTexts("order", order);
        if (!ring.Spacers.IsEmpty) WriteSpacers(json, ring);
        if (ring.Lamination is Lamination board) WriteStrips(json, board);
        json.WriteTexts("steps", ring.Steps.Select(s => s.In(style)));
        json.WriteTexts("findings", ring.Findings.Select(f => f.Sentence.In(style)));
    }

    /// <summary>Writes figures with their reasons as the field <c>figures</c>.</summary>
    public static void WriteFigures(Utf8JsonWriter json, IEnumerable<Figure> figures, MeasureStyle style) => json.WriteObjects("figures", figures, figure =>
    {
        json.WriteString("name", figure.Name);
        json.WriteString("label", figure.Label);
        json.WriteNumber("value", figure.Value);
        json.WriteString("unit", UnitOf(figure.Quantity));
        json.WriteString("text", style.Print(figure.Value, figure.Quantity));
        json.WriteStartObject("why");
        json.WriteString("formula", figure.Why.Formula);
        json.WriteString("source", figure.Why.Source);
        json.WriteString("reason", figure.Why.Reason);
        json.WriteObjects("inputs", figure.Why.Inputs, input =>
        {
            json.WriteString("symbol", input.Symbol);
            json.WriteString("meaning", input.Meaning);
            json.WriteNumber("value", input.Value);
            json.WriteString("unit", UnitOf(input.Quantity));
        });
        json.WriteEndObject();
    });

    private static void WriteWoods(Utf8JsonWriter json, RingPlan ring)
    {
        json.WriteObjects("woods", ring.Woods, wood =>
        {
            WriteNeed(json, wood);
            if (ring.Batches.Length > 1) json.WriteNumber("wedge", wood.Batch + 1);
        });
    }

    private static void WriteSpacers(Utf8JsonWriter json, RingPlan ring)
    {
        json.WriteObjects("spacers", ring.Spacers, spacer =>
        {
            WriteNeed(json, spacer.Need);
            json.WriteNumber("thickness", spacer.Thickness);
            json.WriteNumber("height", spacer.Height);
            json.WriteNumber("cutLength", spacer.Length);
        });
    }

    private static void WriteStrips(Utf8JsonWriter json, Lamination board)
    {
        json.WriteObjects("strips", board.Kinds, strip =>
        {
            json.WriteString("wood", strip.Wood);
            json.WriteNumber("thickness", strip.Thickness);
            json.WriteNumber("height", strip.Height);
            json.WriteNumber("shift", strip.Stagger);
            json.WriteNumber("count", strip.Count);
            json.WriteNumber("boards", strip.Sticks);
            json.WriteNumber("length", strip.Length);
        });
    }

    private static void WriteNeed(Utf8JsonWriter json, WoodNeed wood)
    {
        json.WriteString("wood", wood.Wood);
        json.WriteNumber("needed", wood.Needed);
        json.WriteNumber("toSaw", wood.ToSaw);
        json.WriteNumber("boards", wood.Boards);
        json.WriteNumber("length", wood.Length);
        json.WriteNumber("leftOver", wood.LeftOver);
    }
}
