using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Output;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The paper of a plan: the whole piece, then for each ring what to set, saw, lay on, fit and write down. Pure: same input, same bytes.</summary>
public static class JobSheet
{
    /// <summary>The sheets of the whole piece, when it has a shape or several rings, then of all rings, ring by ring.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="paper">The paper, upright.</param>
    /// <param name="date">Date printed on every sheet.</param>
    /// <param name="correction">Correction of true-scale outlines for one printer; none when absent.</param>
    /// <param name="schedule">When to glue what, of this plan; a quick order when absent.</param>
    public static Packet Packet(Plan plan, MeasureStyle style, PaperSize paper, DateOnly date, PrintCorrection? correction = null, GlueSchedule? schedule = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        Packet packet = new(new(RingWords.ForTitle(plan.Piece.Name), RingWords.Units(style), date, Version), paper, correction);
        Drawings.Box free = packet.FreeArea;
        if (PieceSheet.IsFor(plan)) PieceSheet.Add(packet, plan, style);
        MillingSheet.Add(packet, plan, style);
        foreach (RingPlan ring in plan.Rings)
        {
            RingJob job = new(plan, ring, style, free.Width, free.Height);
            if (ring.Stave is not null) StaveSheets.Add(packet, job);
            else if (!ring.Batches.IsEmpty) AddWedges(packet, job, correction ?? PrintCorrection.None);
            if (ring.Board is not null && !ring.Batches.IsEmpty) BoardSheet.Add(packet, job);
            if (ring.Ring is SolidLayer) LayerSheet.Add(packet, job);
        }

        GlueSheet.Add(packet, schedule ?? GlueSchedule.Quick(GluePlan.Of(plan)), style);
        StackingSheet.Add(packet, schedule?.Plan ?? GluePlan.Of(plan), style);
        if (PieceSheet.IsFor(plan)) LatheSheet.Add(packet, plan, style);
        return packet;
    }

    /// <summary>Writes the sheets of all rings as PDF.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="paper">The paper, upright.</param>
    /// <param name="date">Date printed on every sheet and written into the file.</param>
    /// <param name="output">Where to; left open.</param>
    /// <param name="schedule">When to glue what, of this plan; a quick order when absent.</param>
    public static void WritePdf(Plan plan, MeasureStyle style, PaperSize paper, DateOnly date, Stream output, GlueSchedule? schedule = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        DocumentInfo info = new($"{plan.Piece.Name}: job sheets", $"{plan.Rings.Length} rings", date);
        PdfWriter.Write(Packet(plan, style, paper, date, schedule: schedule).Pages(), info, output);
    }

    private static void AddWedges(Packet packet, RingJob job, PrintCorrection correction)
    {
        OverviewSheet.Add(packet, job);
        if (job.Ring.Lamination is Lamination board) LaminationSheet.Add(packet, job, board);
        foreach (RingJob batch in job.Batches)
        {
            SettingsSheet.Add(packet, batch);
            CuttingSheet.Add(packet, batch);
        }

        StepsSheet.Add(packet, job);
        foreach (RingJob batch in job.Batches) TrueScaleSheet.Add(packet, batch, correction);
        FitSheet.Add(packet, job);
    }

    private static string Version => typeof(JobSheet).Assembly.GetName().Version?.ToString(3) ?? "";
}
