using System.ComponentModel;
using System.Globalization;
using System.Text.Json;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Pictures;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright fit FILE</c>: how the joints will close, over many simulated rings.</summary>
internal sealed class FitCommand(IAnsiConsole console) : Command<FitCommand.Settings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "fit",
        "Saw, sand and dry-fit many rings in simulation: how wide the joints gape and what is worth improving.",
        "fit examples/walnut-ring.json --rings 500",
        "fit examples/two-wood-disc.json --measured examples/measured-disc.csv --depth \"7 mm\" --picture ring.svg");

    internal sealed class Settings : SimulationSettings
    {
        [CommandOption("--rings <N>")]
        [Description("Rings to simulate; 500 otherwise.")]
        public int Rings { get; init; } = 500;

        [CommandOption("--measured <READINGS>")]
        [Description("Dry-fit real wedges instead: caliper readings as CSV (number,wood,rim,tip), one line for each wedge of the ring in its order.")]
        public string? Measured { get; init; }

        [CommandOption("--depth <LENGTH>")]
        [Description("With --measured: distance between the two reading places of a wedge; otherwise the whole wedge, rim to tip.")]
        public string? Depth { get; init; }

        [CommandOption("--order <LIST>")]
        [Description("With --measured: numbers of the wedges in the order to lay them, as 'choose' gives it: 1,7,4.")]
        public string? Order { get; init; }
    }

    private static readonly double[] Levels = [0.1, 0.5, 0.9, 0.99];

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        PictureFile.Check(settings.Picture);
        Plan plan = settings.Plan();
        RingPlan ring = settings.Pick(plan);
        MeasureStyle style = settings.Style(plan.Piece.Units);
        DryFitResult drawn = settings.Measured is null
            ? Forecast(plan, ring, style, settings, cancellationToken)
            : Measured(plan, ring, style, settings, settings.Measured);
        if (settings.Picture is { } path)
        {
            string heading = $"{ring.Ring.Name}: {(settings.Measured is null ? "the first simulated ring" : "the measured wedges")} under a band";
            PictureFile.Write(console, path, DryFitPicture.Draw(drawn, heading, style), heading, settings.Json);
        }

        return ExitCode.Done;
    }

    private DryFitResult Forecast(Plan plan, RingPlan ring, MeasureStyle style, Settings settings, CancellationToken cancellationToken)
    {
        if (settings.Depth is not null || settings.Order is not null)
            throw new BadInputException(settings.Depth is null ? "--order" : "--depth", "it goes only with --measured", "give the readings, or leave it out");
        using var interrupt = new Interrupt(cancellationToken);
        FitForecast forecast = FitForecast.Of(ring, plan.Shop, settings.Rings, (ulong)settings.Seed, ProgressLine.On(console, settings.Json), interrupt.Token);
        if (settings.Json) JsonOut.Write(console, json => Write(json, forecast, plan.Shop.Wanted.JointGap.Millimetres));
        else Print(plan, ring, forecast, style);
        return DryFitSolver.Fit(RingJobs.Pieces(ring, plan.Shop, (ulong)settings.Seed, ErrorCause.All).AsSpan());
    }

    private DryFitResult Measured(Plan plan, RingPlan ring, MeasureStyle style, Settings settings, string file)
    {
        IReadOnlyList<MeasuredWedge> wedges = InOrder(ReadingsFile.ReadWedges(file, style.Unit), settings.Order);
        double depth = settings.Depth is null ? MeasuredRing.UsualDepth(ring) : TypedText.Length("--depth", settings.Depth, style.Unit, "a length such as 7 mm is needed").Millimetres;
        MeasuredRing measured = MeasuredRing.Of(ring, plan.Shop.Sled, wedges, depth);
        double gap = plan.Shop.Wanted.JointGap.Millimetres;
        if (settings.Json) JsonOut.Write(console, json => MeasuredText.Write(json, ring.Ring.Name, measured, gap, style));
        else MeasuredText.Write(console, ring, measured, gap, style);
        return measured.Fit;
    }

    private static IReadOnlyList<MeasuredWedge> InOrder(IReadOnlyList<MeasuredWedge> wedges, string? order)
    {
        if (order is null) return wedges;
        int[] numbers = [.. NumberList.Whole("--order", order)];
        int[] twice = [.. numbers.GroupBy(n => n).Where(g => g.Count() > 1).Select(g => g.Key)];
        if (twice.Length > 0) throw new BadInputException("--order", $"wedge {twice[0]} stands in it twice", "each wedge can lie in one place only");
        return [.. numbers.Select(n => wedges.FirstOrDefault(w => w.Below.Number == n) ?? throw new BadInputException("--order", $"there is no reading of wedge {n}", "the numbers of measured wedges are needed"))];
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
        AlignedText.Heading(console, $"Closing error (all {(ring.Stave is null ? "wedges" : "staves")} together, short of a full turn)");
        string Angle(double a) => style.Print(a, Quantity.FineAngle);
        AlignedText.Write(console, [
            ["", "mean", "spread"], ["simulated", Angle(forecast.ClosingMean), Angle(forecast.ClosingSd)],
            ["closed form", Angle(forecast.Expected.Mean), Angle(forecast.Expected.Sd)]], 1, 2);
        AlignedText.Heading(console, "What is worth improving");
        AlignedText.Write(console, forecast.Causes.Select(c => (string[])[ErrorCauseWords.Of(c.Cause, ring.Stave is not null), $"{Share(c.Share)} of the closing error's variance", $"half the rings gape at most {Fine(c.MedianGapWithout)} without it, {Fine(c.MedianGap)} with it"]), 1);
        if (forecast.Unsettled > 0) console.WriteLine($"  {forecast.Unsettled.ToString(CultureInfo.InvariantCulture)} rings did not settle in the dry fit; they are counted as gaping.");
    }

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
        json.WriteObjects("causes", forecast.Causes, cause =>
        {
            json.WriteString("cause", JsonNamingPolicy.CamelCase.ConvertName(cause.Cause.ToString()));
            json.WriteNumber("share", cause.Share);
            json.WriteNumber("medianGap", cause.MedianGap);
            json.WriteNumber("medianGapWithout", cause.MedianGapWithout);
        });
    }
}
