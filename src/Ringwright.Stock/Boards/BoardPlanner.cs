using System.Collections.Immutable;
using System.Diagnostics;
using Ringwright.Core.Boards;

namespace Ringwright.Stock.Boards;

/// <summary>
/// Plans boards wood by wood: a sensible layout first, then an integer programme (CP-SAT) that asks three things one after another, each
/// without giving up what came before: as few pieces short as can be, as few boards for each ring, the least wood. What is not proved
/// within the limit is said so.
/// </summary>
/// <param name="seconds">Limit by the clock for everything, shared among the woods.</param>
public sealed class BoardPlanner(double seconds = BoardPlanner.UsualSeconds) : IBoardPlanner
{
    /// <summary>The limit where none is given.</summary>
    public const double UsualSeconds = 10;

    private const double UsualWork = 2; // of each question, in the solver's own count: the answer then does not depend on the clock

    private sealed record Settled(RackSpace Space, RackLayout Layout, CuttingProof Short, CuttingProof Colours, CuttingProof Wood);

    /// <inheritdoc/>
    public CuttingPlan Plan(CuttingRequest request, IProgress<CuttingProgress>? progress = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        long started = Stopwatch.GetTimestamp();
        string[] woods = [.. request.Demands.Where(d => d.ToSaw > 0).Select(d => request.WoodOf(d.Wood)).Distinct()];
        List<Settled> settled = [];
        foreach (string wood in woods)
        {
            progress?.Report(new((double)settled.Count / woods.Length, wood.ToLowerInvariant()));
            double left = seconds - Stopwatch.GetElapsedTime(started).TotalSeconds;
            settled.Add(Settle(new(request, wood), left / (woods.Length - settled.Count), cancel));
        }

        progress?.Report(new(1, "done"));
        return new(request, Boards(request, settled))
        {
            Short = Sum(settled.Select(s => s.Short)),
            Colours = Sum(settled.Select(s => s.Colours)),
            Wood = Sum(settled.Select(s => s.Wood)),
        };
    }

    private static CuttingProof Sum(IEnumerable<CuttingProof> proofs) => proofs.Aggregate(new CuttingProof(0, 0), (a, b) => new(a.Value + b.Value, a.Bound + b.Bound));

    private static Settled Settle(RackSpace space, double seconds, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        long started = Stopwatch.GetTimestamp();
        SearchLimit Limit(int stagesLeft) => new(Math.Min(UsualWork, seconds), (seconds - Stopwatch.GetElapsedTime(started).TotalSeconds) / stagesLeft);
        RackLayout layout = new RackGreedy(space).Lay();
        var model = new RackModel(space);
        double ShortOf(RackLayout l) => l.Short(model.NeededWeighs);
        CuttingProof Ask(RackModel.Stage stage, int left, Func<RackLayout, double> value, double known)
        {
            if (value(layout) <= known) return new(value(layout), known);
            RackModel.Outcome outcome = model.Minimise(stage, layout, Limit(left), cancel);
            if (outcome.Layout is RackLayout found && value(found) < value(layout)) layout = found;
            // The programme counts in small whole units; what it calls best is best but for their rounding.
            return new(value(layout), outcome.IsBest ? value(layout) : Math.Min(value(layout), Math.Max(known, outcome.Bound)));
        }

        CuttingProof few = Ask(RackModel.Stage.Short, 3, ShortOf, 0);
        model.HoldShort((long)few.Value);
        // Every ring that gets anything gets it from one board at least.
        int rings = space.Classes.SelectMany(c => c.Demands).Where(d => layout.Given(d) > 0).Select(d => space.Demand(d).Ring).Distinct().Count();
        CuttingProof colours = Ask(RackModel.Stage.Colours, 2, l => l.Colours(), few.Value == 0 ? rings : 0);
        model.HoldColours((long)colours.Value);
        return new(space, layout, few, colours, Ask(RackModel.Stage.Wood, 1, l => l.Cost(), 0)) { Layout = layout };
    }

    private static ImmutableArray<SawnBoard> Boards(CuttingRequest request, List<Settled> settled)
    {
        var used = settled.SelectMany(s => s.Space.Stretches.Select((stretch, i) => (Stretch: stretch, Settled: s, Strips: s.Layout.Strips[i])))
            .GroupBy(s => s.Stretch.Board).Where(g => g.Any(s => s.Strips.Count > 0)).OrderBy(g => g.Key);
        return [.. used.Select(g => new SawnBoard(request.Rack.Boards[g.Key], [.. g.OrderBy(s => s.Stretch.Index).Select(s => Cut(request, s.Stretch, s.Settled, s.Strips))]))];
    }

    private static StretchCut Cut(CuttingRequest request, Stretch stretch, Settled settled, List<LaidStrip> strips)
    {
        RackBoard board = request.Rack.Boards[stretch.Board];
        (double from, double to) = SoundStretches.Of(board, request.Rules.Kerf)[stretch.Index];
        if (strips.Count == 0) return new(from, to, [], board.Width.Millimetres);
        RackSpace space = settled.Space;
        ImmutableArray<StripCut> cuts = [.. strips.OrderByDescending(s => space.Classes[s.Class].Width).ThenByDescending(settled.Layout.Used).Select(s => new StripCut(
            space.Classes[s.Class].Width, space.Classes[s.Class].Thickness, [.. s.Pieces.Select(p => new PieceRun(p.Key, p.Value))],
            stretch.Length - request.Rules.EndTrim - s.Pieces.Sum(p => Math.Max(0, space.Demand(p.Key).Start) + (p.Value * space.Demand(p.Key).Pitch))))];
        return new(from, to, cuts, Math.Max(0, settled.Layout.FreeAcross(Array.IndexOf(space.Stretches, stretch)) - request.Rules.Kerf));
    }
}
