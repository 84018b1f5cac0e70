using System.Globalization;
using System.Text.Json;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Spectre.Console;

namespace Ringwright.Cli.Output;

/// <summary>The dry fit of measured wedges as text and as JSON.</summary>
internal static class MeasuredText
{
    /// <summary>Prints the verdict, every joint, and what the fences ask for.</summary>
    public static void Write(IAnsiConsole console, RingPlan plan, MeasuredRing ring, double wanted, MeasureStyle style)
    {
        console.WriteLine(MeasuredVerdict.Of(plan.Ring.Name, ring.Fit, wanted, plan.Stave is null ? "wedges" : "staves").In(style));
        AlignedText.Heading(console, "Joints under a band, counter-clockwise");
        AlignedText.Write(console, Joints(ring, wanted, style), 0, 2, 3, 4, 5);
        AlignedText.Heading(console, "The ring");
        AlignedText.Write(console, Ring(ring, style), 1);
        AlignedText.Heading(console, "What it says of the fences");
        foreach (MeasuredKind kind in ring.Kinds)
        {
            if (ring.Kinds.Length > 1 || plan.Stave is not null) console.WriteLine("  " + kind.Says(plan).In(style));
            DiagnosisText.WriteAnswer(console, kind.Diagnosis, style);
            console.WriteLine("  " + kind.Diagnosis.Agreement.Sentence.In(style));
        }
    }

    /// <summary>Writes the same.</summary>
    public static void Write(Utf8JsonWriter json, string name, MeasuredRing ring, double wanted, MeasureStyle style)
    {
        DryFitResult fit = ring.Fit;
        json.WriteString("says", MeasuredVerdict.Of(name, ring.Fit, wanted).In(style));
        json.WriteBoolean("settled", fit.Summary.Settled);
        json.WriteNumber("gap", wanted);
        json.WriteNumber("worstGap", fit.Summary.WorstGap);
        json.WriteNumber("worstJoint", fit.Summary.WorstJoint + 1);
        json.WriteNumber("gatheredGap", fit.Gathered.Gap.Worst);
        json.WriteNumber("closingError", fit.Summary.ClosingError);
        json.WriteNumber("closingErrorSd", ring.ClosingErrorSd);
        json.WriteNumber("closingErrorBottom", fit.ClosingErrorBottom);
        json.WriteNumber("closingErrorTop", fit.ClosingErrorTop);
        json.WriteNumber("centreOverlap", fit.CentreOverlap);
        json.WriteStartArray("joints");
        for (int j = 0; j < fit.Joints.Length; j++) Joint(json, ring, j);
        json.WriteEndArray();
        json.WriteStartObject("diagnosis");
        DiagnosisJson.Write(json, ring.Diagnosis, ring.Urgent.Readings, style);
        json.WriteEndObject();
        if (ring.Lean is double lean) json.WriteNumber("lean", lean);
        if (ring.Kinds.Length == 1) return;
        json.WriteStartArray("kinds");
        foreach (MeasuredKind kind in ring.Kinds)
        {
            json.WriteStartObject();
            json.WriteNumber("wedge", kind.Batch + 1);
            json.WriteNumber("wanted", kind.Wanted);
            json.WriteNumber("mean", kind.Mean);
            DiagnosisJson.Write(json, kind.Diagnosis, kind.Readings, style);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static IEnumerable<string[]> Joints(MeasuredRing ring, double wanted, MeasureStyle style)
    {
        DryFitResult fit = ring.Fit;
        bool levels = fit.Wedges.Any(w => !w.IsUpright);
        string Fine(double mm) => style.Print(mm, Quantity.FineLength);
        yield return levels ? ["joint", "between", "rim below", "rim above", "centre below", "centre above"] : ["joint", "between", "rim", "centre"];
        for (int j = 0; j < fit.Joints.Length; j++)
        {
            JointGap g = fit.Joints[j];
            string[] gaps = levels ? [Fine(g.RimBottom), Fine(g.RimTop), Fine(g.TipBottom), Fine(g.TipTop)] : [Fine(g.RimBottom), Fine(g.TipBottom)];
            string note = j == fit.Summary.WorstJoint ? "widest" : g.Worst > wanted ? "too wide" : "";
            yield return [(j + 1).ToString(CultureInfo.InvariantCulture), $"wedges {Number(ring, j)} and {Number(ring, j + 1)}", .. gaps, note];
        }
    }

    private static IEnumerable<string[]> Ring(MeasuredRing ring, MeasureStyle style)
    {
        DryFitResult fit = ring.Fit;
        string Angle(double a) => style.Print(a, Quantity.FineAngle);
        yield return ["closing error (short of a full turn), and what the caliper leaves unknown of it", $"{Angle(fit.Summary.ClosingError)} ± {Angle(ring.ClosingErrorSd)}"];
        if (fit.Wedges.Any(w => !w.IsUpright)) yield return ["  below, above", $"{Angle(fit.ClosingErrorBottom)}, {Angle(fit.ClosingErrorTop)}"];
        if (ring.Lean is double lean) yield return ["lean of the ring, from the widths at both ends", Angle(lean)];
        yield return ["all of it gathered in the last joint", style.Print(fit.Gathered.Gap.Worst, Quantity.FineLength)];
        if (fit.CentreOverlap > JointGap.TouchTolerance) yield return ["points that run into each other at the centre, by", style.Print(fit.CentreOverlap, Quantity.FineLength)];
    }

    private static int Number(MeasuredRing ring, int wedge) => ring.Wedges[wedge % ring.Wedges.Length].Below.Number;

    private static void Joint(Utf8JsonWriter json, MeasuredRing ring, int joint)
    {
        JointGap gap = ring.Fit.Joints[joint];
        json.WriteStartObject();
        json.WriteNumber("joint", joint + 1);
        json.WriteStartArray("wedges");
        json.WriteNumberValue(Number(ring, joint));
        json.WriteNumberValue(Number(ring, joint + 1));
        json.WriteEndArray();
        json.WriteNumber("rimBottom", gap.RimBottom);
        json.WriteNumber("rimTop", gap.RimTop);
        json.WriteNumber("centreBottom", gap.TipBottom);
        json.WriteNumber("centreTop", gap.TipTop);
        json.WriteNumber("step", gap.Step);
        json.WriteEndObject();
    }
}
