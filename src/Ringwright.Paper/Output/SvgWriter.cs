using System.Globalization;
using System.Text;
using System.Xml;
using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Output;

/// <summary>
/// Writes a drawing as SVG: its size in millimetres, one user unit per millimetre, text as text. Names the typeface Inter
/// and falls back to the reader's sans-serif.
/// </summary>
public static class SvgWriter
{
    private const string Namespace = "http://www.w3.org/2000/svg";

    /// <summary>The SVG as a string, the same for the same drawing.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="title">Read out to those who cannot see it; left out when absent.</param>
    public static string Write(Drawing drawing, string? title = null)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        StringBuilder text = new();
        XmlWriterSettings settings = new() { OmitXmlDeclaration = true, Indent = false, NewLineChars = "\n" };
        using (XmlWriter xml = XmlWriter.Create(text, settings))
            WriteRoot(xml, drawing, title);
        return text.ToString();
    }

    private static void WriteRoot(XmlWriter xml, Drawing drawing, string? title)
    {
        xml.WriteStartElement("svg", Namespace);
        Attributes(xml,
            ("width", $"{Number(drawing.Width)}mm"),
            ("height", $"{Number(drawing.Height)}mm"),
            ("viewBox", $"0 0 {Number(drawing.Width)} {Number(drawing.Height)}"),
            ("role", "img"),
            ("font-family", "Inter, sans-serif"));
        if (title is not null)
            xml.WriteElementString("title", Namespace, Typesetter.Clean(title));
        Marks(xml, drawing);
        xml.WriteEndElement();
    }

    private static void Marks(XmlWriter xml, Drawing drawing)
    {
        foreach (Mark mark in drawing.Marks)
        {
            switch (mark)
            {
                case Mark.Stroke stroke:
                    Stroke(xml, stroke);
                    break;
                case Mark.Fill fill:
                    Element(xml, "path", ("d", PathOf(fill.Outline)), ("fill", Hex(fill.Colour)), ("fill-rule", "evenodd"));
                    break;
                case Mark.Text text:
                    Text(xml, text);
                    break;
                case Mark.Placed placed:
                    Placed(xml, placed);
                    break;
            }
        }
    }

    private static void Stroke(XmlWriter xml, Mark.Stroke stroke)
    {
        Pen pen = stroke.Pen;
        string? dashes = pen.Dashes is { Count: > 0 } ? string.Join(' ', pen.Dashes.Select(Number)) : null;
        Element(xml, "path",
            ("d", PathOf(stroke.Outline)),
            ("fill", "none"),
            ("stroke", Hex(pen.Colour)),
            ("stroke-width", Number(pen.Width)),
            ("stroke-dasharray", dashes));
    }

    private static void Placed(XmlWriter xml, Mark.Placed placed)
    {
        xml.WriteStartElement("g", Namespace);
        string scale = placed is { ScaleX: 1, ScaleY: 1 } ? "" : $" scale({Number(placed.ScaleX)} {Number(placed.ScaleY)})";
        Attributes(xml, ("id", placed.Layer), ("transform", $"translate({Number(placed.At.X)} {Number(placed.At.Y)}){scale}"));
        Marks(xml, placed.Child);
        xml.WriteEndElement();
    }

    private static void Text(XmlWriter xml, Mark.Text text)
    {
        TextStyle style = text.Line.Style;
        double drop = text.Anchor.Y * style.Height;
        xml.WriteStartElement("text", Namespace);
        string move = $"translate({Number(text.At.X)} {Number(text.At.Y)})";
        string turn = text.Angle == 0 ? "" : $" rotate({Number(text.Angle * 180 / Math.PI)})";
        Attributes(xml,
            ("transform", move + turn),
            ("y", drop == 0 ? null : Number(drop)),
            ("font-size", Number(style.Em)),
            ("font-weight", style.Weight == FontWeight.Regular ? null : Number((int)style.Weight)),
            ("fill", Hex(style.Colour)),
            ("text-anchor", text.Anchor.X switch { 0 => null, 1 => "end", _ => "middle" }),
            ("style", style.Tabular ? "white-space:pre;font-variant-numeric:tabular-nums" : "white-space:pre"));
        Runs(xml, text.Line);
        xml.WriteEndElement();
    }

    private static void Runs(XmlWriter xml, TextLine line)
    {
        double rise = 0;
        foreach (TextRun run in line.Runs)
        {
            if (run.Rise == rise && run.Em == line.Style.Em)
            {
                xml.WriteString(run.Text);
                continue;
            }

            xml.WriteStartElement("tspan", Namespace);
            Attributes(xml, ("font-size", Number(run.Em)), ("dy", Number(rise - run.Rise)));
            xml.WriteString(run.Text);
            xml.WriteEndElement();
            rise = run.Rise;
        }
    }

    private static string PathOf(Outline outline)
    {
        StringBuilder path = new();
        foreach (Contour contour in outline.Contours)
        {
            Vector2D at = contour.Start;
            path.Append('M').Append(Point(at));
            foreach (Segment segment in contour.Segments)
            {
                Vector2D end = Outline.EndOf(at, segment);
                path.Append(Step(at, end, segment));
                at = end;
            }

            path.Append(contour.Closed ? "Z" : "");
        }

        return path.ToString();
    }

    private static string Step(Vector2D at, Vector2D end, Segment segment)
    {
        if (segment is not Segment.Arc arc)
            return $"L{Point(end)}";
        string radius = Number((at - arc.Centre).Length);
        return $"A{radius} {radius} 0 0 {(arc.Sweep > 0 ? 1 : 0)} {Point(end)}";
    }

    private static void Element(XmlWriter xml, string name, params (string Name, string? Value)[] attributes)
    {
        xml.WriteStartElement(name, Namespace);
        Attributes(xml, attributes);
        xml.WriteEndElement();
    }

    private static void Attributes(XmlWriter xml, params (string Name, string? Value)[] attributes)
    {
        foreach ((string name, string? value) in attributes.Where(a => a.Value is not null))
            xml.WriteAttributeString(name, value);
    }

    private static string Point(Vector2D point) => $"{Number(point.X)} {Number(point.Y)}";

    // A ten-thousandth of a millimetre is finer than any reader, and keeps files small.
    private static string Number(double value) => (Math.Round(value, 4) + 0.0).ToString("0.####", CultureInfo.InvariantCulture);

    private static string Hex(Colour colour) => $"#{colour.Red:x2}{colour.Green:x2}{colour.Blue:x2}";
}
