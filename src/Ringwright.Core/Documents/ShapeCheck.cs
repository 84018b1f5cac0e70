using System.Collections.Immutable;
using Ringwright.Core.Pieces;
using Ringwright.Core.Profiles;

namespace Ringwright.Core.Documents;

/// <summary>Says whether a shape can be turned at all. Each refusal names the point or field, its value and what would be right.</summary>
public static class ShapeCheck
{
    /// <summary>Most points in one curve.</summary>
    public const int MostPoints = 500;

    /// <summary>Thinnest wall that is drawn, mm.</summary>
    public const double ThinnestWall = 0.2;

    /// <summary>Throws for the first thing that cannot be.</summary>
    /// <exception cref="BadInputException">With place, value and what would be right.</exception>
    public static void Check(Shape shape) => Form(shape);

    internal static TurnedForm Form(Shape shape)
    {
        ArgumentNullException.ThrowIfNull(shape);
        Points("outer curve", shape.Outer, PieceCheck.SmallestSize);
        double bottom = shape.Outer[0].Height.Millimetres, top = shape.Outer[^1].Height.Millimetres;
        if (top - bottom < PieceCheck.SmallestSize) throw new BadInputException("outer curve", "all its points are at one height", $"it must rise at least {PieceCheck.SmallestSize} mm");
        InsideCheck.Check(shape.Inside, bottom, top);
        if (shape.Holding is Holding holding) CheckHolding(holding, shape.Outer[0]);
        var form = TurnedForm.Unchecked(shape);
        InsideCheck.CheckRoom(shape, form);
        return form;
    }

    internal static void Points(string curve, ImmutableArray<ShapePoint> points, double smallest)
    {
        if (points.IsDefault || points.Length < 2) throw new BadInputException(curve, $"it has {(points.IsDefault ? 0 : points.Length)} points", "at least two make a curve");
        if (points.Length > MostPoints) throw new BadInputException(curve, $"it has {points.Length} points", $"at most {MostPoints} are taken");
        for (int i = 0; i < points.Length; i++)
        {
            string place = $"{curve}, point {i + 1}";
            ShapePoint point = points[i] ?? throw new BadInputException(place, "it is null", "a point has a diameter and a height");
            PieceCheck.Between($"{place}, diameter", point.Diameter, smallest, PieceCheck.LargestSize);
            PieceCheck.Between($"{place}, height", point.Height, 0, PieceCheck.LargestSize);
            if (i > 0) Follow(place, points[i - 1], point);
            if (i > 1) GoOn(place, points[i - 2], points[i - 1], point);
        }
    }

    private static void Follow(string place, ShapePoint before, ShapePoint point)
    {
        if (point.Height.Millimetres < before.Height.Millimetres)
            throw new BadInputException($"{place}, height", $"{point.Height} is lower than the point before at {before.Height}", "heights never fall from point to point");
        if (point.Height == before.Height && point.Diameter == before.Diameter)
            throw new BadInputException(place, $"it is at the same place as the point before, {point.Diameter} across at {point.Height}", "move or remove one of them");
    }

    // Out and back at one height is a groove or a fin without any height.
    private static void GoOn(string place, ShapePoint first, ShapePoint second, ShapePoint point)
    {
        if (first.Height != point.Height) return;
        double before = second.Diameter.Millimetres - first.Diameter.Millimetres, after = point.Diameter.Millimetres - second.Diameter.Millimetres;
        if (before * after < 0)
            throw new BadInputException(place, $"at height {point.Height} the curve runs from {first.Diameter} to {second.Diameter} and back to {point.Diameter}", "a step goes one way; give the point a height of its own");
    }

    private static void CheckHolding(Holding holding, ShapePoint foot)
    {
        string name = holding.Kind == HoldingKind.Tenon ? "tenon" : "recess";
        PieceCheck.Between($"{name}, diameter", holding.Diameter, PieceCheck.SmallestSize, PieceCheck.LargestSize);
        PieceCheck.Between($"{name}, length", holding.Length, PieceCheck.SmallestSize, PieceCheck.LargestSize);
        if (holding.Diameter.Millimetres > foot.Diameter.Millimetres || (holding.Kind == HoldingKind.Recess && holding.Diameter == foot.Diameter))
            throw new BadInputException($"{name}, diameter", $"{holding.Diameter} is wider than the foot of {foot.Diameter}", "it must fit within the foot");
    }
}
