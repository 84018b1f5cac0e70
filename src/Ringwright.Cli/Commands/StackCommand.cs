using System.Globalization;
using Ringwright.Cli.Output;
using Ringwright.Cli.Reference;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Spectre.Console;
using Spectre.Console.Cli;

namespace Ringwright.Cli.Commands;

/// <summary><c>ringwright stack FILE --heights LIST</c>: the rings for a shape.</summary>
internal sealed class StackCommand(IAnsiConsole console) : Command<StackSettings>, IHelped
{
    public static CommandHelp Help { get; } = new(
        "stack",
        "Find the rings for a piece's shape: heights from the boards at hand, segments, and few widths to rip.",
        "stack examples/feature-bowl.json --heights \"18 mm, 25 mm\" --segments 16");

    public override int Execute(CommandContext context, StackSettings settings, CancellationToken cancellationToken)
    {
        Piece piece = DocumentFile.Read(settings.File, DocumentJson.ReadPiece);
        Shape shape = piece.Shape ?? throw new BadInputException(Path.GetFileName(settings.File), "it has no shape", "'ringwright new bowl' and its like write a piece with one");
        MeasureStyle style = settings.Style(piece.Units);
        Shop shop = settings.ReadShop(piece.Units);
        IEnumerable<string> woods = settings.Woods is null ? piece.Rings[0].Cycle : TypedText.Woods(settings.Woods);
        StackSuggestion stack = StackFinder.Find(StackOptions.Request(shape, style.Unit, settings.Heights, settings.Segments, settings.RimEdge, settings.Extra, woods), shop);
        Piece stacked = piece with { Rings = stack.Rings };
        Plan plan = Planner.Plan(stacked, shop);
        Print(stack, plan, style);
        if (settings.Out is null) return ExitCode.Done;
        SafeFile.Write(settings.Out, DocumentJson.Write(stacked));
        AlignedText.Heading(console, "Written");
        console.WriteLine("  " + settings.Out);
        return ExitCode.Done;
    }

    private void Print(StackSuggestion stack, Plan plan, MeasureStyle style)
    {
        string Volume(double v) => style.Print(v, Quantity.Volume);
        console.WriteLine($"{stack.Rings.Length} rings, {Volume(stack.Wood)} of strip without spares and board ends.");
        console.WriteLine($"  fewest rings: {stack.FewestRings.Rings} of {Volume(stack.FewestRings.Wood)}; least wood: {stack.LeastWood.Rings} rings of {Volume(stack.LeastWood.Wood)}");
        console.WriteLine(plan.Verdict.In(style));
        AlignedText.Heading(console, "Rings, from the top down");
        AlignedText.Write(console, plan.Rings.Reverse().Select(r => new[]
        {
            r.Ring.Name, RingDescription.Of(r.Ring).In(style), style.Length(r.Ring.Thickness.Millimetres) + " high", "rip " + style.Length(r["board-width"].Value),
        }), 2, 3);
        if (stack.Widths.Length < 2) return;
        AlignedText.Heading(console, "Widths to rip, and the wood that fewer of them cost");
        AlignedText.Write(console, stack.Widths.Select((w, k) => new[]
        {
            w.Widths.Length.ToString(CultureInfo.InvariantCulture), style.Print(w.Extra / stack.Wood, Quantity.Share) + " more", string.Join(", ", w.Widths.Select(style.Length)), k == stack.Chosen ? "chosen" : "",
        }), 0, 1);
    }
}
