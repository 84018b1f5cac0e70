using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Templates;

/// <summary>Draws one page's part of a template, and the small map of all its pages.</summary>
internal static class TilePicture
{
    private const double Arm = 4;                // of a cross, mm
    private const double MapCell = 8, MapRow = 6; // of the map, mm
    private const double MostMap = 40;           // width of the map, mm

    /// <summary>The part of <paramref name="whole"/> that a tile shows, with crosses and seams.</summary>
    public static Drawing Part(Drawing whole, TilePlan plan, Tile tile)
    {
        if (plan.IsOne) return whole;
        Drawing part = new(tile.Box.Width, tile.Box.Height);
        Copy(whole, part, Vector2D.Zero, tile, plan);
        foreach ((Vector2D from, Vector2D to) in plan.Seams(tile)) part.Line(from - tile.Box.TopLeft, to - tile.Box.TopLeft, Pens.Hidden);
        foreach ((Vector2D at, string beyond) in plan.Crosses(tile)) Cross(part, at - tile.Box.TopLeft, beyond);
        return part;
    }

    /// <summary>Which page of which is meant: a box for each page, the present one heavy.</summary>
    public static Drawing Map(TilePlan plan, Tile here)
    {
        double scale = Math.Min(1, MostMap / (plan.Columns * MapCell)), wide = MapCell * scale, tall = MapRow * scale;
        Drawing map = new(plan.Columns * wide + 1, plan.Rows * tall + 1);
        foreach (Tile tile in plan.Tiles)
        {
            Box box = new(0.5 + (tile.Column * wide), 0.5 + (tile.Row * tall), wide, tall);
            bool present = tile.Column == here.Column && tile.Row == here.Row;
            map.Stroke(Outline.Rectangle(box.Inset(present ? 0.35 : 0)), present ? Pens.Heavy : Pens.Fine);
            if (scale == 1) map.Text(tile.Name, box.Centre, TypeScale.Note, Anchor.Middle);
        }

        return map;
    }

    private static void Copy(Drawing from, Drawing to, Vector2D at, Tile tile, TilePlan plan)
    {
        Vector2D shift = at - tile.Box.TopLeft;
        Box window = new(-shift.X, -shift.Y, tile.Box.Width, tile.Box.Height);
        foreach (Mark mark in from.Marks)
        {
            if (mark is Mark.Placed placed)
            {
                Copy(placed.Child, to, at + placed.At, tile, plan);
            }
            else if (mark is Mark.Stroke stroke && stroke.Outline.Within(window) is Outline inside)
            {
                to.Place(new Drawing(0, 0).Stroke(inside, stroke.Pen), shift);
            }
            else if (mark is Mark.Text text && Fitting(text, window, plan.ClearOfSeams(tile, shift)) is Vector2D moved)
            {
                Mark.Text placedText = text with { At = text.At + moved + shift };
                // Of words that were moved onto each other the later ones stand on the other page only.
                if (!to.TextBoxes.Any(t => t.Box.Overlaps(placedText.Bounds))) to.Text(placedText.Line, placedText.At, placedText.Anchor, placedText.Angle);
            }
        }
    }

    // Words are not cut: the page that has their middle has them whole, moved to where nothing belongs to a seam.
    private static Vector2D? Fitting(Mark.Text text, Box window, Box clear)
    {
        Box box = text.Bounds;
        if (!window.Contains(new(box.Centre.X, box.Centre.Y, 0, 0)) || box.Width > clear.Width || box.Height > clear.Height) return null;
        return new(
            Math.Max(0, clear.X - box.X) - Math.Max(0, box.Right - clear.Right),
            Math.Max(0, clear.Y - box.Y) - Math.Max(0, box.Bottom - clear.Bottom));
    }

    private static void Cross(Drawing part, Vector2D at, string beyond) => part
        .Line(at - new Vector2D(Arm, 0), at + new Vector2D(Arm, 0), Pens.Medium)
        .Line(at - new Vector2D(0, Arm), at + new Vector2D(0, Arm), Pens.Medium)
        .Text($"to {beyond}", at + new Vector2D(1, Arm), TypeScale.Caption, Anchor.TopLeft);
}
