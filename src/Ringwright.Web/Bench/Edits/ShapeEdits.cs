using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Geometry;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Profiles;

namespace Ringwright.Web.Bench.Edits;

/// <summary>Changes to the outline. Lengths in mm.</summary>
public static class ShapeEdits
{
    private const double Inch64 = MeasureStyle.MillimetresPerInch / 64;

    /// <summary>What a dragged point snaps to: half a millimetre, or 1/64 in.</summary>
    public static double Grid(UnitChoice units) => units.Unit() == LengthUnit.Inch ? Inch64 : 0.5;

    /// <summary>
    /// With a point of the outer curve (or of a drawn inside) as near as can be to a place: on the grid, not below the point
    /// before it nor above the one after, and not at the place of either.
    /// </summary>
    public static Work MovePoint(Work work, bool inner, int index, double radius, double height, double grid)
    {
        ArgumentNullException.ThrowIfNull(work);
        ImmutableArray<ShapePoint> points = PointsOf(work, inner);
        double low = index == 0 ? 0 : points[index - 1].Height.Millimetres, high = index == points.Length - 1 ? PieceCheck.LargestSize : points[index + 1].Height.Millimetres;
        double diameter = Math.Clamp(2 * Snap(radius, grid), inner ? 0 : PieceCheck.SmallestSize, PieceCheck.LargestSize);
        ShapePoint moved = points[index] with { Diameter = Mm(diameter), Height = Mm(Math.Clamp(Snap(height, grid), low, high)) };
        bool taken = Math.Max(0, index - 1) is var before && Same(points, before, index, moved) || (index + 1 < points.Length && Same(points, index + 1, index, moved));
        return taken ? work : WithPoints(work, inner, points.SetItem(index, moved));
    }

    /// <summary>With a new point half way between the one at <paramref name="index"/> and the next, on the curve as it is.</summary>
    public static Work AddPoint(Work work, bool inner, int index)
    {
        ArgumentNullException.ThrowIfNull(work);
        ImmutableArray<ShapePoint> points = PointsOf(work, inner);
        int from = Math.Min(index, points.Length - 2);
        Vector2D middle = ProfileCurve.Through(points).Spans[from].At(0.5);
        return WithPoints(work, inner, points.Insert(from + 1, new() { Diameter = Mm(Math.Round(2 * middle.X, 1)), Height = Mm(Math.Round(middle.Y, 1)) }));
    }

    /// <summary>Without a point.</summary>
    /// <exception cref="BadInputException">Two are the fewest.</exception>
    public static Work RemovePoint(Work work, bool inner, int index)
    {
        ImmutableArray<ShapePoint> points = PointsOf(work, inner);
        return points.Length <= 2
            ? throw new BadInputException(inner ? "inner curve" : "outer curve", "it has two points", "at least two make a curve")
            : WithPoints(work, inner, points.RemoveAt(index));
    }

    /// <summary>With a point turned sharp or smooth.</summary>
    public static Work TurnSharp(Work work, bool inner, int index)
    {
        ImmutableArray<ShapePoint> points = PointsOf(work, inner);
        return WithPoints(work, inner, points.SetItem(index, points[index] with { Sharp = !points[index].Sharp }));
    }

    /// <summary>With an outline of a kind, as wide and high as the rings are now.</summary>
    public static Work Start(Work work, PieceKind kind)
    {
        ArgumentNullException.ThrowIfNull(work);
        (double diameter, double height) = SizeOf(work);
        return new(work.Piece with { Kind = kind, Shape = StartingShapes.Of(kind, Mm(Math.Round(diameter, 1)), Mm(height)) }, work.Shop);
    }

