using System.Globalization;
using System.Text;
using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Output;

/// <summary>
/// Writes a drawing as a DXF file for a laser or a CNC router: ASCII, release 12 (the oldest that every reader knows), millimetres,
/// y upwards, one layer for each layer of the drawing. Straight lines are LINE, chains POLYLINE with exact bulges for their arcs,
/// full circles CIRCLE, single arcs ARC, words TEXT. Fills have no counterpart and are left out; dashes are a matter of the layer.
/// Group codes after the published DXF reference; <c>$INSUNITS</c> is of a later release, and older readers pass over it.
/// </summary>
public static class DxfWriter
{
    private const string PlainLayer = "0";
    private static readonly int[] Colours = [1, 5, 3, 7, 6, 4]; // red to cut, blue to see, then others

    /// <summary>The file as text, the same for the same drawing; lines end with CR LF.</summary>
    /// <param name="drawing">The drawing, at true scale.</param>
    public static string Write(Drawing drawing)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        (string Layer, Mark Mark, Vector2D Shift)[] marks = [.. Marks(drawing, PlainLayer, Vector2D.Zero)];
        DxfText text = new(drawing.Height);
        Header(text, drawing);
        Tables(text, [PlainLayer, .. marks.Select(m => m.Layer).Where(l => l != PlainLayer).Distinct()]);
        text.Add(0, "SECTION").Add(2, "ENTITIES");
        foreach ((string layer, Mark mark, Vector2D shift) in marks)
        {
            if (mark is Mark.Stroke stroke)
                foreach (Contour contour in stroke.Outline.Contours) Line(text, layer, contour, shift);
            else if (mark is Mark.Text words)
                Words(text, layer, words, shift);
        }

