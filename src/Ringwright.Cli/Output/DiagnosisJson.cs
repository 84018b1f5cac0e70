using System.Text.Json;
using Ringwright.Core.Documents;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;

namespace Ringwright.Cli.Output;

/// <summary>A diagnosis as JSON: lengths in mm, angles in radians, joints and readings counted from 1.</summary>
internal static class DiagnosisJson
{
    public static void Write(Utf8JsonWriter json, FitDiagnosis diagnosis, IReadOnlyList<FitObservation> readings, MeasureStyle style)
    {
        json.WriteTexts("says", diagnosis.Advice.Select(a => a.In(style)));
        json.WriteString("caution", diagnosis.Caution);
        json.WriteNumber("closingError", diagnosis.ClosingError.Mean);
        json.WriteNumber("closingErrorSd", diagnosis.ClosingError.Sd);
        Correction(json, diagnosis.Correction);
        json.WriteObjects("causes", diagnosis.Causes, cause => Cause(json, cause, style));
        json.WriteTexts("readings", readings.Select(r => ObservationWords.Say(r).In(style)));
        json.WriteStartObject("agreement");
        json.WriteNumber("chance", diagnosis.Agreement.Chance);
        json.WriteStartArray("contradicted");
        foreach (int reading in diagnosis.Agreement.Odd) json.WriteNumberValue(reading + 1);
        json.WriteEndArray();
        json.WriteString("says", diagnosis.Agreement.Sentence.In(style));
        json.WriteEndObject();
    }

    private static void Correction(Utf8JsonWriter json, FenceCorrection c)
    {
        json.WriteStartObject("correction");
        if (c.IsTilt) json.WriteBoolean("isTilt", true);
        json.WriteNumber("fences", c.Fences);
        json.WriteString("move", JsonNamingPolicy.CamelCase.ConvertName(c.Move.ToString()));
        json.WriteBoolean("worthwhile", c.IsWorthwhile);
        json.WriteNumber("fenceAngleNow", c.FenceAngleNow);
        json.WriteNumber("fenceAngleAfter", c.FenceAngleAfter);
        json.WriteNumber("fenceAngleSd", c.FenceAngleSd);
        json.WriteNumber("ruleDistance", c.RuleDistance);
        json.WriteNumber("ruleChange", c.RuleChange);
        json.WriteNumber("ruleChangeSd", c.RuleMoveSd);
        json.WriteEndObject();
    }

    private static void Cause(Utf8JsonWriter json, FitCause cause, MeasureStyle style)
    {
        json.WriteString("cause", JsonNamingPolicy.CamelCase.ConvertName(cause.Kind.ToString()));
        json.WriteNumber("chance", cause.Chance);
        json.WriteNumber("mean", cause.Mean);
        json.WriteNumber("sd", cause.Sd);
        if (cause.Joint is int joint) json.WriteNumber("joint", joint + 1);
        json.WriteString("says", cause.Sentence.In(style));
    }
}
