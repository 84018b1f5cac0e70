using System.Collections.Immutable;
using System.Globalization;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Boards;

/// <summary>What goes back to the rack: boards not sawn into as they were, and in place of each other one its useful rests.</summary>
public static class RackAfter
{
    /// <summary>A rest, where in the plan it comes from.</summary>
    /// <param name="Board">The board on the new rack.</param>
    /// <param name="Source">The board it was sawn from.</param>
    /// <param name="Stretch">Which of its stretches.</param>
    /// <param name="Strip">Which strip of that; null for what is not ripped.</param>
    public sealed record Rest(RackBoard Board, SawnBoard Source, int Stretch, int? Strip);

    /// <summary>The rack when the job is done.</summary>
    public static Rack Of(CuttingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ILookup<string, RackBoard> rests = Rests(plan).ToLookup(r => r.Source.Board.Label, r => r.Board, StringComparer.OrdinalIgnoreCase);
        HashSet<string> sawn = new(plan.Boards.Select(b => b.Board.Label), StringComparer.OrdinalIgnoreCase);
        return plan.Rack with { Boards = [.. plan.Rack.Boards.SelectMany(b => sawn.Contains(b.Label) ? rests[b.Label] : [b])] };
    }

    /// <summary>All rests worth keeping, each with its new label.</summary>
    public static ImmutableArray<Rest> Rests(CuttingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var labels = new HashSet<string>(plan.Rack.Boards.Select(b => b.Label), StringComparer.OrdinalIgnoreCase);
        return [.. plan.Boards.SelectMany(b => Of(b, plan, labels))];
    }

    private static IEnumerable<Rest> Of(SawnBoard sawn, CuttingPlan plan, HashSet<string> labels)
    {
        for (int s = 0; s < sawn.Stretches.Length; s++)
        {
            StretchCut stretch = sawn.Stretches[s];
            if (IsUseful(stretch.Length, stretch.RestWidth, plan.Rules))
                yield return new(Part(sawn.Board, stretch.Length, stretch.RestWidth, sawn.Board.Thickness.Millimetres, plan, labels), sawn, s, null);
            for (int t = 0; t < stretch.Strips.Length; t++)
                if (IsUseful(stretch.Strips[t].Rest, stretch.Strips[t].Width, plan.Rules))
                    yield return new(Part(sawn.Board, stretch.Strips[t].Rest, stretch.Strips[t].Width, stretch.Strips[t].Thickness, plan, labels), sawn, s, t);
        }
    }

    private static bool IsUseful(double length, double width, BoardRules rules) => length >= rules.LeastLength && width >= rules.LeastWidth;

    // Its price is its share of the board's face: thickness planed away was paid for with the strip.
    private static RackBoard Part(RackBoard board, double length, double width, double thickness, CuttingPlan plan, HashSet<string> labels)
    {
        double share = length * width / (board.Length.Millimetres * board.Width.Millimetres);
        return board with
        {
            Label = Free(board.Label, labels),
            Length = Down(length, plan.Rack.Units),
            Width = Down(width, plan.Rack.Units),
            Thickness = thickness == board.Thickness.Millimetres ? board.Thickness : Length.FromMillimetres(Math.Round(thickness, 3)),
            Price = board.Price is double price ? Math.Round(price * share, 2) : null,
            Defects = null,
            CameFrom = SawnBoard.FamilyOf(board),
        };
    }

    private static string Free(string label, HashSet<string> labels)
    {
        const int Longest = 34; // leaves room for a number within what a label may have
        string stem = label.Length <= Longest ? label : label[..Longest];
        for (int n = 1; ; n++)
        {
            string next = string.Create(CultureInfo.InvariantCulture, $"{stem}-{n}");
            if (labels.Add(next)) return next;
        }
    }

    // As a rule reads it, and never more than there is.
    private static Length Down(double mm, LengthUnit unit) => unit == LengthUnit.Inch
        ? Length.Parse(MeasureStyle.InchFractions.Length(Math.Floor((mm / MeasureStyle.MillimetresPerInch * 64) + 1e-6) / 64 * MeasureStyle.MillimetresPerInch))
        : Length.FromMillimetres(Math.Round(Math.Floor((mm * 10) + 1e-6) / 10, 1));
}
