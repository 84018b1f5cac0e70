using Ringwright.Core;
using Ringwright.Core.Planning;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Output;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Templates;

/// <summary>Templates on paper: each at true scale beside check rulers, over as many pages as it needs.</summary>
public static class TemplateSheets
{
    private const double MapShare = 2.8; // of the width for words, against 1 for the map of pages

    /// <summary>The pages of templates.</summary>
    /// <param name="plan">The plan they belong to.</param>
    /// <param name="templates">The templates.</param>
    /// <param name="options">How they are printed.</param>
    /// <exception cref="BadInputException">A template would need hundreds of pages.</exception>
    public static Packet Packet(Plan plan, IEnumerable<Template> templates, PacketOptions options)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(templates);
        ArgumentNullException.ThrowIfNull(options);
        Packet packet = JobSheet.Empty(plan, options);
        foreach (Template template in templates) Add(packet, template, options.Correction);
        return packet;
    }

    /// <summary>Writes the pages of templates as PDF.</summary>
    /// <param name="plan">The plan they belong to.</param>
    /// <param name="templates">The templates.</param>
    /// <param name="options">How they are printed.</param>
    /// <param name="output">Where to; left open.</param>
    /// <exception cref="BadInputException">A template would need hundreds of pages.</exception>
    public static void WritePdf(Plan plan, IEnumerable<Template> templates, PacketOptions options, Stream output)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(options);
        Packet packet = Packet(plan, templates, options);
        PdfWriter.Write(packet.Pages(), new($"{plan.Piece.Name}: templates", $"{packet.Sheets.Count} pages at true scale", options.Date), output);
    }

    private static void Add(Packet packet, Template template, PrintCorrection correction)
    {
        double head = new Paragraph(template.Use, RingJob.Words).HeightAt(packet.FreeArea.Width);
        TilePlan plan = TilePlan.Of(template.Drawing, RoomUnder(packet, head, correction));
        if (plan.IsOne)
        {
            packet.Add(Title(template, ""), "1:1").Add(new Paragraph(template.Use, RingJob.Words)).AddTrueScale(template.Drawing);
            return;
        }

        // All pages have the same room: that under the tallest of their heads, which grow with the map.
        for (double needed; (needed = plan.Tiles.Max(tile => Head(template, plan, tile).HeightAt(packet.FreeArea.Width))) > head;)
            plan = TilePlan.Of(template.Drawing, RoomUnder(packet, head = needed, correction));
        foreach (Tile tile in plan.Tiles)
            packet.Add(Title(template, $", {tile.Name}"), "1:1").Add(Head(template, plan, tile)).AddTrueScale(TilePicture.Part(template.Drawing, plan, tile));
    }

    private static Columns Head(Template template, TilePlan plan, Tile tile) => new(
        (MapShare, new Paragraph($"{template.Use}\nPage {tile.Name} of {plan.Tiles.Count}. Cut one page of each pair along the dashed seam and lay it on the other, cross on cross; then measure across the whole.", RingJob.Words)),
        (1, new Picture(TilePicture.Map(plan, tile))));

    private static Pictures.Room RoomUnder(Packet packet, double head, PrintCorrection correction) =>
        Sheet.TrueScaleRoomIn(packet.FreeArea.Below(head + Sheet.Gap), correction);

    private static string Title(Template template, string page) => Shortened.To(template.Name, name => RingWords.FitsTitle(name + page)) + page;
}