    /// <summary>With another kind of inside, sized to what the outline has room for.</summary>
    public static Work Inside(Work work, string kind)
    {
        ArgumentNullException.ThrowIfNull(work);
        Shape shape = work.Piece.Shape!;
        TurnedForm form = TurnedForm.Of(shape with { Inside = null, Holding = null });
        double widest = 2 * form.Extents(form.Bottom, form.Top).MaxOuter, narrowest = 2 * form.Extents(form.Bottom, form.Top).MinOuter;
        double wall = Math.Round(Math.Max(0.5, Math.Min(0.1 * widest, 2.5 + (0.02 * widest))), 1), floor = Math.Round(form.Bottom + Math.Min(2 * wall, 0.4 * form.Height), 1);
        return work.WithShape(shape with
        {
            Inside = kind switch
            {
                "wall" => new Wall { Thickness = Mm(wall), Floor = Mm(floor) },
                "bore" => new Bore { Diameter = Mm(Math.Round(narrowest / 2, 1)) },
                "drawn" => new Hollow { Points = [.. Drawn(form, floor, wall)] },
                _ => null,
            },
        });
    }

    /// <summary>With a tenon, a recess, or neither (null), as wide as half the foot.</summary>
    public static Work Hold(Work work, HoldingKind? kind)
    {
        ArgumentNullException.ThrowIfNull(work);
        Shape shape = work.Piece.Shape!;
        double foot = shape.Outer[0].Diameter.Millimetres;
        return work.WithShape(shape with { Holding = kind is HoldingKind held ? new() { Kind = held, Diameter = Mm(Math.Round(foot / 2, 1)), Length = Mm(held == HoldingKind.Tenon ? 6 : 3) } : null });
    }

    /// <summary>Scaled so that it is <paramref name="diameter"/> at its widest and <paramref name="height"/> high; the wall stays.</summary>
    public static Shape Scaled(Shape shape, double diameter, double height)
    {
        ArgumentNullException.ThrowIfNull(shape);
        TurnedForm form = TurnedForm.Of(shape);
        double across = diameter / (2 * form.Extents(form.Bottom, form.Top).MaxOuter), up = height / form.Height;
        ImmutableArray<ShapePoint> Of(ImmutableArray<ShapePoint> points) => [.. points.Select(p => p with
        {
            Diameter = Mm(Math.Round(p.Diameter.Millimetres * across, 2)),
            Height = Mm(Math.Round(form.Bottom + ((p.Height.Millimetres - form.Bottom) * up), 2)),
        })];
        return shape with { Outer = Of(shape.Outer), Inside = shape.Inside is Hollow hollow ? hollow with { Points = Of(hollow.Points) } : shape.Inside };
    }

    /// <summary>The points of the outer curve or of a drawn inside.</summary>
    public static ImmutableArray<ShapePoint> PointsOf(Work work, bool inner)
    {
        ArgumentNullException.ThrowIfNull(work);
        return inner ? ((Hollow)work.Piece.Shape!.Inside!).Points : work.Piece.Shape!.Outer;
    }

    private static Work WithPoints(Work work, bool inner, ImmutableArray<ShapePoint> points)
    {
        Shape shape = work.Piece.Shape!;
        return work.WithShape(inner ? shape with { Inside = (Hollow)shape.Inside! with { Points = points } } : shape with { Outer = points });
    }

    private static IEnumerable<ShapePoint> Drawn(TurnedForm form, double floor, double wall)
    {
        for (int i = 0; i <= 4; i++)
        {
            double z = Math.Round(floor + ((form.Top - floor) * i / 4), 1);
            yield return new() { Height = Mm(z), Diameter = Mm(Math.Round(Math.Max(0.5, 2 * (form.Outer(z, z >= form.Top ? Side.Below : Side.Above) - wall)), 1)) };
        }
    }

    private static (double Diameter, double Height) SizeOf(Work work)
    {
        double widest = work.Piece.Rings.Max(r => r.Diameter?.Millimetres ?? 0);
        return (widest > 0 ? widest : 100, work.Piece.Rings.Sum(r => r.Thickness.Millimetres));
    }

    private static bool Same(ImmutableArray<ShapePoint> points, int other, int index, ShapePoint moved) =>
        other != index && points[other].Height == moved.Height && points[other].Diameter == moved.Diameter;

    private static double Snap(double value, double grid) => Math.Round(value / grid) * grid;

    private static Length Mm(double millimetres) => Length.FromMillimetres(Math.Round(millimetres, 4));
}
