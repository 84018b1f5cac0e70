using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.JobSheets;

/// <summary>The rings of wedges of a piece, for the sheets that say once what holds for all of them.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Jobs">A job for each ring with wedges of its own, staves left out; from the bottom up.</param>
internal sealed record AllRings(Plan Plan, IReadOnlyList<RingJob> Jobs)
{
    private const double MostWords = 44; // of the names of rings in a row, mm

    private readonly HashSet<string> _common = Common(Jobs);

    /// <summary>What every ring asks for in the same words, in the order of the work.</summary>
    public IEnumerable<string> Steps => Jobs[0].Ring.Steps.Select(s => s.In(Jobs[0].Style)).Where(_common.Contains);

    /// <summary>The rings of a packet.</summary>
    public static AllRings Of(Plan plan, MeasureStyle style, Drawings.Box free) =>
        new(plan, [.. plan.Rings.Where(r => !r.Batches.IsEmpty && r.Stave is null).Select(r => new RingJob(plan, r, style, free.Width, free.Height))]);

    /// <summary>
    /// What is said to no other ring, in its order; nothing for a plain ring of wedges, whose figures stand large on its sheet.
    /// </summary>
    public IEnumerable<string> OwnSteps(RingJob job) => IsPlain(job.Ring) ? [] : job.Ring.Steps.Select(s => s.In(job.Style)).Where(s => !_common.Contains(s));

    /// <summary>A row for each ring, or for several together that have the same numbers; the names of the rings stand first.</summary>
    public static IReadOnlyList<string>[] Rows(IEnumerable<(string Name, string[] Cells)> rows) =>
        [.. rows.GroupBy(r => string.Join('\n', r.Cells)).Select(g => (string[])[Names([.. g.Select(r => r.Name)]), .. g.First().Cells])];

    private static string Names(string[] names)
    {
        string all = string.Join(", ", names);
        if (Fits(all) || names.Length == 1) return Shortened.To(all, Fits);
        string count = string.Create(CultureInfo.InvariantCulture, $" and {names.Length - 1} more");
        return Shortened.To(names[0], name => Fits(name + count)) + count;
    }

    private static bool Fits(string words) => Typesetter.WidthOf(words, TypeScale.Number) <= MostWords;

    private static bool IsPlain(RingPlan ring) => ring.Batches.Length == 1 && ring.Spacers.IsEmpty && ring.Board is null && ring.Lamination is null && ring.Ring is not OpenRing;

    private static HashSet<string> Common(IReadOnlyList<RingJob> jobs)
    {
        IEnumerable<string>[] all = [.. jobs.Select(j => j.Ring.Steps.Select(s => s.In(j.Style)))];
        return all.Length == 0 ? [] : [.. all.Aggregate((a, b) => a.Intersect(b))];
    }
}
