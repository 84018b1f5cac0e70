using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Output;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace Ringwright.Paper.Tests;

/// <summary>A straight line read back from a PDF, mm from the lower left corner of the page.</summary>
internal sealed record ReadLine(Vector2D From, Vector2D To, double Width)
{
    public double Length => (To - From).Length;

    public bool IsLevel => Math.Abs(To.Y - From.Y) < 1e-3;

    public bool IsUpright => Math.Abs(To.X - From.X) < 1e-3;
}

/// <summary>Writes drawings as PDF and reads them back with PdfPig, an independent reader.</summary>
internal static class PdfReader
{
    private const double MillimetresPerPoint = 25.4 / 72;

    public static byte[] Bytes(params IReadOnlyList<Drawing> pages)
    {
        using MemoryStream stream = new();
        PdfWriter.Write(pages, new("Sample", "A test", new DateOnly(2026, 3, 14)), stream);
        return stream.ToArray();
    }

    public static PdfDocument Document(params IReadOnlyList<Drawing> pages) => PdfDocument.Open(Bytes(pages));

    /// <summary>Every straight line stroked on a page, the closing line of polygons too.</summary>
    public static IReadOnlyList<ReadLine> Lines(Page page) =>
        [.. page.Paths.Where(path => path.IsStroked).SelectMany(path => path.SelectMany(sub => Lines(sub, (double)path.LineWidth)))];

    private static IEnumerable<ReadLine> Lines(PdfSubpath subpath, double width)
    {
        PdfPoint start = default, at = default;
        foreach (PdfSubpath.IPathCommand command in subpath.Commands)
        {
            switch (command)
            {
                case PdfSubpath.Move move:
                    start = at = move.Location;
                    break;
                case PdfSubpath.Line line:
                    yield return new(Mm(line.From), Mm(line.To), width);
                    at = line.To;
                    break;
                case PdfSubpath.Close when at != start:
                    yield return new(Mm(at), Mm(start), width);
                    break;
            }
        }
    }

    private static Vector2D Mm(PdfPoint point) => new(point.X * MillimetresPerPoint, point.Y * MillimetresPerPoint);
}
