using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The sheet beside the saw: the order of work to tick off, and the cautions.</summary>
internal static class StepsSheet
{
    public static void Add(Packet packet, RingJob job) => packet.Flow(job.SheetName("order of work"), "–", [
        new Section("In this order", new ListBlock(ListMark.Number, [.. job.Ring.Steps.Select(s => s.In(job.Style))], RingJob.Words)),
        new Section("Take care", new ListBlock(ListMark.Caution, [.. Cautions.ForWoods(job.Shop, job.Whole.Layout.Select(s => s.Wood)), .. Cautions.For(job.Shop.Sled.Kind)])),
    ]);
}
