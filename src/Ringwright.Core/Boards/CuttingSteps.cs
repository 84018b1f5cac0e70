using System.Collections.Immutable;
using System.Globalization;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Boards;

/// <summary>What to do with one board, in order.</summary>
/// <param name="Board">The board.</param>
/// <param name="Steps">The steps.</param>
public sealed record BoardSteps(RackBoard Board, ImmutableArray<Sentence> Steps);

/// <summary>The cutting as it is done at the saw: crosscut the defects out, rip lengthwise, plane, crosscut each strip into its pieces.</summary>
public static class CuttingSteps
{
    /// <summary>The answer in one sentence: whether the rack is enough, and how many boards it takes.</summary>
    public static string Answer(CuttingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Demands.IsEmpty) return "This piece takes no boards.";
        string boards = string.Create(CultureInfo.InvariantCulture, $"{plan.Boards.Length} of {plan.Rack.Boards.Length} boards {(plan.Boards.Length == 1 ? "is" : "are")} sawn into.");
        int missing = plan.Shortages.Sum(s => s.Missing), spares = plan.Shortages.Sum(s => s.Spares);
        return (missing, spares) switch
        {
            (0, 0) => $"The rack is enough: {boards}",
            (0, _) => string.Create(CultureInfo.InvariantCulture, $"The rack is enough but for {spares} {(spares == 1 ? "spare" : "spares")}: {boards}"),
            _ => string.Create(CultureInfo.InvariantCulture, $"The rack is not enough: {missing} {(missing == 1 ? "piece is" : "pieces are")} short, {(plan.Lacking.IsProved ? "however it is sawn" : "as far as was searched")}; {boards}"),
        };
    }

    /// <summary>The steps, board after board.</summary>
    public static ImmutableArray<BoardSteps> Of(CuttingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ILookup<(SawnBoard, int, int?), string> labels = RackAfter.Rests(plan).ToLookup(r => (r.Source, r.Stretch, r.Strip), r => r.Board.Label);
        return [.. plan.Boards.Select(b => new BoardSteps(b.Board, [.. Of(b, plan, (stretch, strip) => labels[(b, stretch, strip)].FirstOrDefault())]))];
    }

    /// <summary>What deserves a word besides: wood of one ring from several boards, boards that are drier or wetter than the shop's wood.</summary>
    public static IEnumerable<Sentence> Notes(CuttingPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Colours(plan).Concat(Moisture(plan));
    }

    private static IEnumerable<Sentence> Of(SawnBoard board, CuttingPlan plan, Func<int, int?, string?> label)
    {
        // Stretches of one board are told apart by where they begin.
        bool several = board.Stretches.Length > 1 || board.Stretches[0].Length < board.Board.Length.Millimetres;
        if (several) yield return Crosscut(board);
        for (int s = 0; s < board.Stretches.Length; s++)
        {
            StretchCut stretch = board.Stretches[s];
            string where = several ? "Stretch from {0}: " : "";
            if (stretch.Strips.IsEmpty)
            {
                if (label(s, null) is string back) yield return Sentence.Of($"{where}not sawn into; back to the rack as {Sentence.Escape(back)}.", Measured.Length(stretch.From));
                continue;
            }

            foreach (Sentence step in Rip(stretch, where, label(s, null))) yield return step;
            for (int t = 0; t < stretch.Strips.Length; t++) yield return Saw(stretch.Strips[t], t + 1, several ? stretch.From : null, plan, label(s, t));
        }
    }

    private static Sentence Crosscut(SawnBoard board)
    {
        double[] at = [.. board.Stretches.SelectMany(s => new[] { s.From, s.To }).Where(x => x > 0 && x < board.Board.Length.Millimetres)];
        return Sentence.Of($"Crosscut at {List(at.Length, 0)} from the labelled end, the blade on the side of the defect.", [.. at.Select(Measured.Length)]);
    }

    private static IEnumerable<Sentence> Rip(StretchCut stretch, string where, string? rest)
    {
        var alike = stretch.Strips.GroupBy(s => (s.Width, s.Thickness)).ToArray();
        string what = string.Join(", then ", alike.Select((g, i) => string.Create(CultureInfo.InvariantCulture, $"{g.Count()} {(g.Count() == 1 ? "strip" : "strips")} {{{i + 1}}} wide")));
        string left = rest is null
            ? stretch.RestWidth > 1 ? $"; {{{alike.Length + 1}}} of its width are too little to keep" : ""
            : $"; {{{alike.Length + 1}}} of its width stay: {Sentence.Escape(rest)}";
        yield return Sentence.Of($"{where}{(where.Length == 0 ? "M" : "m")}ake one edge straight, then rip {what}, all {{{alike.Length + 2}}} long{left}.",
            [Measured.Length(stretch.From), .. alike.Select(g => Measured.Length(g.Key.Width)), Measured.Length(stretch.RestWidth), Measured.Length(stretch.Length)]);
        foreach (var g in stretch.Strips.GroupBy(s => s.Thickness))
            yield return Sentence.Of($"{where}{(where.Length == 0 ? "P" : "p")}lane {(g.Count() == stretch.Strips.Length ? "them" : "those of " + List(g.Select(s => s.Width).Distinct().Count(), 2))} to {{1}}.",
                [Measured.Length(stretch.From), Measured.Length(g.Key), .. g.Select(s => s.Width).Distinct().Select(Measured.Length)]);
    }

    private static Sentence Saw(StripCut strip, int number, double? from, CuttingPlan plan, string? rest)
    {
        List<Measured> values = [Measured.Count(number), Measured.Length(strip.Width), Measured.Length(strip.Rest), Measured.Length(from ?? 0)];
        string pieces = string.Join(", then ", strip.Runs.Select(run =>
        {
            StripDemand demand = plan.Demands[run.Demand];
            values.Add(Measured.Count(run.Count));
            string said = $"{{{values.Count - 1}}} {demand.Called(run.Count)}";
            if (demand.Piece != StripPiece.Wedge)
            {
                values.Add(Measured.Length(demand.MeanLength));
                said += $" {{{values.Count - 1}}} long";
            }

            return $"{said} for {Sentence.Escape(demand.Ring)}";
        }));
        string after = rest is null ? "{2} stay in the hand" : $"{{2}} stay: {Sentence.Escape(rest)}";
        return Sentence.Of($"Strip {{0}}{(from is null ? "" : " from {3}")}, {{1}} wide: saw its end square, then {pieces}; {after}.", [.. values]);
    }

    private static IEnumerable<Sentence> Colours(CuttingPlan plan)
    {
        var from = plan.Boards.SelectMany(b => b.Stretches.SelectMany(s => s.Strips).SelectMany(s => s.Runs).Select(r => (b.Board, b.Family, plan.Demands[r.Demand].Ring, plan.Demands[r.Demand].Wood)));
        return from.GroupBy(f => (f.Ring, Wood: f.Wood.ToUpperInvariant()))
            .Where(g => g.Select(f => f.Family.ToUpperInvariant()).Distinct().Count() > 1)
            .Select(g => Sentence.Of($"{Sentence.Escape(g.Key.Ring)}: its {Sentence.Escape(g.First().Wood)} comes from {Sentence.Escape(string.Join(" and ", g.Select(f => f.Board.Label).Distinct()))}, whose colours may differ: spread them around the ring, or lay them out dry first."));
    }

    private static IEnumerable<Sentence> Moisture(CuttingPlan plan)
    {
        const double Apart = 2; // percentage points; common practice, no source
        if (plan.Rules.Moisture is not double wanted) return [];
        return plan.Boards.Select(b => b.Board).Where(b => b.Moisture is double own && Math.Abs(own - wanted) > Apart)
            .Select(b => Sentence.Of($"Board {Sentence.Escape(b.Label)} was measured at {{0}}, the shop glues at {{1}}: leave it in the shop until both agree, or the joints will open.", Measured.Share(b.Moisture!.Value / 100), Measured.Share(wanted / 100)));
    }

    // "{0}, {1} and {2}"
    private static string List(int count, int first)
    {
        string[] places = [.. Enumerable.Range(first, count).Select(i => string.Create(CultureInfo.InvariantCulture, $"{{{i}}}"))];
        return places.Length <= 1 ? string.Concat(places) : string.Join(", ", places[..^1]) + " and " + places[^1];
    }
}
