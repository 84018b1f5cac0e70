using Ringwright.Core;
using Ringwright.Core.Planning;
using Ringwright.Paper.JobSheets;
using Ringwright.Paper.Labels;
using Ringwright.Paper.Output;
using Ringwright.Paper.Pictures;
using Ringwright.Paper.Templates;
using Ringwright.Web.Bench;
using Ringwright.Web.Floor;

namespace Ringwright.Web.Printing;

/// <summary>The papers of the piece on the bench.</summary>
internal static class PiecePaper
{
    /// <summary>The job packet as PDF; its gluing in the order that was found, or in a quick one.</summary>
    public static byte[] JobPacket(Sheet sheet, PrintQuery query, DateOnly date, GlueSchedule? order) => Written(pdf => JobSheet.WritePdf(sheet.Good, query.Options(sheet, date, order), pdf));

    /// <summary>The templates as pages of one PDF.</summary>
    public static byte[] Templates(Sheet sheet, PrintQuery query, DateOnly date) =>
        Written(pdf => TemplateSheets.WritePdf(sheet.Good, PieceFiles.TemplatesOf(sheet, query), query.Options(sheet, date), pdf));

    /// <summary>The stickers as PDF; their codes lead to <paramref name="link"/>, to the page at the saw of piece and ring.</summary>
    public static byte[] Stickers(Sheet sheet, PrintQuery query, DateOnly date, Uri? link, string piece)
    {
        PacketOptions options = query.Options(sheet, date);
        IReadOnlyList<Paper.Drawings.Drawing> pages = LabelSheets.Pages(Label.Of(sheet.Good, sheet.Style, link, ring => FloorEndpoints.Page(piece, sheet.MarkOf(ring))), query.Stickers(sheet), options.Paper, query.Skip ?? 0, query.Outlines ?? false, options.Correction);
        return Written(pdf => PdfWriter.Write(pages, new($"{sheet.Good.Piece.Name}: labels", "stickers", date), pdf));
    }

    /// <summary>A view as a picture.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="name">The view's name, an ending of a picture's file behind it.</param>
    /// <param name="query">Which ring.</param>
    /// <param name="wedge">Which wedge of a ring whose wedges are not all alike, from 1.</param>
    /// <param name="date">Written into a PDF.</param>
    /// <exception cref="BadInputException">There is no such view, ring or wedge.</exception>
    public static byte[] View(Sheet sheet, string name, PrintQuery query, int wedge, DateOnly date)
    {
        var view = PlanView.Named(Path.GetFileNameWithoutExtension(name));
        RingPlan ring = query.OnlyRing(sheet.Good) ?? sheet.Ring;
        int kinds = Math.Max(1, ring.Batches.Length);
        if (wedge < 1 || wedge > kinds) throw new BadInputException("wedge", $"{ring.Ring.Name} has no wedge {wedge}", kinds == 1 ? "1 is its only one" : $"1 to {kinds} are its kinds");
        // A ring from above is whole; what is set and sawn is about one of its wedges.
        RingPlan shown = view.Name == "ring" || ring.Batches.IsEmpty ? ring : ring.Alone(wedge - 1);
        return PictureBytes.Of(view.Draw(sheet.Good, shown, sheet.Style, coloured: true), Path.GetExtension(name), $"{sheet.Good.Piece.Name}{(view.OfRing ? $", {ring.Ring.Name}" : "")}: {view.Shows}", date);
    }

    private static byte[] Written(Action<Stream> write)
    {
        using var stream = new MemoryStream();
        write(stream);
        return stream.ToArray();
    }
}
