using System.Text.Json;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Documents;

/// <summary>A glue plan and its schedule as JSON: lengths in mm, angles in radians, times in minutes; rings, pieces and joints counted from 1.</summary>
public static class GlueJson
{
    /// <summary>Writes the fields of a glue plan into the object that is open.</summary>
    public static void Write(Utf8JsonWriter json, GluePlan plan, MeasureStyle style)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(plan);
        PlanJson.WriteFigures(json, plan.Figures, style);
        json.WriteObjects("rings", plan.Rings, ring => Write(json, ring, style));
        json.WriteObjects("stack", plan.Stack, joint => Write(json, joint, style));
        json.WriteTexts("stackSteps", plan.StackSteps().Select(s => s.In(style)));
        json.WriteTexts("mind", plan.Minds.Select(s => s.In(style)));
    }

    /// <summary>Writes a schedule as the field <c>schedule</c>.</summary>
    public static void Write(Utf8JsonWriter json, GlueSchedule schedule, MeasureStyle style)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(schedule);
        json.WriteStartObject("schedule");
        json.WriteString("says", schedule.Answer.In(style));
        json.WriteTexts("helps", schedule.Helps().Select(s => s.In(style)));
        json.WriteNumber("minutes", schedule.Work.Makespan);
        json.WriteNumber("lowerBound", schedule.Work.LowerBound);
        json.WriteBoolean("proved", schedule.Work.IsShortest);
        json.WriteNumber("handwork", schedule.Hands);
        json.WriteNumber("waiting", schedule.Waiting);
        json.WriteObjects("tasks", schedule.InOrder, t =>
        {
            (GlueTask task, int start) = t;
            json.WriteNumber("start", start);
            json.WriteString("clock", schedule.Clock(start));
            json.WriteString("ring", schedule.Plan.Rings[task.Ring].Ring.Ring.Name);
            json.WriteString("kind", Word(task.Kind.ToString()));
            json.WriteString("work", task.Text);
            json.WriteNumber("hands", task.Hands);
            json.WriteString("clamp", Word(task.Clamp.ToString()));
            json.WriteNumber("clamps", task.Clamps);
            json.WriteNumber("clampedUntil", start + task.Clamped);
            json.WriteNumber("readyAt", start + task.Length);
        });
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, RingGluing ring, MeasureStyle style)
    {
        json.WriteString("name", ring.Ring.Ring.Name);
        json.WriteString("way", Word(ring.Way.ToString()));
        json.WriteNumber("pieces", ring.Pieces);
        PlanJson.WriteFigures(json, ring.Figures, style);
        Write(json, "boards", ring.Boards);
        Write(json, "glueUps", ring.GlueUps);
        json.WriteTexts("steps", ring.Steps.Select(s => s.In(style)));
    }

    private static void Write(Utf8JsonWriter json, string name, IEnumerable<GlueUp> glueUps)
    {
        json.WriteObjects(name, glueUps, up =>
        {
            json.WriteString("for", Word(up.Work.ToString()));
            json.WriteStartArray("joints");
            foreach (int joint in up.Joints) json.WriteNumberValue(joint + 1);
            json.WriteEndArray();
            json.WriteStartArray("after");
            foreach (int before in up.After) json.WriteNumberValue(before + 1);
            json.WriteEndArray();
            json.WriteString("clamp", Word(up.Clamp.ToString()));
            json.WriteNumber("clamps", up.Clamps);
        });
    }

    private static void Write(Utf8JsonWriter json, StackJoint joint, MeasureStyle style)
    {
        json.WriteNumber("lower", joint.Lower + 1);
        json.WriteNumber("upper", joint.Upper + 1);
        json.WriteBoolean("fromTop", joint.FromTop);
        json.WriteBoolean("joins", joint.Joins);
        if (joint.Turn is double turn)
        {
            json.WriteNumber("turn", turn);
            json.WriteNumber("joint", joint.Joint + 1);
            json.WriteNumber("along", joint.Along);
        }

        json.WriteString("mark", joint.Mark.In(style));
        json.WriteNumber("circle", joint.Circle);
        json.WriteString("centre", joint.Centre.In(style));
    }

    private static string Word(string name) => JsonNamingPolicy.CamelCase.ConvertName(name);
}
