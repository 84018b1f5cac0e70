using System.ComponentModel;
using System.Globalization;
using System.Text.Json;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Core.Sawing;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Pictures;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright simulate FILE</c>: one board, sawn with the errors of the shop.</summary>
internal sealed class SimulateCommand(IAnsiConsole console) : Command<SimulateCommand.Settings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "simulate",
        "Saw one board in simulation with the errors of the shop: every wedge as it comes out.",
        "simulate examples/two-wood-disc.json");

    internal sealed class Settings : SimulationSettings
    {
        [CommandOption("--wedges <N>")]
        [Description("Wedges to saw; otherwise as many as the ring needs of its first wood, or the board gives.")]
        public int? Wedges { get; init; }

        [CommandOption("--batch <N>")]
        [Description("Which wedges of a ring of unequal ones; 1 otherwise.")]
        public int Batch { get; init; } = 1;

        [CommandOption("--ideal")]
        [Description("Saw without errors.")]
        public bool Ideal { get; init; }
    }

    private const int Boards = 2000;

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        PictureFile.Check(settings.Picture);
        Plan plan = settings.Plan();
        RingPlan picked = settings.Pick(plan);
        MeasureStyle style = settings.Style(plan.Piece.Units);
        // The board's wedges are sawn with its largest ring; of the others only the circle is.
        if (picked is { Board: not null, Batches.IsEmpty: true }) return Circles(picked.Board, plan, settings, style);
        if (picked.Stave is not null && settings.Picture is not null) throw new BadInputException("--picture", "the first cut of staves has no picture", "leave it out; their job sheet shows a stave from its sides");
        RingPlan ring = PickBatch(picked, settings.Batch);
        SawRun run = SawSimulator.Run(Job(plan, ring, settings));
        if (settings.Json) JsonOut.Write(console, json => Write(json, run));
        else Print(plan, ring, run, style);
        if (settings.Picture is { } path) PictureFile.Write(console, path, Picture(plan, ring, style), "The setting, and the first cut too far, right and not far enough", settings.Json);
        return ExitCode.Done;
    }

    private int Circles(BoardGroupPlan board, Plan plan, Settings settings, MeasureStyle style)
    {
        var forecast = BoardCutForecast.Of(board, plan.Shop, Boards, (ulong)settings.Seed);
        if (settings.Json) JsonOut.Write(console, json => BoardCutJson.Write(json, forecast));
        else BoardCutText.Write(console, board, forecast, style);
        return ExitCode.Done;
    }

    // The cuts as set, without this run's errors, and the stop farther off than in the words, so that one sees it.
    private static Drawing Picture(Plan plan, RingPlan ring, MeasureStyle style) => TestCutPicture.Of(ring) is { IsEmpty: false } cuts
        ? SawPicture.Draw(ring, plan.Shop.Sled, cuts, style)
        : throw new BadInputException("--picture", $"the wedges of {ring.Ring.Name} are too small for a picture of the first cut", "leave it out, and judge the cut under a lens");

    // A ring without wedges says so itself as soon as one is asked for.
    private static RingPlan PickBatch(RingPlan ring, int batch) => ring.Batches.IsEmpty || (batch >= 1 && batch <= ring.Batches.Length)
        ? ring.Alone(batch - 1)
        : throw new BadInputException("--batch", $"{batch} is not there", $"1 to {ring.Batches.Length} can be sawn");

    private static SawJob Job(Plan plan, RingPlan ring, Settings settings)
    {
        if (settings.Wedges is < 1 or > 100_000) throw new BadInputException("--wedges", $"{settings.Wedges} cannot be sawn", "1 to 100000 can");
        ErrorCause causes = settings.Ideal ? ErrorCause.None : ErrorCause.All;
        double board = RingJobs.BoardUsed(ring, plan.Shop);
        int perBoard = ring.Strip.WedgesIn(board);
        int wedges = settings.Wedges ?? Math.Min(ring.Woods[0].ToSaw, perBoard);
        ulong seed = (ulong)settings.Seed;
        return RingJobs.Job(ring, plan.Shop, board, wedges, seed, RingJobs.FenceErrors(ring, plan.Shop, seed, causes), causes);
    }

    private void Print(Plan plan, RingPlan ring, SawRun run, MeasureStyle style)
    {
        if (ring.Stave is { } stave) PrintStaves(ring, stave, run, style);
        else PrintWedges(ring, run, style);
        AlignedText.Heading(console, "The board");
        double all = run.Job.Board.Volume;
        string pieces = ring.Stave is null ? "wedges" : "staves";
        string Share(double volume) => style.Print(volume / all, Quantity.Share);
        SawVolumes v = run.Volumes;
        AlignedText.Write(console, [
            [pieces, Share(v.Wedges)], ["sawdust", Share(v.Kerf)], ["end and first offcut", Share(v.Squaring + v.FirstOffcut)],
            ["rest", Share(v.Remainder)], [$"of the {pieces} sanded away", style.Print(v.SandingDust / Math.Max(v.Wedges, 1e-9), Quantity.Share)]], 1);
        string held = run.Job.Saw.HoldingLength > 0 ? $"No cut beyond {style.Length(run.NoCutBeyond)} from the sawn {(ring.Stave is null ? "end" : "edge")}: the rest is needed to hold the board. " : "";
        console.WriteLine($"  {held}{style.Length(run.ShortestEdgeLeft)} are left on the shortest edge.");
        AlignedText.Heading(console, ring.Stave is null ? "Judge the first cut by eye" : "Judge the first cut by eye (widths half way through the board)");
        foreach (TestCut cut in TestCut.Pictures(ForTestCuts(run), run.Job.Saw, StopOffset(run))) console.WriteLine("  " + Say(cut, ring.Stave is not null, style));
        AlignedText.Mind(console, plan.Shop.Sled.Kind);
    }

    private void PrintWedges(RingPlan ring, SawRun run, MeasureStyle style)
    {
        console.WriteLine($"{ring.Ring.Name}, one board of {style.Length(run.Job.Board.Length)}: {run.Explanation}");
        AlignedText.Heading(console, "Wedges as they come out, after sanding");
        string[] head = ["", "angle", "off by", "rim below", "rim above", "tip", "cuts", "rim on", "faces"];
        AlignedText.Write(console, run.Wedges.Select(w => Row(w, ring.Glued.WedgeAngle, run.Job.Board.Thickness, style)).Prepend(head), 0, 1, 2, 3, 4, 5, 6);
    }

    private void PrintStaves(RingPlan ring, StaveGeometry stave, SawRun run, MeasureStyle style)
    {
        string one = stave.IsUpright ? "strips ripped from one board" : "one panel";
        console.WriteLine($"{ring.Ring.Name}, {one}, {style.Length(run.Job.Board.Length)} across: {run.Explanation.Replace("wedges", "staves", StringComparison.Ordinal)}");
        AlignedText.Heading(console, "Staves as they come out, after sanding");
        string[] head = ["", "between faces", "off by", "wider end", "narrower end", "cuts", "outside"];
        AlignedText.Write(console, run.Wedges.Select(w => StaveRow(w, 2 * stave.HalfAngle, run.Job.Board.Thickness, style)).Prepend(head), 0, 1, 2, 3, 4, 5);
        console.WriteLine($"  Widths are those of the outside. All {stave.Segments.ToString(CultureInfo.InvariantCulture)} staves have to make {style.Print(2 * Math.PI, Quantity.FineAngle)} together, {style.Print(2 * stave.HalfAngle, Quantity.FineAngle)} each.");
    }

    private static string[] StaveRow(SawnWedge w, double wanted, double top, MeasureStyle style) =>
    [
        w.Marks.Number.ToString(CultureInfo.InvariantCulture), style.Print(w.FaceAngle, Quantity.FineAngle), style.Print(w.FaceAngle - wanted, Quantity.FineAngle),
        style.Length(w.RimLength(top)), style.Length(w.TipLength(top)), $"{w.Marks.MinusCut}, {w.Marks.PlusCut}", w.Marks.Up == BoardSide.Top ? "line up" : "line down",
    ];

    // The first two cuts do not ask how much board there is; these are not to fail on a short one.
    private static BoardBlank ForTestCuts(SawRun run) => run.Job.Board with { Length = run.Job.Board.Length + (4 * run.Job.Saw.StopDistance) };

    // A tenth of the rim edge is plain to see and still safe to saw.
    private static double StopOffset(SawRun run) => Math.Max(0.02, run.Job.Saw.StopDistance / 10);

    private static string Say(TestCut cut, bool stave, MeasureStyle style)
    {
        (string piece, string rim, string tip) = stave ? ("stave", "wider end", "narrower end") : ("wedge", "rim edge", "tip");
        string shape = cut.EndsBeforeFarEdge > 0 ? $"the {piece} ends {style.Length(cut.EndsBeforeFarEdge)} before the far edge" : $"the {tip} is {style.Length(cut.TipLength)} wide";
        string next = cut.NextRimLoss > 0 ? $", and the next {piece} lacks {style.Length(cut.NextRimLoss)} of its {rim}" : "";
        string name = cut.Setting switch
        {
            TestCutSetting.TooFar => $"Stop {style.Length(cut.StopOffset)} too far",
            TestCutSetting.NotFarEnough => $"Stop {style.Length(-cut.StopOffset)} too near",
            _ => "Right",
        };
        return $"{name}: {rim} {style.Length(cut.RimLength)}, {shape}{next}.";
    }

    private static string[] Row(SawnWedge w, double wanted, double top, MeasureStyle style) =>
    [
        w.Marks.Number.ToString(CultureInfo.InvariantCulture), style.Print(w.Angle, Quantity.FineAngle), style.Print(w.Angle - wanted, Quantity.FineAngle),
        style.Length(w.RimLength(0)), style.Length(w.RimLength(top)), style.Length(w.TipLength(top / 2)), $"{w.Marks.MinusCut}, {w.Marks.PlusCut}",
        w.Marks.RimEdge == BoardEdge.Edge1 ? "edge 1" : "edge 2", w.Marks.Up == BoardSide.Top ? "line up" : "line down",
    ];

    private static void Write(Utf8JsonWriter json, SawRun run)
    {
        double top = run.Job.Board.Thickness;
        json.WriteString("reason", JsonNamingPolicy.CamelCase.ConvertName(run.Reason.ToString()));
        json.WriteString("says", run.Explanation);
        json.WriteNumber("noCutBeyond", run.NoCutBeyond);
        json.WriteNumber("shortestEdgeLeft", run.ShortestEdgeLeft);
        json.WriteStartObject("volumes");
        json.WriteNumber("wedges", run.Volumes.Wedges);
        json.WriteNumber("kerf", run.Volumes.Kerf);
        json.WriteNumber("squaring", run.Volumes.Squaring);
        json.WriteNumber("firstOffcut", run.Volumes.FirstOffcut);
        json.WriteNumber("remainder", run.Volumes.Remainder);
        json.WriteNumber("sandingDust", run.Volumes.SandingDust);
        json.WriteEndObject();
        json.WriteStartArray("wedges");
        foreach (SawnWedge wedge in run.Wedges) WriteWedge(json, wedge, top);
        json.WriteEndArray();
    }

    private static void WriteWedge(Utf8JsonWriter json, SawnWedge wedge, double top)
    {
        json.WriteStartObject();
        json.WriteNumber("number", wedge.Marks.Number);
        json.WriteString("up", JsonNamingPolicy.CamelCase.ConvertName(wedge.Marks.Up.ToString()));
        json.WriteString("rimEdge", JsonNamingPolicy.CamelCase.ConvertName(wedge.Marks.RimEdge.ToString()));
        json.WriteNumber("minusCut", wedge.Marks.MinusCut);
        json.WriteNumber("plusCut", wedge.Marks.PlusCut);
        json.WriteNumber("angle", wedge.Angle);
        json.WriteNumber("faceAngle", wedge.FaceAngle);
        json.WriteNumber("taper", wedge.Taper);
        json.WriteNumber("volume", wedge.Solid.Volume);
        WriteSection(json, "bottom", wedge, 0);
        WriteSection(json, "top", wedge, top);
        json.WriteEndObject();
    }

    private static void WriteSection(Utf8JsonWriter json, string name, SawnWedge wedge, double z)
    {
        json.WriteStartArray(name);
        foreach (Core.Geometry.Vector2D corner in wedge.Section(z).Vertices)
        {
            json.WriteStartArray();
            json.WriteNumberValue(corner.X);
            json.WriteNumberValue(corner.Y);
            json.WriteEndArray();
        }

        json.WriteEndArray();
    }
}
