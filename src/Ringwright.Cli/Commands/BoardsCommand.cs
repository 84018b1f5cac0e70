using System.ComponentModel;
using Ringwright.Cli.Commands.Kept;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core;
using Ringwright.Core.Boards;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Stock.Boards;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright boards FILE --rack RACK</c>: which board gives which strip; without a rack, what to buy.</summary>
internal sealed class BoardsCommand(IAnsiConsole console) : Command<BoardsCommand.Settings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "boards",
        "Which board gives which strip and in which order to saw, or what is short; without a rack, what to buy.",
        "boards examples/two-wood-disc.json",
        "boards examples/two-wood-disc.json --rack examples/small-rack.json --shop examples/small-shop.json --after rack-tomorrow.json");

    internal sealed class Settings : PieceSettings
    {
        [CommandOption("--rack <RACK>")]
        [Description("The file of the boards at hand; without it: what to buy, from boards of the shop's length.")]
        public string? Rack { get; init; }

        [CommandOption("--kept")]
        [Description("Take the boards from the rack in your data folder ('ringwright rack').")]
        public bool Kept { get; init; }

        [CommandOption("--done")]
        [Description("The job is sawn: put the rests back on the kept rack, in the place of the boards that were used.")]
        public bool Sawn { get; init; }

        [CommandOption("--after <FILE>")]
        [Description("Where to write the rack as it is when the job is done.")]
        public string? After { get; init; }

        [CommandOption("--milling <LENGTH>")]
        [Description("Wood that planing a rough board takes, both faces together; the shop's otherwise.")]
        public string? Milling { get; init; }

        [CommandOption("--time-limit <SECONDS>")]
        [Description("How long to look for something better; 10 otherwise.")]
        public double TimeLimit { get; init; } = BoardPlanner.UsualSeconds;

        [CommandOption("--json")]
        [Description("The answer as JSON: lengths in mm.")]
        public bool Json { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        if (!(settings.TimeLimit is > 0 and <= 3600)) throw new BadInputException("--time-limit", $"{settings.TimeLimit} seconds cannot be", "more than 0 and at most 3600 can");
        if (settings.Kept && settings.Rack is not null) throw new BadInputException("--kept", "there is --rack too", "one rack is needed");
        if (settings.Sawn && !settings.Kept) throw new BadInputException("--done", "it changes the rack in your data folder", "give --kept as well");
        Plan plan = settings.Plan();
        MeasureStyle style = settings.Style(plan.Piece.Units);
        BoardRules rules = Rules(settings, plan, style.Unit);
        using var interrupt = new Interrupt(cancellationToken);
        if (settings.Rack is not null || settings.Kept) return Saw(settings, plan, rules, style, interrupt.Token);
        if (settings.After is not null) throw new BadInputException("--after", "it needs a rack to begin with", "give --rack or --kept as well");
        BuyingList list = new BuyingPlanner(new StripOptimiser(settings.TimeLimit)).Plan(plan, rules, interrupt.Token);
        if (settings.Json) JsonOut.Write(console, json => BoardsJson.Write(json, list, style));
        else BoardsText.Write(console, list, style);
        return ExitCode.Done;
    }

    private int Saw(Settings settings, Plan plan, BoardRules rules, MeasureStyle style, CancellationToken cancel)
    {
        Rack rack = settings.Kept ? KeptData.Read(store => store.Rack.Read()) : DocumentFile.Read(settings.Rack!, DocumentJson.ReadRack);
        if (settings.Kept && rack.Boards.IsEmpty) throw new BadInputException("--kept", "the rack in your data folder is empty", "'ringwright rack add' or 'rack take FILE' fills it");
        IProgress<double>? line = ProgressLine.On(console, settings.Json);
        CuttingPlan cutting = new BoardPlanner(settings.TimeLimit).Plan(CuttingRequest.For(plan, rack, rules), line is null ? null : new Shares(line), cancel);
        if (settings.Json) JsonOut.Write(console, json => BoardsJson.Write(json, cutting, style));
        else BoardsText.Write(console, cutting, style);
        if (settings.After is not null) SafeFile.Write(settings.After, DocumentJson.Write(cutting.After));
        if (settings.Sawn) Finish(plan, cutting, rack);
        if (settings.Json || (settings.After is null && !settings.Sawn)) return ExitCode.Done;
        AlignedText.Heading(console, "Written");
        if (settings.After is not null) console.WriteLine("  " + settings.After);
        if (settings.Sawn) console.WriteLine("  the rack in your data folder; 'ringwright rack undo' brings the boards back");
        return ExitCode.Done;
    }

    // What is short was not sawn, so such a job is not done.
    private static void Finish(Plan plan, CuttingPlan cutting, Rack before)
    {
        if (!cutting.Shortages.IsEmpty) throw new BadInputException("--done", "the rack is short of wood for this piece", "buy what is told without --done first");
        KeptData.Read(store =>
        {
            store.Rack.Finish(plan.Piece.Name, before, cutting.After);
            return true;
        });
    }

    private static BoardRules Rules(Settings settings, Plan plan, LengthUnit unit)
    {
        BoardRules rules = BoardRules.Of(plan.Shop);
        if (settings.Milling is null) return rules;
        double milling = TypedText.Length("--milling", settings.Milling, unit, "a length such as 2 mm is needed").Millimetres;
        return milling is >= 0 and <= 50 ? rules with { Milling = milling } : throw new BadInputException("--milling", $"“{settings.Milling}” cannot be", "0 mm to 50 mm can");
    }

    private sealed class Shares(IProgress<double> line) : IProgress<CuttingProgress>
    {
        public void Report(CuttingProgress value) => line.Report(value.Share);
    }
}
