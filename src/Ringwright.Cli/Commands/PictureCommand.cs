using System.ComponentModel;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Paper.Pictures;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright picture FILE --view NAME --out FILE</c>: any view of a plan as a file.</summary>
internal sealed class PictureCommand(IAnsiConsole console) : Command<PictureCommand.Settings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "picture",
        "Any view of a plan as SVG, PNG or PDF; without a view, list them.",
        "picture examples/walnut-ring.json",
        "picture examples/walnut-ring.json --view fence --out fence.png");

    internal sealed class Settings : RingSettings
    {
        [CommandOption("--view <NAME>")]
        [Description("Which; without it the views of this piece are listed.")]
        public string? View { get; init; }

        [CommandOption("-o|--out <FILE>")]
        [Description("Where to: .svg, .png or .pdf.")]
        public string? Out { get; init; }

        [CommandOption("--wedge <N>")]
        [Description("Which wedge of a ring whose wedges are not all alike; the first otherwise.")]
        public int Wedge { get; init; } = 1;

        [CommandOption("--colour")]
        [Description("Also with a guess of each wood's colour.")]
        public bool Colour { get; init; }
    }

    public override int Execute(CommandContext context, Settings settings, CancellationToken cancellationToken)
    {
        PictureFile.Check(settings.Out, "--out");
        PlanView? view = settings.View is null ? null : PlanView.Named(settings.View);
        Plan plan = settings.Plan();
        RingPlan ring = settings.Pick(plan);
        if (settings.Wedge < 1 || settings.Wedge > Math.Max(1, ring.Batches.Length)) throw new BadInputException("--wedge", $"there is no wedge {settings.Wedge}", $"1 to {Math.Max(1, ring.Batches.Length)} is needed");
        if (view is null)
        {
            AlignedText.Write(console, PlanView.Of(plan, ring).Select(v => new[] { v.Name, v.Shows }));
            return ExitCode.Done;
        }

        if (settings.Out is null) throw new BadInputException("--out", "no file is named", "a name that ends with .svg, .png or .pdf is needed");
        MeasureStyle style = settings.Style(plan.Piece.Units);
        // A ring from above is whole; what is set and sawn is about one of its wedges.
        RingPlan shown = view.Name == "ring" ? ring : ring.Alone(settings.Wedge - 1);
        PictureFile.Write(console, settings.Out, view.Draw(plan, shown, style, settings.Colour), $"{plan.Piece.Name}{(view.OfRing ? $", {ring.Ring.Name}" : "")}: {view.Shows}", json: false);
        return ExitCode.Done;
    }
}
