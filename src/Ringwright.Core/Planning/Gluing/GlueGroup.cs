using System.Collections.Immutable;
using System.Globalization;

namespace Ringwright.Core.Planning;

/// <summary>Rings that are glued alike, told together.</summary>
/// <param name="Rings">Their numbers, 0-based, from the bottom up.</param>
/// <param name="Like">The first of them.</param>
/// <param name="Name">What they are called: the name of a single one, or which rings.</param>
/// <param name="Steps">What to do for each of them, in order.</param>
/// <param name="Truing">Most that truing the halves of one of them takes off; null when none has halves.</param>
public sealed record GlueGroup(ImmutableArray<int> Rings, RingGluing Like, string Name, ImmutableArray<Sentence> Steps, Measured? Truing)
{
    /// <summary>The rings of a plan in groups; those without anything to glue are left out.</summary>
    public static ImmutableArray<GlueGroup> Of(GluePlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            .. Enumerable.Range(0, plan.Rings.Length).Where(i => plan.Rings[i].Steps.Length > 0).GroupBy(i => Key(plan.Rings[i])).Select(g =>
            {
                int[] rings = [.. g];
                RingGluing[] alike = [.. rings.Select(i => plan.Rings[i])];
                return new GlueGroup([.. rings], alike[0], NameOf(plan, rings), alike.Length == 1 || alike[0].GlueUps.IsEmpty || alike[0].Way == GlueWay.Edges ? alike[0].Steps : [.. RingGlueSteps.Closed(alike, plan.Plan.Shop)],
                    alike.Select(r => r.Find("truing")?.Measured).MaxBy(m => m?.Value));
            }),
        ];
    }

    /// <summary>How it is brought together, in a few words.</summary>
    public string Way => Like.Way switch
    {
        GlueWay.Edges => "boards edge to edge",
        GlueWay.AtOnce => "all at once",
        GlueWay.Runs => "runs, then closed",
        GlueWay.Halves => "two halves, trued",
        GlueWay.FitLast => "all but the last, which is fitted",
        GlueWay.PieceByPiece => "piece by piece",
        GlueWay.FromDisc => "out of a disc",
        _ => "one piece",
    };

    private static string Key(RingGluing ring) => string.Join('|', ring.Way, ring.Pieces, ring.Ring.Board?.Name, ring.Ring.Stave is null, ring.Ring.Lamination is null ? "" : ring.Ring.Ring.Name, string.Join(' ', ring.Stages));

    private static string NameOf(GluePlan plan, int[] rings) => rings.Length == 1 ? plan.Rings[rings[0]].Ring.Ring.Name : $"Rings {Numbers(rings)}, from the bottom";

    private static string Numbers(int[] rings)
    {
        List<string> runs = [];
        for (int from = 0, to = 0; from < rings.Length; from = to)
        {
            while (to < rings.Length && rings[to] - rings[from] == to - from) to++;
            runs.Add(to - from == 1 ? Text(rings[from]) : $"{Text(rings[from])}–{Text(rings[to - 1])}");
        }

        return string.Join(", ", runs);
    }

    private static string Text(int ring) => (ring + 1).ToString(CultureInfo.InvariantCulture);
}
