using Ringwright.Core.Geometry;
using Ringwright.Paper.Blocks;
using Ringwright.Paper.Dimensions;
using Ringwright.Paper.Drawings;
using Ringwright.Paper.Sheets;

namespace Ringwright.Paper.Tests;

/// <summary>
/// Two sheets that use every part of the kit: a job sheet and a true-scale sheet. All numbers are invented.
/// </summary>
internal sealed class SamplePacket(PaperSize paper, SampleValues values, PrintCorrection? correction = null)
{
    private const int Segments = 24;
    private const double Half = Math.PI / Segments;

    public Packet Make()
    {
        Packet packet = new(new(values.Piece, values.Units, new DateOnly(2026, 3, 14), "0.1.0"), paper, correction);
        packet.Add(values.SheetName, "2:1")
            .Add(new KeyFigures(4, values.Figures))
            .Add(new Columns(
                (1, new Section("The disc", new Picture(Disc(66), "Seen from above, the marked face up"))),
                (1, new Section("Settings", Settings()))))
            .Add(new Columns(
                (1, new Section("Order of work", new ListBlock(ListMark.Number, values.Steps))),
                (1, new Section("Take care", new ListBlock(ListMark.Caution, values.Cautions)))));
        packet.Add("True-scale wedge", "1:1").AddTrueScale(Wedge());
        return packet;
    }

    private Table Settings() => new(
        [new("Setting"), new("Value", ColumnKind.Numbers), new("Tells you")], values.Settings);

    private static Drawing Disc(double size)
    {
        const double Scale = 2, Outer = 12.7, Inner = 1.2;
        Drawing drawing = new(size, size - 6);
        Placement place = new(new(drawing.Width / 2, drawing.Height / 2), Scale);
        for (int i = 0; i < Segments; i++)
        {
            double middle = 2 * Half * i;
            Outline wedge = place.Polygon(Corners(Outer, Inner).Select(p => p.Rotated(middle)));
            drawing.Hatch(wedge, Hatch.Of(i % 2).Turned(place.Angle(middle))).Stroke(wedge, Pens.Medium);
        }

        Vector2D centre = place.Point(Vector2D.Zero);
        double reach = (Scale * Outer) + 3;
        return drawing
            .Line(centre - new Vector2D(reach, 0), centre + new Vector2D(reach, 0), Pens.Centre)
            .Line(centre - new Vector2D(0, reach), centre + new Vector2D(0, reach), Pens.Centre);
    }

    private Drawing Wedge()
    {
        const double Outer = 100, Inner = 55;
        Drawing drawing = new(130, 110);
        Placement place = new(new(62, 113), Turn: Math.PI / 2);
        Vector2D[] corners = [.. Corners(Outer, Inner)];
        Outline wedge = place.Polygon(corners);
        IReadOnlyList<Vector2D> p = place.Points(corners);
        Vector2D apex = place.Point(Vector2D.Zero);
        return drawing
            .Hatch(wedge, Hatch.Of(1))
            .Stroke(wedge, Pens.Heavy)
            .Dimension(p[2], p[1], 9, values.Outer)
            .Dimension(p[1], p[0] with { X = p[1].X }, 12, values.Depth)
            .AngleDimension(apex, 45, place.Angle(-Half), -2 * Half, "15°", edge: 55 / Math.Cos(Half))
            .Note(place.Point(new(75, 3)), new(30, 60), "Padauk,\nthis face up", LeaderEnd.Dot)
            .RadiusDimension(apex, Outer, place.Angle(-Half) + 0.0, values.Outer, 6);
    }

    private static IEnumerable<Vector2D> Corners(double outer, double inner)
    {
        double o = outer * Math.Tan(Half), i = inner * Math.Tan(Half);
        return [new(inner, -i), new(outer, -o), new(outer, o), new(inner, i)];
    }
}
