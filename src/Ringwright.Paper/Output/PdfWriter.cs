using Ringwright.Paper.Drawings;
using SkiaSharp;

namespace Ringwright.Paper.Output;

/// <summary>Writes drawings as pages of a vector PDF with embedded fonts.</summary>
public static class PdfWriter
{
    /// <summary>Points in a millimetre.</summary>
    public const double PointsPerMillimetre = 72 / 25.4;

    private const float StepsPerInch = 600; // of the stated page size; nothing here is drawn as dots

    /// <summary>
    /// Writes the pages. Drawn lengths are exact; only the size that the file states for a page is rounded, to 1/600 in.
    /// </summary>
    /// <param name="pages">One drawing per page, of any size.</param>
    /// <param name="info">Title and date.</param>
    /// <param name="output">Where to; left open.</param>
    public static void Write(IReadOnlyList<Drawing> pages, DocumentInfo info, Stream output)
    {
        ArgumentNullException.ThrowIfNull(pages);
        ArgumentNullException.ThrowIfNull(info);
        using SKManagedWStream stream = new(output, disposeManagedStream: false);
        using SKDocument document = SKDocument.CreatePdf(stream, MetadataOf(info));
        foreach (Drawing page in pages)
            WritePage(document, page);
        document.Close();
    }

    private static void WritePage(SKDocument document, Drawing page)
    {
        SKCanvas canvas = document.BeginPage(Points(page.Width), Points(page.Height));
        canvas.Scale((float)PointsPerMillimetre);
        SkiaPainter.Paint(page, canvas);
        document.EndPage();
    }

    private static SKDocumentPdfMetadata MetadataOf(DocumentInfo info)
    {
        DateTime day = info.Date.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        return new(StepsPerInch)
        {
            Title = info.Title,
            Subject = info.Subject,
            Creator = "Ringwright",
            Producer = "Ringwright",
            Creation = day,
            Modified = day,
        };
    }

    private static float Points(double millimetres) => (float)(millimetres * PointsPerMillimetre);
}
