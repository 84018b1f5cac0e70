using System.Globalization;
using Ringwright.Paper.Blocks;

namespace Ringwright.Paper.JobSheets;

/// <summary>The wedges of a ring that are not all alike, the spacers between them, and their order.</summary>
internal static class BatchTables
{
    public static IEnumerable<IBlock> Of(RingJob job)
    {
        bool several = job.Ring.Batches.Length > 1;
        if (several) yield return new Section("Wedges, those sawn alike together", WedgeTable(job, [.. Wedges(job)]));
        if (!job.Ring.Spacers.IsEmpty) yield return new Section("Spacers, faces parallel, grain along them", SpacerTable([.. Spacers(job)]));
        if (several) yield return new Section("Around the ring, counter-clockwise; letter and number of the wedge, spacers in brackets", new Paragraph(RingWords.Order(job.Ring, job.Key)));
    }

    private static Table WedgeTable(RingJob job, string[][] rows) => new(
        [
            new("Wedge"), new("Wood"), new("Needed", ColumnKind.Numbers), new("Saw", ColumnKind.Numbers), new("Mitre", ColumnKind.Numbers),
            new($"Offset at {job.Length(job.Shop.Sled.RuleDistance.Millimetres)}", ColumnKind.Numbers), new("Stop", ColumnKind.Numbers), new("Boards", ColumnKind.Numbers),
        ],
        rows);

    private static IEnumerable<string[]> Wedges(RingJob job) => job.Batches.SelectMany((batch, b) => batch.Ring.Woods.Select(w => new[]
    {
        Count(b + 1), $"{job.Key[w.Wood].Letter} {w.Wood}", Count(w.Needed), Count(w.ToSaw), batch.Print("mitre"), batch.Print("rule-offset"), batch.Print("stop"), Count(w.Boards),
    }));

    private static Table SpacerTable(string[][] rows) => new(
        [
            new("Wood"), new("Needed", ColumnKind.Numbers), new("Cut", ColumnKind.Numbers), new("Thickness", ColumnKind.Numbers), new("Width", ColumnKind.Numbers),
            new("Length", ColumnKind.Numbers), new("Strips", ColumnKind.Numbers),
        ],
        rows);

    private static IEnumerable<string[]> Spacers(RingJob job) => job.Ring.Spacers.Select(s => new[]
    {
        $"{job.Key[s.Wood].Letter} {s.Wood}", Count(s.Need.Needed), Count(s.Need.ToSaw), job.Length(s.Thickness), job.Length(s.Height), job.Length(s.Length), Count(s.Need.Boards),
    });

    private static string Count(int count) => count.ToString(CultureInfo.InvariantCulture);
}
