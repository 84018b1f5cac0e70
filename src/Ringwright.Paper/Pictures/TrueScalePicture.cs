using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;
using Ringwright.Core.Rings;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Pictures;

/// <summary>
/// Outlines to lay wood on: the wedge as sawn and as finished and as much of the ring as the paper holds, all at true scale
/// in lines of <see cref="Line"/>. A wedge larger than the paper shows the end of its rim.
/// </summary>
public static class TrueScalePicture
{
    private const double Air = 12;         // between the outlines
    private const double LeastApart = 0.5; // joints, mm
    private const double CaptionGap = 3;   // from an outline to its caption

    /// <summary>The line of true-scale outlines: thin enough to lay an edge on (ISO 128 width 0.25 mm).</summary>
    public static Pen Line { get; } = new(0.25);

    /// <summary>Draws as much as fits the room.</summary>
    /// <param name="plan">The ring.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="room">Room on the paper.</param>
    public static Drawing Draw(RingPlan plan, MeasureStyle style, Room room)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        return Arrangements(plan, Caliper.Of(style), room).Select(parts => Shelf(parts, room)).First(drawing => drawing is not null)!;
    }

    // From the fullest to the poorest; the last one always fits.
    private static IEnumerable<IReadOnlyList<Drawing>> Arrangements(RingPlan plan, MeasureStyle style, Room room)
    {
        WedgeGeometry sawn = plan.Strip.Wedge, finished = plan.Glued;
        if (Fits(sawn.RimEdge, sawn.Depth, room))
        {
            Drawing[] wedges = [Wedge(sawn, "as sawn", style), Wedge(finished, "sanded", style)];
            foreach (int segments in RingParts(finished, room))
                yield return [.. wedges, Part(finished, segments, style)];
            yield return wedges;
            yield return [wedges[0]];
        }

        yield return [RimEnd(sawn, new(room.Width - 2, room.Height - 16))];
    }

    // The full ring, else as many segments as fit by themselves, fewer and fewer.
    private static IEnumerable<int> RingParts(WedgeGeometry wedge, Room room)
    {
        if (Fits(2 * wedge.OuterCorner, 2 * wedge.OuterCorner, room)) yield return wedge.Segments;
        for (int n = wedge.Segments / 2; n > 1; n--)
        {
            double half = n * wedge.HalfAngle;
            double width = 2 * wedge.OuterCorner * Math.Sin(half);
            if (Fits(width, wedge.OuterApothem - (wedge.InnerCorner * Math.Cos(half)), room)) yield return n;
        }
    }

    private static bool Fits(double width, double height, Room room) => width <= room.Width - 1 && height <= room.Height - 15;

    private static Drawing Wedge(WedgeGeometry wedge, string state, MeasureStyle style) =>
        Captioned(new Drawing(0, 0).Stroke(new WedgeCorners(wedge, 1).Outline, Line), $"wedge {state}\nrim {style.Length(wedge.RimEdge)}\ntip {style.Length(wedge.Tip)}");

    private static Drawing Part(WedgeGeometry wedge, int segments, MeasureStyle style)
    {
        bool whole = segments == wedge.Segments;
        // Lying with the middle of the part on top; the whole ring with its first flat at the right, as in the other pictures.
        Placement place = new(Vector2D.Zero, Turn: whole ? 0 : (Math.PI / 2) - ((segments - 1) * wedge.HalfAngle));
        double[] joints = [.. Enumerable.Range(0, whole ? segments : segments + 1).Select(i => ((2 * i) - 1) * wedge.HalfAngle)];
        Drawing drawing = new(0, 0);
        Flats(wedge.OuterCorner);
        if (wedge.InnerApothem > 0) Flats(wedge.InnerCorner);
        // Towards the centre joints end where their lines would run into each other.
        double from = Math.Max(wedge.InnerCorner, LeastApart * wedge.Segments / (2 * Math.PI));
        foreach (double joint in joints.Where(_ => from < wedge.OuterCorner))
            drawing.Line(place.Point(Vector2D.Polar(from, joint)), place.Point(Vector2D.Polar(wedge.OuterCorner, joint)), Line);
        return Captioned(
            drawing,
            (whole ? "glued" : $"glued, {segments} of {wedge.Segments} segments") + $"\n{style.Length(2 * wedge.OuterApothem)} across flats\n");

        void Flats(double corner)
        {
            Vector2D[] corners = [.. joints.Select(joint => Vector2D.Polar(corner, joint))];
            drawing.Stroke(whole ? place.Polygon(corners) : Outline.Polyline(place.Points(corners)), Line);
        }
    }

    private static Drawing RimEnd(WedgeGeometry wedge, Room room)
    {
        double width = Math.Min(room.Width, wedge.RimEdge), height = Math.Min(room.Height, wedge.Depth);
        ConvexPolygon seen = new ConvexPolygon([.. new WedgeCorners(wedge, 1).Outline.Flattened().Single().Select(p => new Vector2D(p.X, -p.Y))])
            .Clip(new(new(1, 0), (-wedge.RimEdge / 2) + width)).Clip(new(new(0, 1), height));
        Drawing drawing = new(0, 0);
        foreach ((Vector2D a, Vector2D b) in seen.Edges())
        {
            bool cutOff = (width < wedge.RimEdge && a.X == b.X) || (height < wedge.Depth && a.Y == b.Y && a.Y > 0);
            drawing.Line(new(a.X, -a.Y), new(b.X, -b.Y), cutOff ? Pens.Hidden : Line);
        }

        return Captioned(drawing, "end of the wedge as sawn; the rest is larger than the paper");
    }

    private static Drawing Captioned(Drawing outlines, string caption)
    {
        Drawing cropped = outlines.Cropped();
        return new Drawing(0, 0).Place(cropped, default)
            .Text(Wrapping.Lines(caption, TypeScale.Note, double.PositiveInfinity), new(cropped.Width / 2, cropped.Height + CaptionGap), Anchor.TopCentre).Cropped();
    }

    // From the left, a new row where the last is full; rows and what is in them are centred. Null where it is too much.
    private static Drawing? Shelf(IReadOnlyList<Drawing> parts, Room room)
    {
        List<List<Drawing>> rows = [[]];
        foreach (Drawing part in parts)
        {
            if (part.Width > room.Width) return null;
            if (WidthOf([.. rows[^1], part]) > room.Width) rows.Add([]);
            rows[^1].Add(part);
        }

        double height = rows.Sum(HeightOf) + (Air * (rows.Count - 1));
        return height > room.Height ? null : Placed(rows, height);
    }

    private static Drawing Placed(List<List<Drawing>> rows, double height)
    {
        double width = rows.Max(WidthOf), y = 0;
        Drawing all = new(width, height);
        foreach (List<Drawing> row in rows)
        {
            double x = (width - WidthOf(row)) / 2;
            foreach (Drawing part in row)
            {
                all.Place(part, new(x, y + HeightOf(row) - part.Height));
                x += part.Width + Air;
            }

            y += HeightOf(row) + Air;
        }

        return all;
    }

    private static double WidthOf(IReadOnlyCollection<Drawing> row) => row.Sum(p => p.Width) + (Air * (row.Count - 1));

    private static double HeightOf(IReadOnlyCollection<Drawing> row) => row.Max(p => p.Height);
}
