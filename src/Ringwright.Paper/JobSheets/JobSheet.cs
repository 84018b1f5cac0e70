using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Output;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The paper of a plan: the whole piece, then for each ring what to set, saw, lay on, fit and write down. Pure: same input, same bytes.</summary>
public static class JobSheet
{
    /// <summary>The usual sheets, printed on one side.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="paper">The paper, upright.</param>
    /// <param name="date">Date printed on every sheet.</param>
    /// <param name="correction">Correction of true-scale outlines for one printer; none when absent.</param>
    /// <param name="schedule">When to glue what, of this plan; a quick order when absent.</param>
    public static Packet Packet(Plan plan, MeasureStyle style, PaperSize paper, DateOnly date, PrintCorrection? correction = null, GlueSchedule? schedule = null) =>
        Packet(plan, new PacketOptions(style, paper, date) { Correction = correction ?? PrintCorrection.None, Schedule = schedule });

    /// <summary>The sheets that the options ask for, in the order of the work.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="options">How it is printed.</param>
    public static Packet Packet(Plan plan, PacketOptions options)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        Packet packet = Empty(plan, options);
        PacketSheets wanted = options.Sheets ?? (PieceSheet.IsFor(plan) ? PacketSheets.All : PacketOptions.ForOneRing);
        string? only = options.Ring is null ? null : OnSheetsOf(plan, options.Ring);
        if (only is not null) wanted = PacketSheets.Detailed;
        if (wanted.HasFlag(PacketSheets.Detailed)) wanted &= ~PacketSheets.Rings;
        PacketPart[] parts = [.. Parts(plan, options, packet, wanted).Where(part => wanted.HasFlag(part.Kind) && (only is null || part.Name == only))];
        int[] pages = new int[parts.Length];
        Action<IEnumerable<IBlock>>? cover = wanted.HasFlag(PacketSheets.Cover) ? PieceSheet.Keep(packet, plan, options.Style, Contents()) : null;
        for (int i = 0; i < parts.Length; i++)
        {
            if (parts[i].Ring is not null) packet.StartOnFront();
            pages[i] = packet.Sheets.Count + 1;
            parts[i].Add(packet);
        }

        cover?.Invoke(PieceSheet.Blocks(plan, options.Style, packet.FreeArea, Contents()).Blocks);
        return packet;

        Contents Contents() => new([.. parts.Zip(pages, (part, page) => (part, page))]);
    }

    /// <summary>Writes the usual sheets as PDF.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="paper">The paper, upright.</param>
    /// <param name="date">Date printed on every sheet and written into the file.</param>
    /// <param name="output">Where to; left open.</param>
    /// <param name="schedule">When to glue what, of this plan; a quick order when absent.</param>
    public static void WritePdf(Plan plan, MeasureStyle style, PaperSize paper, DateOnly date, Stream output, GlueSchedule? schedule = null) =>
        WritePdf(plan, new PacketOptions(style, paper, date) { Schedule = schedule }, output);

    /// <summary>Writes the sheets that the options ask for as PDF.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="options">How they are printed.</param>
    /// <param name="output">Where to; left open.</param>
    public static void WritePdf(Plan plan, PacketOptions options, Stream output)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        DocumentInfo info = new($"{plan.Piece.Name}: job sheets", $"{plan.Rings.Length} rings", options.Date);
        PdfWriter.Write(Packet(plan, options).Pages(), info, output);
    }

    /// <summary>A packet without sheets yet, its title block filled in.</summary>
    internal static Packet Empty(Plan plan, PacketOptions options) =>
        new(new(RingWords.ForTitle(plan.Piece.Name), RingWords.Units(options.Style), options.Date, Version), options.Paper, options.Correction) { Duplex = options.Duplex };

    // In the order of the work. A part without sheets for this plan is left out.
    private static IEnumerable<PacketPart> Parts(Plan plan, PacketOptions options, Packet packet, PacketSheets wanted)
    {
        Drawings.Box free = packet.FreeArea;
        yield return new(PacketSheets.Cautions, "Take care", p => CautionsSheet.Add(p, plan));
        if (MillingPlan.Of(plan) is MillingPlan milling && MillingSheet.IsFor(milling)) yield return new(PacketSheets.Timber, "Milling", p => MillingSheet.Add(p, milling, options.Style));
        bool together = plan.Rings.Length > 1 && wanted.HasFlag(PacketSheets.Rings);
        var all = AllRings.Of(plan, options.Style, free);
        if (together && all.Jobs.Count > 0) yield return new(PacketSheets.Rings, AllRingsSheet.Name, p => AllRingsSheet.Add(p, all, !wanted.HasFlag(PacketSheets.Cautions)));
        for (int i = 0; i < plan.Rings.Length; i++)
        {
            RingJob job = new(plan, plan.Rings[i], options.Style, free.Width, free.Height);
            if (!HasSheets(job.Ring)) continue;
            string name = job.Ring.Ring.Name;
            yield return together ? new(PacketSheets.Rings, name, p => RingSheets.AddShort(p, job, all)) { Ring = i } : new(wanted.HasFlag(PacketSheets.Detailed) ? PacketSheets.Detailed : PacketSheets.Rings, name, p => RingSheets.AddLong(p, job)) { Ring = i };
        }

        if (together && OwnStepsSheet.IsFor(all)) yield return new(PacketSheets.Rings, OwnStepsSheet.Name, p => OwnStepsSheet.Add(p, all));
        GlueSchedule schedule = options.Schedule ?? GlueSchedule.Quick(GluePlan.Of(plan));
        if (schedule.Plan.HasWork) yield return new(PacketSheets.Glue, "Gluing", p => GlueSheet.Add(p, schedule, options.Style));
        if (!schedule.Plan.Stack.IsEmpty) yield return new(PacketSheets.Stack, "Stacking", p => StackingSheet.Add(p, schedule.Plan, options.Style));
        if (LathePlan.Of(plan) is { Rings.IsEmpty: false } lathe) yield return new(PacketSheets.Lathe, "At the lathe", p => LatheSheet.Add(p, plan, lathe, options.Style));
        yield return new(PacketSheets.Cost, "Time and cost", p => CostSheet.Add(p, plan, CostPlan.Of(plan), options.Style));
        if (RecordSheet.IsFor(plan)) yield return new(PacketSheets.Record, "Record", p => RecordSheet.Add(p, plan, options.Style));
    }

    // The ring on whose sheets a ring stands.
    private static string OnSheetsOf(Plan plan, string ring) =>
        plan.Rings.FirstOrDefault(r => r.Ring.Name == ring) is { Board: BoardGroupPlan board, Batches.IsEmpty: true } ? board.Carrier.Name : ring;

    // A ring that is sawn out of another's board stands on the sheets of that one.
    private static bool HasSheets(RingPlan ring) => ring.Stave is not null || !ring.Batches.IsEmpty || ring.Ring is SolidLayer;

    private static string Version => typeof(JobSheet).Assembly.GetName().Version?.ToString(3) ?? "";
}
