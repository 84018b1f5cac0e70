using System.Collections.Immutable;
using CsCheck;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Tests.Profiles;

/// <summary>Shapes for tests: by hand, and random ones with steps, corners and walls of every kind.</summary>
internal static class AnyShape
{
    /// <summary>Outer curves of 2 to 9 points, steps and sharp points among them.</summary>
    public static readonly Gen<ImmutableArray<ShapePoint>> Outer =
        from points in Gen.Select(Gen.Double[10, 200], Gen.Double[0, 1], Gen.Bool, Gen.Int[0, 3]).Array[2, 9]
        select Curve(points);

    /// <summary>Solid, evenly walled, unevenly walled, bored and drawn shapes that pass the check.</summary>
    public static readonly Gen<Shape> Shape =
        from outer in Outer
        from inside in AnyInside(outer)
        select new Shape { Outer = outer, Inside = inside };

    /// <summary>Those of them that can be turned.</summary>
    public static readonly Gen<Shape> Good = Shape.Where(IsGood);

    /// <summary>Evenly walled shapes with the thickness, mm.</summary>
    public static readonly Gen<(Shape Shape, double Thickness)> EvenWall =
        (from outer in Outer
         from t in Gen.Double[1, 15]
         select (new Shape { Outer = outer, Inside = new Wall { Thickness = Mm(t) } }, t)).Where(s => IsGood(s.Item1));

    public static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);

    public static ShapePoint At(double diameter, double height, bool sharp = false) => new() { Diameter = Mm(diameter), Height = Mm(height), Sharp = sharp };

    /// <summary>A shape with an even wall.</summary>
    public static Shape Walled(double thickness, double? floor, params ShapePoint[] outer) =>
        new() { Outer = [.. outer], Inside = new Wall { Thickness = Mm(thickness), Floor = floor is double f ? Mm(f) : null } };

    /// <summary>Points on a circle of <paramref name="radius"/> around (<paramref name="across"/>, <paramref name="up"/>), from one angle to another.</summary>
    public static ShapePoint[] Circle(double radius, double across, double up, double from, double to, int count) =>
        [.. Enumerable.Range(0, count).Select(i => from + ((to - from) * i / (count - 1))).Select(a => At(2 * (across + (radius * Math.Cos(a))), up + (radius * Math.Sin(a))))];

    /// <summary>Whether it passes the check.</summary>
    public static bool IsGood(Shape shape)
    {
        try
        {
            ShapeCheck.Check(shape);
            return true;
        }
        catch (BadInputException)
        {
            return false;
        }
    }

    private static ImmutableArray<ShapePoint> Curve((double Diameter, double Rise, bool Sharp, int Kind)[] points)
    {
        double height = 0;
        var made = ImmutableArray.CreateBuilder<ShapePoint>(points.Length);
        for (int i = 0; i < points.Length; i++)
        {
            if (i > 0 && (points[i].Kind > 0 || points.Length == 2)) height += 2 + (60 * points[i].Rise);
            made.Add(At(points[i].Diameter, height, points[i].Sharp));
        }

        return made.MoveToImmutable();
    }

    private static Gen<Inside?> AnyInside(ImmutableArray<ShapePoint> outer)
    {
        double top = outer[^1].Height.Millimetres, narrow = outer.Min(p => p.Diameter.Millimetres);
        Gen<Inside?> even = from t in Gen.Double[0.5, 30] from floor in Gen.Double[0.01, 0.9] select (Inside?)new Wall { Thickness = Mm(t), Floor = Mm(floor * top) };
        Gen<Inside?> changing =
            from t in Gen.Double[0.5, 20].Array[2, 6]
            select (Inside?)new Wall { Thickness = Mm(5), Along = [.. t.Select((x, i) => new WallPoint { Height = Mm(25 * i), Thickness = Mm(x) })] };
        Gen<Inside?> bore = from d in Gen.Double[0.1, 0.95] from floor in Gen.Double[0.01, 0.9] select (Inside?)new Bore { Diameter = Mm(d * narrow), Floor = Mm(floor * top) };
        Gen<Inside?> drawn =
            from share in Gen.Double[0.2, 0.9].Array[outer.Length]
            select (Inside?)new Hollow { Points = [.. outer.Select((p, i) => At(share[i] * p.Diameter.Millimetres, p.Height.Millimetres, p.Sharp))] };
        return Gen.OneOf(even, changing, bore, drawn, Gen.Const((Inside?)null));
    }
}
