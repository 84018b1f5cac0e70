using Ringwright.Core.Pieces;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The sheet to lay wood on: wedge and ring at true scale beside the check rulers.</summary>
internal static class TrueScaleSheet
{
    public static void Add(Packet packet, RingJob job, params IReadOnlyList<IBlock> above)
    {
        Sheet sheet = packet.Add(job.SheetName("true scale"), "1:1");
        foreach (IBlock block in above) sheet.Add(block);
        sheet.Add(new Paragraph(
            "Lay the first wedge on its outline: both faces must follow their lines from rim to tip. "
            + (job.Ring.Ring is OpenRing ? "Then lay segments on the others: the gaps must be those drawn." : "Then lay the dry half ring on the glued one.")));
        sheet.AddTrueScale(TrueScalePicture.Draw(job.Ring, job.Style, sheet.TrueScaleRoom, job.Whole));
    }
}
