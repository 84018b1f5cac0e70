using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>All sheets of one ring: in full, for a ring by itself, or in short, beside the sheets for all rings.</summary>
internal static class RingSheets
{
    /// <summary>Everything about the ring.</summary>
    public static void AddLong(Packet packet, RingJob job)
    {
        if (job.Ring.Stave is not null) StaveSheets.Add(packet, job);
        else if (!job.Ring.Batches.IsEmpty) AddWedges(packet, job);
        AddFlat(packet, job);
    }

    /// <summary>What is the ring's own; the rest stands on the sheets for all.</summary>
    public static void AddShort(Packet packet, RingJob job, AllRings all)
    {
        if (job.Ring.Stave is not null) StaveSheets.Add(packet, job);
        else if (!job.Ring.Batches.IsEmpty) AddWedges(packet, job, all);
        AddFlat(packet, job);
    }

    private static void AddFlat(Packet packet, RingJob job)
    {
        if (job.Ring.Board is not null && !job.Ring.Batches.IsEmpty) BoardSheet.Add(packet, job);
        if (job.Ring.Ring is SolidLayer) LayerSheet.Add(packet, job);
    }

    private static void AddWedges(Packet packet, RingJob job)
    {
        OverviewSheet.Add(packet, job);
        if (job.Ring.Lamination is Lamination board) LaminationSheet.Add(packet, job, board);
        foreach (RingJob batch in job.Batches)
        {
            SettingsSheet.Add(packet, batch);
            CuttingSheet.Add(packet, batch);
        }

        StepsSheet.Add(packet, job);
        foreach (RingJob batch in job.Batches) TrueScaleSheet.Add(packet, batch);
        FitSheet.Add(packet, job);
    }

    private static void AddWedges(Packet packet, RingJob job, AllRings all)
    {
        if (job.Ring.Batches.Length > 1)
        {
            string[] own = [.. all.OwnSteps(job)];
            OverviewSheet.Add(packet, job, own.Length == 0 ? [] : [new Section("In this order, beside what holds for every ring", new ListBlock(ListMark.Number, own, RingJob.Words))]);
        }

        if (job.Ring.Lamination is Lamination board) LaminationSheet.Add(packet, job, board);
        foreach (RingJob batch in job.Batches)
        {
            if (RingSheet.TryAdd(packet, batch, OwnStepsSheet.Has(all, job))) continue;
            if (job.Ring.Batches.Length == 1) OverviewSheet.Add(packet, job);
            SettingsSheet.Add(packet, batch);
            CuttingSheet.Add(packet, batch);
            TrueScaleSheet.Add(packet, batch);
        }
    }
}