        text.Add(0, "ENDSEC").Add(0, "EOF");
        return text.ToString();
    }

    // Placed drawings must not be stretched: a template never is, and an arc would no longer be one.
    private static IEnumerable<(string Layer, Mark Mark, Vector2D Shift)> Marks(Drawing drawing, string layer, Vector2D shift) => drawing.Marks.SelectMany(mark => mark switch
    {
        Mark.Placed { ScaleX: 1, ScaleY: 1 } placed => Marks(placed.Child, placed.Layer ?? layer, shift + placed.At),
        Mark.Placed => throw new ArgumentException("A drawing that is stretched cannot be written as DXF.", nameof(drawing)),
        _ => [(layer, mark, shift)],
    });

    private static void Header(DxfText text, Drawing drawing)
    {
        text.Add(0, "SECTION").Add(2, "HEADER");
        text.Add(9, "$ACADVER").Add(1, "AC1009");
        text.Add(9, "$INSUNITS").Add(70, 4); // millimetres
        text.Add(9, "$MEASUREMENT").Add(70, 1); // metric
        text.Add(9, "$EXTMIN").Add(10, 0.0).Add(20, 0.0).Add(30, 0.0);
        text.Add(9, "$EXTMAX").Add(10, drawing.Width).Add(20, drawing.Height).Add(30, 0.0);
        text.Add(0, "ENDSEC");
    }

    private static void Tables(DxfText text, string[] layers)
    {
        text.Add(0, "SECTION").Add(2, "TABLES");
        text.Add(0, "TABLE").Add(2, "LTYPE").Add(70, 1);
        text.Add(0, "LTYPE").Add(2, "CONTINUOUS").Add(70, 0).Add(3, "Solid line").Add(72, 65).Add(73, 0).Add(40, 0.0);
        text.Add(0, "ENDTAB");
        text.Add(0, "TABLE").Add(2, "LAYER").Add(70, layers.Length);
        foreach ((string layer, int index) in layers.Select((l, i) => (l, i)))
            text.Add(0, "LAYER").Add(2, layer).Add(70, 0).Add(62, index == 0 ? 7 : Colours[(index - 1) % Colours.Length]).Add(6, "CONTINUOUS");
        text.Add(0, "ENDTAB");
        text.Add(0, "TABLE").Add(2, "STYLE").Add(70, 1);
        text.Add(0, "STYLE").Add(2, "STANDARD").Add(70, 0).Add(40, 0.0).Add(41, 1.0).Add(50, 0.0).Add(71, 0).Add(42, 2.5).Add(3, "txt").Add(4, "");
        text.Add(0, "ENDTAB").Add(0, "ENDSEC");
    }

    private static void Line(DxfText text, string layer, Contour contour, Vector2D shift)
    {
        Segment[] steps = [.. contour.Segments];
        if (contour.Closed && steps.All(s => s is Segment.Arc a && (a.Centre - ((Segment.Arc)steps[0]).Centre).Length < 1e-9) && Math.Abs(Math.Abs(steps.Sum(s => ((Segment.Arc)s).Sweep)) - (2 * Math.PI)) < 1e-9)
            text.Entity("CIRCLE", layer).Point(10, ((Segment.Arc)steps[0]).Centre + shift).Add(40, (contour.Start - ((Segment.Arc)steps[0]).Centre).Length);
        else if (!contour.Closed && steps is [Segment.Line only])
            text.Entity("LINE", layer).Point(10, contour.Start + shift).Point(11, only.End + shift);
        else if (!contour.Closed && steps is [Segment.Arc arc])
            Arc(text, layer, contour.Start, arc, shift);
        else
            Chain(text, layer, contour, shift);
    }

    // Counter-clockwise from one angle to the other, y upwards.
    private static void Arc(DxfText text, string layer, Vector2D start, Segment.Arc arc, Vector2D shift)
    {
        Vector2D spoke = start - arc.Centre, end = spoke.Rotated(arc.Sweep);
        (Vector2D from, Vector2D to) = arc.Sweep > 0 ? (end, spoke) : (spoke, end);
        text.Entity("ARC", layer).Point(10, arc.Centre + shift).Add(40, spoke.Length).Add(50, Degrees(from)).Add(51, Degrees(to));
    }

    private static void Chain(DxfText text, string layer, Contour contour, Vector2D shift)
    {
        text.Entity("POLYLINE", layer).Add(66, 1).Add(10, 0.0).Add(20, 0.0).Add(30, 0.0).Add(70, contour.Closed ? 1 : 0);
        Vector2D at = contour.Start;
        for (int i = 0; i < contour.Segments.Count; i++)
        {
            Segment step = contour.Segments[i];
            Vertex(text, layer, at + shift, step);
            at = Outline.EndOf(at, step);
        }

        // A closed chain that comes back to its start by itself has that corner already.
        if (!contour.Closed || (at - contour.Start).Length > 1e-9) Vertex(text, layer, at + shift, null);
        text.Add(0, "SEQEND").Add(8, layer);
    }

    // The bulge is the tangent of a quarter of the arc's angle, positive counter-clockwise: on the paper, y downwards, it turns the other way.
    private static void Vertex(DxfText text, string layer, Vector2D at, Segment? step)
    {
        text.Entity("VERTEX", layer).Point(10, at);
        if (step is Segment.Arc arc) text.Add(42, -Math.Tan(arc.Sweep / 4));
    }

    private static void Words(DxfText text, string layer, Mark.Text words, Vector2D shift)
    {
        int across = words.Anchor.X switch { 0 => 0, 1 => 2, _ => 1 };
        Vector2D baseline = words.At + new Vector2D(0, words.Anchor.Y * words.Line.Style.Height).Rotated(words.Angle) + shift;
        text.Entity("TEXT", layer).Point(10, baseline).Add(40, words.Line.Style.Height).Add(1, Ascii(words.Line.Text));
        if (words.Angle != 0) text.Add(50, -words.Angle * 180 / Math.PI);
        text.Add(7, "STANDARD");
        if (across != 0) text.Add(72, across).Point(11, baseline);
    }

    // Release 12 holds no Unicode; these are its own words for the signs that templates use.
    private static string Ascii(string text)
    {
        StringBuilder plain = new(text.Length);
        foreach (char c in text.Replace("°", "%%d", StringComparison.Ordinal).Replace("Ø", "%%c", StringComparison.Ordinal).Replace("±", "%%p", StringComparison.Ordinal).Replace('−', '-').Replace('–', '-').Replace("≈", "ca.", StringComparison.Ordinal).Replace("×", "x", StringComparison.Ordinal))
            plain.Append(c < 128 ? c.ToString() : string.Create(CultureInfo.InvariantCulture, $"\\U+{(int)c:X4}"));
        return plain.ToString();
    }

    private static double Degrees(Vector2D spoke)
    {
        double degrees = Math.Atan2(-spoke.Y, spoke.X) * 180 / Math.PI;
        return degrees < 0 ? degrees + 360 : degrees;
    }
}
