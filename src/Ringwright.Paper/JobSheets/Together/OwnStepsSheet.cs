using Ringwright.Paper.Blocks;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>What each ring asks for beside what holds for all, under each other: on a sheet of its own it would leave most of it empty.</summary>
internal static class OwnStepsSheet
{
    /// <summary>What the contents call these sheets.</summary>
    public const string Name = "Order of work by ring";

    /// <summary>Whether any ring's steps stand here.</summary>
    public static bool IsFor(AllRings rings) => rings.Jobs.Any(j => Has(rings, j));

    /// <summary>Whether a ring's own steps stand here; those of a ring of several wedges stand on its own sheet.</summary>
    public static bool Has(AllRings rings, RingJob job) => job.Ring.Batches.Length == 1 && rings.OwnSteps(job).Any();

    public static void Add(Packet packet, AllRings rings) => packet.Flow(Name, "–", [
        new Paragraph($"Beside what holds for every ring: see “{AllRingsSheet.Name}”.", RingJob.Words),
        .. rings.Jobs.Where(j => Has(rings, j)).GroupBy(j => string.Join('\n', rings.OwnSteps(j)))
            .Select(same => new Section(string.Join(", ", same.Select(j => j.Ring.Ring.Name)), new ListBlock(ListMark.Number, [.. rings.OwnSteps(same.First())], RingJob.Words))),
    ]);
}
