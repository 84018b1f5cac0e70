using Ringwright.Core.Pieces;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The sheet to lay wood on: wedge and ring at true scale beside the check rulers.</summary>
internal static class TrueScaleSheet
{
    private const double RulersAcross = 17, RulersDown = 20; // room that the kit's check rulers take, mm

    public static void Add(Packet packet, RingJob job, PrintCorrection correction)
    {
        Sheet sheet = packet.Add(job.SheetName("true scale"), "1:1").Add(new Paragraph(
            "Lay the first wedge on its outline: both faces must follow their lines from rim to tip. "
            + (job.Ring.Ring is OpenRing ? "Then lay segments on the others: the gaps must be those drawn." : "Then lay the dry half ring on the glued one.")));
        Room room = new((sheet.Remaining.Width - RulersAcross) / correction.Across, (sheet.Remaining.Height - RulersDown) / correction.Down);
        sheet.AddTrueScale(TrueScalePicture.Draw(job.Ring, job.Style, room, job.Whole));
    }
}
