using System.Globalization;
using Ringwright.Core.Geometry;
using Ringwright.Core.Planning;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Pictures.Gluing;

/// <summary>The glued stack from the side, and from above where joint 1 of each ring lies.</summary>
public static class StackingPicture
{
    private const double Number = 6;       // room for a number beside the stack, mm
    private const double LeastRow = 2.6;   // a ring this high on paper has its number beside it
    private const int MostNumbers = 24;    // of rings whose mark is numbered

    /// <summary>The stack from the side: each blank as wide as it is across its flats, numbered from the bottom up.</summary>
    public static ScaledPicture Side(GluePlan glue, Room room)
    {
        double[] wide = [.. glue.Plan.Rings.Select(r => 2 * RimMarks.Of(r).Radius)];
        return ScaledPicture.Largest(wide.Max(), new(room.Width - (2 * Number), room.Height), scale =>
        {
            var drawing = new Drawing(0, 0);
            var place = new Placement(Vector2D.Zero, scale.Ratio);
            double bottom = 0, free = double.PositiveInfinity, most = wide.Max() / 2;
            for (int i = 0; i < wide.Length; i++)
            {
                double top = bottom + glue.Plan.Rings[i].Ring.Thickness.Millimetres;
                drawing.Stroke(place.Polygon([new(-wide[i] / 2, bottom), new(wide[i] / 2, bottom), new(wide[i] / 2, top), new(-wide[i] / 2, top)]), Pens.Medium);
                double y = place.Point(new(0, (bottom + top) / 2)).Y;
                if (free - y >= LeastRow || double.IsPositiveInfinity(free))
                {
                    drawing.Text(Text(i), new(place.Point(new(most, 0)).X + 1.5, y), TypeScale.Note, Anchor.MiddleLeft);
                    free = y;
                }

                if (glue.Stack.Any(s => s.Joins && s.Lower == i)) Open(drawing, place, most, top);
                bottom = top;
            }

            drawing.Line(place.Point(new(0, -3 / scale.Ratio)), place.Point(new(0, bottom + (3 / scale.Ratio))), Pens.Centre);
            return drawing;
        });
    }

    /// <summary>The marks from above: the lowest ring innermost, a dot at joint 1 of each ring, and a line from dot to dot.</summary>
    public static Drawing Marks(GluePlan glue, double size)
    {
        int rings = glue.Plan.Rings.Length;
        double outer = (size / 2) - 5, inner = Math.Min(outer / 3, 12), step = (outer - inner) / Math.Max(1, rings - 1);
        Vector2D centre = new(size / 2, size / 2);
        var drawing = new Drawing(size, size);
        drawing.Line(centre - new Vector2D(1.5, 0), centre + new Vector2D(1.5, 0), Pens.Fine).Line(centre - new Vector2D(0, 1.5), centre + new Vector2D(0, 1.5), Pens.Fine);
        List<(Vector2D At, double Direction, int Ring)> marks = [];
        for (int i = 0; i < rings; i++)
        {
            double radius = inner + (i * step);
            drawing.Stroke(Outline.Circle(centre, radius), step < 1.2 ? Pens.Fine with { Width = 0.09 } : Pens.Fine);
            RimMarks rim = RimMarks.Of(glue.Plan.Rings[i]);
            // The paper's y runs down, the ring's angles run counter-clockwise.
            if (!rim.Joints.IsEmpty) marks.Add((centre + Vector2D.Polar(radius, -rim.Joints[0]), -rim.Joints[0], i));
        }

        if (marks.Count > 1) drawing.Stroke(Outline.Polyline([.. marks.Select(m => m.At)]), Pens.Fine);
        foreach ((Vector2D at, _, _) in marks) drawing.Fill(Outline.Circle(at, Math.Clamp(step / 3, 0.4, 1.1)), Colour.Black);
        if (rings <= MostNumbers && step > 3.2)
            foreach ((Vector2D at, double direction, int ring) in marks) drawing.Text(Text(ring), at + Vector2D.Polar(2.4, direction + (Math.PI / 2)), TypeScale.Note, Anchor.Middle);
        return drawing;
    }

    private static void Open(Drawing drawing, Placement place, double most, double top)
    {
        Vector2D left = place.Point(new(-most, top)), right = place.Point(new(most, top));
        drawing.Line(left - new Vector2D(4, 0), right + new Vector2D(0.8, 0), Pens.Heavy);
    }

    private static string Text(int ring) => (ring + 1).ToString(CultureInfo.InvariantCulture);
}
