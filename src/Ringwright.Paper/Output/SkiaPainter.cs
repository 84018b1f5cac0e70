using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;
using SkiaSharp;

namespace Ringwright.Paper.Output;

/// <summary>Draws the marks of a drawing on a Skia canvas whose unit is the millimetre, y downwards.</summary>
internal static class SkiaPainter
{
    /// <summary>Draws everything on the drawing.</summary>
    public static void Paint(Drawing drawing, SKCanvas canvas)
    {
        foreach (Mark mark in drawing.Marks)
            Paint(mark, canvas);
    }

    private static void Paint(Mark mark, SKCanvas canvas)
    {
        switch (mark)
        {
            case Mark.Stroke stroke:
                Stroke(stroke, canvas);
                break;
            case Mark.Fill fill:
                Fill(fill, canvas);
                break;
            case Mark.Text text:
                Text(text, canvas);
                break;
            case Mark.Placed placed:
                Placed(placed, canvas);
                break;
        }
    }

    private static void Stroke(Mark.Stroke stroke, SKCanvas canvas)
    {
        float[] dashes = [.. (stroke.Pen.Dashes ?? []).Select(d => (float)d)];
        using SKPathEffect? effect = dashes.Length > 0 ? SKPathEffect.CreateDash(dashes, 0) : null;
        using SKPaint paint = new()
        {
            Color = ColourOf(stroke.Pen.Colour),
            IsStroke = true,
            IsAntialias = true,
            StrokeWidth = (float)stroke.Pen.Width,
            StrokeJoin = SKStrokeJoin.Miter,
            PathEffect = effect,
        };
        using SKPath path = PathOf(stroke.Outline);
        canvas.DrawPath(path, paint);
    }

    private static void Fill(Mark.Fill fill, SKCanvas canvas)
    {
        using SKPaint paint = new() { Color = ColourOf(fill.Colour), IsAntialias = true };
        using SKPath path = PathOf(fill.Outline);
        canvas.DrawPath(path, paint);
    }

    private static void Text(Mark.Text text, SKCanvas canvas)
    {
        using SKPaint paint = new() { Color = ColourOf(text.Line.Style.Colour), IsAntialias = true };
        FontFace face = FontFace.Of(text.Line.Style.Weight);
        canvas.Save();
        canvas.Translate((float)text.At.X, (float)text.At.Y);
        canvas.RotateRadians((float)text.Angle);
        canvas.Translate((float)text.Origin.X, (float)text.Origin.Y);
        foreach (TextRun run in text.Line.Runs)
        {
            using SKFont font = face.Font(run.Em);
            float[] offsets = [.. run.Offsets.Select(x => (float)(run.X + x))];
            using SKTextBlob? blob = SKTextBlob.CreateHorizontal(run.Text, font, offsets, (float)-run.Rise);
            if (blob is not null)
                canvas.DrawText(blob, 0, 0, paint);
        }

        canvas.Restore();
    }

    private static void Placed(Mark.Placed placed, SKCanvas canvas)
    {
        canvas.Save();
        canvas.Translate((float)placed.At.X, (float)placed.At.Y);
        canvas.Scale((float)placed.ScaleX, (float)placed.ScaleY);
        Paint(placed.Child, canvas);
        canvas.Restore();
    }

    private static SKPath PathOf(Outline outline)
    {
        using SKPathBuilder builder = new() { FillType = SKPathFillType.EvenOdd };
        foreach (Contour contour in outline.Contours)
            AddContour(builder, contour);
        return builder.Detach();
    }

    private static void AddContour(SKPathBuilder builder, Contour contour)
    {
        Vector2D at = contour.Start;
        builder.MoveTo((float)at.X, (float)at.Y);
        foreach (Segment segment in contour.Segments)
        {
            if (segment is Segment.Line line)
                builder.LineTo((float)line.End.X, (float)line.End.Y);
            else if (segment is Segment.Arc arc)
                AddArc(builder, at, arc);
            at = Outline.EndOf(at, segment);
        }

        if (contour.Closed)
            builder.Close();
    }

    private static void AddArc(SKPathBuilder builder, Vector2D start, Segment.Arc arc)
    {
        Vector2D spoke = start - arc.Centre;
        float radius = (float)spoke.Length;
        SKRect oval = SKRect.Create((float)arc.Centre.X - radius, (float)arc.Centre.Y - radius, 2 * radius, 2 * radius);
        builder.ArcTo(oval, Degrees(Math.Atan2(spoke.Y, spoke.X)), Degrees(arc.Sweep), forceMoveTo: false);
    }

    private static float Degrees(double radians) => (float)(radians * 180 / Math.PI);

    private static SKColor ColourOf(Colour colour) => new(colour.Red, colour.Green, colour.Blue);
}
