using Ringwright.Core.Geometry;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Pictures;

/// <summary>Pictures are drawn around any origin and then cut to what is on them, so that nothing ever lies outside.</summary>
internal static class Cropping
{
    private const double Margin = 0.5;

    /// <summary>A drawing just as large as the marks on this one.</summary>
    public static Drawing Cropped(this Drawing drawing)
    {
        Vector2D[] corners = [.. drawing.Marks.SelectMany(Boxes).SelectMany(b => new[] { b.TopLeft, new Vector2D(b.Right, b.Bottom) })];
        if (corners.Length == 0) return new(0, 0);
        Box box = Box.Around(corners).Inset(-Margin);
        return new Drawing(box.Width, box.Height).Place(drawing, -box.TopLeft);
    }

    /// <summary>The box of every mark on a drawing, its line's thickness included.</summary>
    public static IEnumerable<Box> BoxesOf(Drawing drawing) => drawing.Marks.SelectMany(Boxes);

    /// <summary>The picture standing on the foot of a taller drawing, so that several stand level beside each other.</summary>
    public static Drawing Standing(this Drawing drawing, double height) =>
        new Drawing(drawing.Width, height).Place(drawing, new(0, height - drawing.Height));

    private static IEnumerable<Box> Boxes(Mark mark) => mark switch
    {
        Mark.Stroke stroke => Around(stroke.Outline, stroke.Pen.Width / 2),
        Mark.Fill fill => Around(fill.Outline, 0),
        Mark.Text text => [text.Bounds],
        Mark.Placed placed => placed.Child.Marks.SelectMany(Boxes).Select(placed.ToParent),
        _ => [],
    };

    private static IEnumerable<Box> Around(Outline outline, double spread) =>
        outline.Flattened().Select(points => Box.Around(points).Inset(-spread));
}
