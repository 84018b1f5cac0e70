using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Profiles;

/// <summary>
/// A shape to start from for each kind of piece, to be bent to taste. Proportions are our own; they hold from small to large, with
/// lengths on tenths of a millimetre so that they read well.
/// </summary>
public static class StartingShapes
{
    /// <summary>Smallest diameter and height with a starting shape, mm.</summary>
    public const double Smallest = 8;

    /// <summary>Largest diameter and height with a starting shape, mm.</summary>
    public const double Largest = 3000;

    private const double PenTube = 7;

    /// <summary>The starting shape of a kind, <paramref name="diameter"/> at its widest and <paramref name="height"/> high.</summary>
    /// <exception cref="BadInputException">A size outside <see cref="Smallest"/> to <see cref="Largest"/> (a disc may be as thin as 1 mm).</exception>
    public static Shape Of(PieceKind kind, Length diameter, Length height)
    {
        Require("diameter", diameter, Smallest);
        Require("height", height, kind == PieceKind.Disc ? 1 : Smallest);
        double d = diameter.Millimetres, h = height.Millimetres;
        return kind switch
        {
            PieceKind.PenBarrel => PenBarrel(d, h),
            PieceKind.Spindle => new() { Outer = Points(d, h, (0.62, 0, true), (0.62, 0.05, true), (0.44, 0.1, false), (0.72, 0.22, false), (1, 0.4, false), (0.62, 0.66, false), (0.4, 0.84, false), (0.5, 0.94, true), (0.5, 1, true)) },
            PieceKind.Box => Box(d, h),
            PieceKind.Bowl => Walled(d, h, (0.43, 0, true), (0.4, 0.06, true), (0.66, 0.25, false), (0.88, 0.58, false), (1, 1, true)),
            PieceKind.Vase => Walled(d, h, (0.5, 0, true), (0.46, 0.03, true), (0.82, 0.26, false), (1, 0.54, false), (0.72, 0.8, false), (0.47, 0.93, false), (0.54, 1, true)),
            PieceKind.Platter => Walled(d, h, (0.46, 0, true), (0.44, 0.16, true), (0.72, 0.44, false), (1, 1, true)),
            _ => new() { Outer = Points(d, h, (1, 0, true), (1, 1, true)) },
        };
    }

    // The hole takes the common 7 mm tube (common practice, no source) unless the barrel is too slender for it.
    private static Shape PenBarrel(double d, double h)
    {
        double bore = Math.Min(PenTube, Tenth(0.7 * d)), wall = d - bore, trim = Tenth(Math.Min(1.5, h / 20));
        return new()
        {
            Outer = [Point(Tenth(bore + (0.55 * wall)), 0), Point(d, Tenth(0.46 * h)), Point(Tenth(bore + (0.4 * wall)), h)],
            Inside = new Bore { Diameter = Mm(bore), Tube = Mm(h - (2 * trim)), EndTrim = Mm(trim) },
        };
    }

    private static Shape Box(double d, double h) => new()
    {
        Outer = Points(d, h, (0.97, 0, true), (1, 0.03, true), (1, 1, true)),
        Inside = new Bore { Diameter = Mm(d - (2 * Thickness(d, h))), Floor = Mm(Tenth(Math.Min(1.3 * Thickness(d, h), 0.3 * h))) },
    };

    private static Shape Walled(double d, double h, params ReadOnlySpan<(double Across, double Up, bool Sharp)> points)
    {
        ImmutableArray<ShapePoint> outer = Points(d, h, points);
        double thickness = Thickness(d, h), foot = outer[1].Height.Millimetres;
        return new()
        {
            Outer = outer,
            Inside = new Wall { Thickness = Mm(thickness), Floor = Mm(Tenth(Math.Min(foot + thickness, 0.45 * h))) },
        };
    }

    // A wall that turns easily, thin enough for small pieces and shallow ones.
    private static double Thickness(double d, double h) => Math.Max(0.5, Tenth(Math.Min(Math.Min(2.5 + (0.02 * d), 0.11 * d), 0.24 * h)));

    private static ImmutableArray<ShapePoint> Points(double d, double h, params ReadOnlySpan<(double Across, double Up, bool Sharp)> points)
    {
        var made = ImmutableArray.CreateBuilder<ShapePoint>(points.Length);
        foreach ((double across, double up, bool sharp) in points)
            made.Add(new() { Diameter = Mm(across == 1 ? d : Tenth(across * d)), Height = Mm(up == 1 ? h : Tenth(up * h)), Sharp = sharp });
        return made.MoveToImmutable();
    }

    private static ShapePoint Point(double diameter, double height) => new() { Diameter = Mm(diameter), Height = Mm(height) };

    private static double Tenth(double millimetres) => Math.Round(millimetres, 1);

    private static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);

    private static void Require(string field, Length length, double least)
    {
        if (length.Millimetres < least || length.Millimetres > Largest)
            throw new BadInputException(field, $"there is no starting shape for {length}", $"{least} mm to {Largest} mm can be");
    }
}
