using System.ComponentModel;
using Ringwright.Cli.Commands.Kept;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core.Documents;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright learn [RECORD] --shop SHOP</c>: what real runs say of these hands.</summary>
internal sealed class LearnCommand(IAnsiConsole console) : Command<LearnCommand.Settings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "learn",
        "What a record of real runs says of these hands; the next plan uses it.",
        "learn examples/bench-record.json --shop examples/small-shop.json");

    internal sealed class Settings : ShopSettings
    {
        [CommandArgument(0, "[RECORD]")]
        [Description("The record of runs; otherwise the one in your data folder ('ringwright record').")]
        public string? Record { get; init; }

        [CommandOption("-o|--out <SHOP>")]
        [Description("Where to write the shop with the learned values; the shop's own file is allowed. Otherwise they are only printed.")]
        public string? Out { get; init; }

        [CommandOption("--json")]
        [Description("The learned values as JSON.")]
        public bool Json { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        Shop shop = settings.ReadShop(LengthUnit.Millimetre);
        RunLog log = settings.Record is null ? KeptData.Read(store => store.Record.Read()) : DocumentFile.Read(settings.Record, DocumentJson.ReadRunLog);
        HandBelief belief = ShopLearning.Believe(log, shop.Sled.Kind);
        Shop learned = ShopLearning.Learn(shop, log);
        if (settings.Json) JsonOut.Write(console, json => WriteJson(json, learned, belief));
        else foreach (string sentence in LearnedSentences.Of(belief)) console.WriteLine(sentence);
        if (settings.Out is null) return ExitCode.Done;
        SafeFile.Write(settings.Out, DocumentJson.Write(learned));
        if (!settings.Json) console.WriteLine($"{settings.Out} written; plans made with it use these values and say so.");
        return ExitCode.Done;
    }

    private static void WriteJson(System.Text.Json.Utf8JsonWriter json, Shop learned, HandBelief belief)
    {
        json.WriteString("basis", learned.Hands.Basis);
        json.WriteNumber("angleSd", learned.Hands.AngleSd.Radians);
        json.WriteNumber("angleBias", learned.Hands.AngleBias.Radians);
        json.WriteNumber("loss", learned.Hands.Loss);
        json.WriteNumber("lossWorth", learned.Hands.LossWorth!.Value);
        json.WriteNumber("minutesPerCut", learned.Hands.MinutesPerCut);
        json.WriteNumber("minutesPerFace", learned.Hands.MinutesPerFace);
        json.WriteTexts("says", LearnedSentences.Of(belief));
    }
}
