using System.Globalization;
using Ringwright.Core.Boards;
using Ringwright.Core.Measures;
using Spectre.Console;

namespace Ringwright.Cli.Output;

/// <summary>Which board gives which strip, and what to buy, as text to follow at the saw.</summary>
internal static class BoardsText
{
    public static void Write(IAnsiConsole console, CuttingPlan plan, MeasureStyle style)
    {
        console.WriteLine(CuttingSteps.Answer(plan));
        WriteShort(console, plan, style);
        foreach (BoardSteps board in CuttingSteps.Of(plan))
        {
            AlignedText.Heading(console, $"{board.Board.Label}, {board.Board.Wood}, {Size(board.Board, style)}");
            AlignedText.Write(console, board.Steps.Select((s, i) => new[] { Number(i + 1), s.In(style) }), 0);
        }

        string[] notes = [.. CuttingSteps.Notes(plan).Select(n => n.In(style))];
        if (notes.Length > 0) AlignedText.Heading(console, "Look at");
        foreach (string note in notes) console.WriteLine("  " + note);
        WriteRests(console, plan, style);
        AlignedText.Heading(console, "How good this is");
        AlignedText.Write(console, Proofs(plan));
        if (!plan.Boards.IsEmpty) AlignedText.Mind(console, BoardCautions.All);
    }

    public static void Write(IAnsiConsole console, BuyingList list, MeasureStyle style)
    {
        console.WriteLine(list.Woods.IsEmpty ? "This piece takes no boards." : "To buy, or to have at hand:");
        foreach (WoodToBuy wood in list.Woods)
        {
            AlignedText.Heading(console, wood.Sentence.In(style));
            AlignedText.Write(console, wood.Strips.SelectMany(s => s.Alike.Select(a => new[]
            {
                Number(a.Times), a.Times == 1 ? "strip" : "strips", style.Length(s.Width) + " wide", "each " + Pieces(list, a),
            })), 0, 2);
            string[] open = [.. wood.Strips.Where(s => !s.Proof.IsProved).Select(s => $"  Strips {style.Length(s.Width)} wide: {Number(s.Count)}; fewer than {Number((int)s.Proof.Bound)} cannot be.")];
            foreach (string line in open) console.WriteLine(line);
        }
    }

    /// <summary>Length, width and thickness.</summary>
    public static string Size(RackBoard board, MeasureStyle style) =>
        $"{style.Length(board.Length.Millimetres)} × {style.Length(board.Width.Millimetres)} × {style.Length(board.Thickness.Millimetres)}";

    private static void WriteShort(IAnsiConsole console, CuttingPlan plan, MeasureStyle style)
    {
        if (plan.Shortages.IsEmpty) return;
        AlignedText.Heading(console, "Short");
        foreach (Shortage shortage in plan.Shortages) console.WriteLine("  " + shortage.Sentence.In(style));
        AlignedText.Heading(console, "To buy");
        foreach (string buy in plan.Shortages.Select(s => s.Buy.Sentence.In(style)).Distinct()) console.WriteLine("  " + buy);
    }

    private static void WriteRests(IAnsiConsole console, CuttingPlan plan, MeasureStyle style)
    {
        RackAfter.Rest[] rests = [.. RackAfter.Rests(plan)];
        if (rests.Length == 0) return;
        AlignedText.Heading(console, "Back to the rack");
        AlignedText.Write(console, rests.Select(r => new[] { r.Board.Label, r.Board.Wood, Size(r.Board, style), r.Strip is null ? "board" : "strip" }));
    }

    private static IEnumerable<string[]> Proofs(CuttingPlan plan)
    {
        yield return ["pieces short", Number(plan.Shortages.Sum(s => s.Pieces)), plan.Lacking.IsProved ? "proved: fewer cannot be" : "not proved: more time may find more"];
        yield return ["boards for the rings, added up", Number((int)plan.Colours.Value), plan.Colours.IsProved ? "proved: fewer cannot be" : $"fewer than {Number((int)plan.Colours.Bound)} cannot be"];
        yield return ["wood taken", "", plan.Wood.IsProved ? "proved: less cannot be" : $"at most {plan.Wood.Gap.ToString("P1", CultureInfo.InvariantCulture)} less could be"];
    }

    private static string Pieces(BuyingList list, StripsAlike strips) =>
        string.Join(", ", strips.Runs.Select(r => $"{Number(r.Count)} {list.Demands[r.Demand].Called(r.Count)} for {list.Demands[r.Demand].Ring}"));

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
