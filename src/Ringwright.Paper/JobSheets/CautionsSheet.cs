using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.JobSheets;

/// <summary>The sheet to read before any work: every caution for what the plan asks for, large enough for the wall beside the saw.</summary>
internal static class CautionsSheet
{
    private static readonly TextStyle Large = TypeScale.Body with { Height = 3.5 };

    public static void Add(Packet packet, Plan plan) => packet.Flow("Take care", "–", [
        new Paragraph("Before you start", TypeScale.Title),
        new ListBlock(ListMark.Caution, Cautions.For(plan), Large),
    ]);
}
