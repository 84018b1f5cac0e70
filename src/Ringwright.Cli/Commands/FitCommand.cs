using System.ComponentModel;
using System.Globalization;
using System.Text.Json;
using Ringwright.Cli.Output;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright fit FILE</c>: how the joints will close, over many simulated rings.</summary>
internal sealed class FitCommand(IAnsiConsole console) : Command<FitCommand.Settings>
{
    internal sealed class Settings : SimulationSettings
    {
        [CommandOption("--rings <N>")]
        [Description("Rings to simulate; 500 otherwise.")]
        public int Rings { get; init; } = 500;
    }

    private static readonly double[] Levels = [0.1, 0.5, 0.9, 0.99];

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        Plan plan = settings.Plan();
        RingPlan ring = settings.Pick(plan);
        MeasureStyle style = settings.Style(plan.Piece.Units);
        using var interrupt = new Interrupt(cancellationToken);
        FitForecast forecast = FitForecast.Of(ring, plan.Shop, settings.Rings, (ulong)settings.Seed, ProgressLine.On(console, settings.Json), interrupt.Token);
        if (settings.Json) JsonOut.Write(console, json => Write(json, forecast, plan.Shop.Wanted.JointGap.Millimetres));
        else Print(plan, ring, forecast, style);
        return ExitCode.Done;
    }

    private void Print(Plan plan, RingPlan ring, FitForecast forecast, MeasureStyle style)
    {
        double gap = plan.Shop.Wanted.JointGap.Millimetres;
        string Fine(double mm) => style.Print(mm, Quantity.FineLength);
        string Share(double share) => style.Print(share, Quantity.Share);
        console.WriteLine($"{ring.Ring.Name}: under a band all joints stay within {Fine(gap)} in {Share(forecast.ChanceUnderBand(gap))} of {forecast.Rings} simulated rings, joint by joint in {Share(forecast.ChanceJointByJoint(gap))}.");
        AlignedText.Heading(console, "Widest joint gap");
        string[] head = ["of the rings", .. Levels.Select(l => Share(l))];
        AlignedText.Write(console, [
            head,
            ["under a band, at most", .. Levels.Select(l => Fine(FitForecast.Quantile(forecast.Band, l)))],
            ["joint by joint, at most", .. Levels.Select(l => Fine(FitForecast.Quantile(forecast.Gathered, l)))]], 1, 2, 3, 4);
        AlignedText.Heading(console, "Closing error (all wedges together, short of a full turn)");
        string Angle(double a) => style.Print(a, Quantity.FineAngle);
        AlignedText.Write(console, [
            ["", "mean", "spread"], ["simulated", Angle(forecast.ClosingMean), Angle(forecast.ClosingSd)],
            ["closed form", Angle(forecast.Expected.Mean), Angle(forecast.Expected.Sd)]], 1, 2);
        AlignedText.Heading(console, "What is worth improving");
        AlignedText.Write(console, forecast.Causes.Select(c => (string[])[Word(c.Cause), $"{Share(c.Share)} of the closing error's variance", $"half the rings gape at most {Fine(c.MedianGapWithout)} without it, {Fine(c.MedianGap)} with it"]), 1);
        if (forecast.Unsettled > 0) console.WriteLine($"  {forecast.Unsettled.ToString(CultureInfo.InvariantCulture)} rings did not settle in the dry fit; they are counted as gaping.");
    }

    private static string Word(ErrorCause cause) => cause switch
    {
        ErrorCause.Setting => "setting the fences",
        ErrorCause.CutToCut => "cut to cut",
        ErrorCause.Bias => "constant error",
        ErrorCause.Sanding => "uneven sanding",
        ErrorCause.Stop => "length at the stop",
        ErrorCause.Kerf => "width of the kerf",
        _ => "lean of the blade",
    };

    private static void Write(Utf8JsonWriter json, FitForecast forecast, double gap)
    {
        json.WriteNumber("rings", forecast.Rings);
        json.WriteNumber("seed", forecast.Seed);
        json.WriteNumber("gap", gap);
        json.WriteNumber("chanceUnderBand", forecast.ChanceUnderBand(gap));
        json.WriteNumber("chanceJointByJoint", forecast.ChanceJointByJoint(gap));
        json.WriteNumber("closingMean", forecast.ClosingMean);
        json.WriteNumber("closingSd", forecast.ClosingSd);
        json.WriteNumber("closedFormMean", forecast.Expected.Mean);
        json.WriteNumber("closedFormSd", forecast.Expected.Sd);
        json.WriteNumber("unsettled", forecast.Unsettled);
        json.WriteStartObject("quantiles");
        foreach (double level in Levels)
        {
            json.WriteStartObject(level.ToString(CultureInfo.InvariantCulture));
            // An unsettled ring has no gap to tell.
            double band = FitForecast.Quantile(forecast.Band, level);
            if (double.IsFinite(band)) json.WriteNumber("underBand", band);
            else json.WriteNull("underBand");
            json.WriteNumber("jointByJoint", FitForecast.Quantile(forecast.Gathered, level));
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteStartArray("causes");
        foreach (CauseShare cause in forecast.Causes)
        {
            json.WriteStartObject();
            json.WriteString("cause", JsonNamingPolicy.CamelCase.ConvertName(cause.Cause.ToString()));
            json.WriteNumber("share", cause.Share);
            json.WriteNumber("medianGap", cause.MedianGap);
            json.WriteNumber("medianGapWithout", cause.MedianGapWithout);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
