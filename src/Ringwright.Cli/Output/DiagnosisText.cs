using System.Globalization;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Spectre.Console;

namespace Ringwright.Cli.Output;

/// <summary>A diagnosis as text: the answer first, then what it rests on.</summary>
internal static class DiagnosisText
{
    /// <summary>Prints it all.</summary>
    public static void Write(IAnsiConsole console, FitDiagnosis diagnosis, IReadOnlyList<FitObservation> readings, MeasureStyle style)
    {
        WriteAnswer(console, diagnosis, style);
        AlignedText.Heading(console, "What may keep the ring from closing, and the chance that it opens a joint by more than " + style.Print(FitObservation.FeelerSd, Quantity.FineLength));
        AlignedText.Write(console, diagnosis.Causes.Select(c => new[] { style.Print(c.Chance, Quantity.Share), c.Sentence.In(style) }), 0);
        AlignedText.Heading(console, "Readings");
        AlignedText.Write(console, readings.Select((r, i) => new[] { (i + 1).ToString(CultureInfo.InvariantCulture), ObservationWords.Say(r).In(style) }), 0);
        console.WriteLine("  " + diagnosis.Agreement.Sentence.In(style));
    }

    /// <summary>Prints what to do, and how uncertain it is.</summary>
    public static void WriteAnswer(IAnsiConsole console, FitDiagnosis diagnosis, MeasureStyle style)
    {
        foreach (string sentence in diagnosis.Advice.Select(s => s.In(style))) console.WriteLine(sentence);
        if (diagnosis.Caution is { } caution) console.WriteLine(caution);
        (double mean, double sd) = diagnosis.ClosingError;
        FenceCorrection c = diagnosis.Correction;
        AlignedText.Heading(console, "The numbers");
        string Angle(double a) => style.Print(a, Quantity.FineAngle);
        if (c.IsTilt)
        {
            AlignedText.Write(console, [
                ["all staves together, short of a full turn", Angle(mean), "± " + Angle(sd)],
                ["the tilt, from square", Angle(c.FenceAngleNow), "to " + Angle(c.FenceAngleAfter)]], 1);
            return;
        }

        AlignedText.Write(console, [
            ["all wedges together, short of a full turn", Angle(mean), "± " + Angle(sd)],
            ["each fence, from square", Angle(c.FenceAngleNow), "to " + Angle(c.FenceAngleAfter)],
            [$"on the rule, {style.Length(c.RuleDistance)} from the pivot", Signed(style.Print(c.RuleChange, Quantity.FineLength)), "± " + style.Print(c.RuleMoveSd, Quantity.FineLength)]], 1);
    }

    private static string Signed(string text) => text.StartsWith('−') ? text : "+" + text;
}
