using System.Collections.Immutable;
using System.ComponentModel;
using System.Globalization;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Patterns;
using Ringwright.Core.Patterns.Generators;
using Ringwright.Core.Patterns.Pictures;
using Ringwright.Core.Patterns.Reports;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Pictures.Pieces;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright pattern FILE --lay STEP</c>: woods for every segment, from numbers or from a picture.</summary>
internal sealed class PatternCommand(IAnsiConsole console) : Command<PatternCommand.Settings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "pattern",
        "Give every segment its wood: spirals, diamonds and the like from numbers, or a picture.",
        "pattern examples/feature-bowl.json --lay \"spiral maple,walnut 1\"");

    internal sealed class Settings : PieceSettings
    {
        [CommandOption("--lay <STEP>")]
        [Description("A step of the pattern, such as \"spiral maple,walnut 1\" or \"mirror 2\"; repeat the option for further steps.")]
        public string[] Lay { get; init; } = [];

        [CommandOption("--image <FILE>")]
        [Description("A PNG or JPEG to be shown by the segments, before any steps.")]
        public string? Image { get; init; }

        [CommandOption("--woods <LIST>")]
        [Description("Woods at hand for the picture, separated by commas; the first is its background.")]
        public string? Woods { get; init; }

        [CommandOption("--sizing <HOW>")]
        [Description("How large the picture lies: around, whole, cover or stretch; around otherwise.")]
        public string Sizing { get; init; } = "around";

        [CommandOption("--spread")]
        [Description("Hand the difference between picture and wood on to the next segments: for thousands of small ones.")]
        public bool Spread { get; init; }

        [CommandOption("-o|--out <FILE>")]
        [Description("The piece with the pattern; without it the report is only shown.")]
        public string? Out { get; init; }

        [CommandOption("--picture <FILE>")]
        [Description(PictureFile.Help)]
        public string? Picture { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        PictureFile.Check(settings.Picture);
        Plan plan = settings.Plan();
        Lattice lattice = PieceLattice.Of(plan);
        PicturedPattern? picture = settings.Image is null ? null : Reduce(settings, lattice);
        if (picture is null && settings.Lay.Length == 0) throw new BadInputException("pattern", "no step and no picture is given", "--lay \"repeat maple,walnut\" or --image FILE makes one");
        Pattern pattern = settings.Lay.Length == 0 ? picture!.Pattern : PatternSteps.Read(settings.Lay, picture?.Pattern);
        ImmutableArray<ImmutableArray<string>> rows = pattern.On(lattice);
        Piece painted = PieceLattice.Paint(plan.Piece, rows);
        Plan repainted = Planner.Plan(painted, plan.Shop);
        Print(pattern, lattice, rows, picture);
        if (settings.Picture is not null)
            PictureFile.Write(console, settings.Picture, PiecePage.Unrolled(repainted, settings.Style(plan.Piece.Units), coloured: true), PlanFiles.UnrolledTitle(repainted), json: false);
        if (settings.Out is null) return ExitCode.Done;
        SafeFile.Write(settings.Out, DocumentJson.Write(painted));
        AlignedText.Heading(console, "Written");
        console.WriteLine("  " + settings.Out);
        return ExitCode.Done;
    }

    private static PicturedPattern Reduce(Settings settings, Lattice lattice)
    {
        string[] woods = settings.Woods is null ? [] : TypedText.Woods(settings.Woods);
        if (woods.Length == 0) throw new BadInputException("--woods", "it is missing", "name the woods at hand, such as maple,walnut,cherry");
        if (!Enum.TryParse(settings.Sizing, ignoreCase: true, out PictureSizing sizing) || !Enum.IsDefined(sizing))
            throw new BadInputException("--sizing", $"“{settings.Sizing}” is not known", "around, whole, cover or stretch is needed");
        PixelPicture pixels = Paper.Pictures.PixelFile.Read(SafeFile.ReadBytes(settings.Image!, Paper.Pictures.PixelFile.MostBytes));
        return PictureReducer.Reduce(pixels, lattice, new()
        {
            Woods = [.. woods],
            Background = woods[0],
            Placement = new() { Sizing = sizing },
            Spread = settings.Spread ? ErrorSpread.Light : ErrorSpread.None,
        });
    }

    private void Print(Pattern pattern, Lattice lattice, ImmutableArray<ImmutableArray<string>> rows, PicturedPattern? picture)
    {
        string Count(int n) => n.ToString(CultureInfo.InvariantCulture);
        console.WriteLine(pattern is Drawn && picture is not null
            ? string.Create(CultureInfo.InvariantCulture, $"The picture in {rows.Sum(r => r.Length)} segments; colours differ by {picture.MeanDifference:0.#} on average (CIEDE2000; about 2 is just seen).")
            : pattern.Describe());
        foreach (string doubt in pattern.Doubts(lattice)) console.WriteLine("Doubt: " + doubt);
        foreach (NeighbourContrast weak in NeighbourContrast.Of(lattice, rows).Where(c => c.Contrast.IsWeak).Take(3)) console.WriteLine("Doubt: " + weak.Sentence);
        AlignedText.Heading(console, "Pieces of each wood");
        AlignedText.Write(console, WoodCounts.Of(rows).InAll.Select(w => new[] { w.Wood, Count(w.Pieces) }), 1);
    }
}
