using System.Collections.Immutable;
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
    /// <param name="plan">The ring, or one batch of it.</param>
    /// <param name="style">How lengths are printed.</param>
    /// <param name="room">Room on the paper.</param>
    /// <param name="whole">The whole ring where <paramref name="plan"/> is one batch.</param>
    public static Drawing Draw(RingPlan plan, MeasureStyle style, Room room, RingPlan? whole = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(style);
        return Arrangements(plan, whole ?? plan, Caliper.Of(style), room).Select(parts => Shelf(parts, room)).First(drawing => drawing is not null)!;
    }

    /// <summary>The wedge as sawn alone, with its sizes.</summary>
    internal static Drawing OneWedge(RingPlan plan, MeasureStyle style) => Wedge(plan.Strip.Wedge, "as sawn", Caliper.Of(style));

    // From the fullest to the poorest; the last one always fits.
    private static IEnumerable<IReadOnlyList<Drawing>> Arrangements(RingPlan plan, RingPlan ring, MeasureStyle style, Room room)
    {
        WedgeGeometry sawn = plan.Strip.Wedge, finished = plan.Glued;
        if (Fits(sawn.RimEdge, sawn.Depth, room))
        {
            Drawing[] wedges = [Wedge(sawn, "as sawn", style), Wedge(finished, "sanded", style)];
            foreach (ImmutableArray<LaidOutline> pieces in RingParts(LaidOutline.Of(ring), room))
                yield return [.. wedges, Part(ring, pieces, style)];
            yield return wedges;
            yield return [wedges[0]];
        }

        yield return [RimEnd(sawn, new(room.Width - 2, room.Height - 16))];
    }

    // The full ring, else as many pieces as fit by themselves, fewer and fewer.
    private static IEnumerable<ImmutableArray<LaidOutline>> RingParts(ImmutableArray<LaidOutline> pieces, Room room)
    {
        double across = 2 * pieces.SelectMany(p => p.Corners).Max(c => c.Length);
        if (Fits(across, across, room)) yield return pieces;
        for (int n = pieces.Length / 2; n > 1; n--)
        {
            ImmutableArray<LaidOutline> part = [.. pieces.Take(n)];
            Box box = Box.Around([.. part.SelectMany(p => p.Corners).Select(c => c.Rotated(Upright(part)))]);
            if (Fits(box.Width, box.Height, room)) yield return part;
        }
    }

    // Turns the middle of a part to the top.
    private static double Upright(ImmutableArray<LaidOutline> part) => (Math.PI / 2) - ((part[0].Middle + part[^1].Middle) / 2);

    private static bool Fits(double width, double height, Room room) => width <= room.Width - 1 && height <= room.Height - 15;

    private static Drawing Wedge(WedgeGeometry wedge, string state, MeasureStyle style) =>
        Captioned(new Drawing(0, 0).Stroke(new WedgeCorners(wedge, 1).Outline, Line), $"wedge {state}\nrim {style.Length(wedge.RimEdge)}\ntip {style.Length(wedge.Tip)}");

    private static Drawing Part(RingPlan plan, ImmutableArray<LaidOutline> pieces, MeasureStyle style)
    {
        int around = plan.Batches.Sum(b => b.Places.Length) + plan.Spacers.Sum(s => s.Places.Length);
        bool whole = pieces.Length == around;
        Placement place = new(Vector2D.Zero, Turn: whole ? 0 : Upright(pieces));
        Drawing drawing = new(0, 0);
        Pieces(drawing, pieces, whole, place, Line);
        string what = plan.Spacers.IsEmpty ? "segments" : "pieces";
        return Captioned(
            drawing,
            (whole ? "glued" : $"glued, {pieces.Length} of {around} {what}") + $"\n{style.Length(plan["across-flats"].Value)} across flats\n");
    }

    /// <summary>Draws pieces of a ring from above, every line once: where they touch, the joint between them.</summary>
    internal static void Pieces(Drawing drawing, ImmutableArray<LaidOutline> pieces, bool whole, Placement place, Pen pen)
    {
        RingLines lines = new(pieces, whole);
        if (!lines.IsClosed)
        {
            foreach (LaidOutline piece in pieces) drawing.Stroke(place.Polygon(piece.Corners), pen);
            return;
        }

        foreach (Vector2D[] corners in new[] { lines.Outside, lines.Inside }.Where(c => c.Length > 1))
            drawing.Stroke(whole ? place.Polygon(corners) : Outline.Polyline(place.Points(corners)), pen);
        foreach ((Vector2D inner, Vector2D outer) in lines.Joints(LeastApart))
            drawing.Line(place.Point(inner), place.Point(outer), pen);
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
