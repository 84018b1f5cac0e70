using System.Collections.Immutable;
using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Profiles;

namespace Ringwright.Fuzz.Making;

/// <summary>Random pieces of every construction that a person could have described; not all can be made.</summary>
public static class PieceMaker
{
    private static readonly string[] Woods = ["maple", "walnut", "cherry", "padauk", "holly", "wenge", "oak", "my own wood"];

    public static Piece Piece(Dice dice)
    {
        Shape? shape = dice.Chance(0.4) ? Shape(dice) : null;
        LengthUnit units = dice.Chance(0.3) ? LengthUnit.Inch : LengthUnit.Millimetre;
        return new()
        {
            Name = OddText.Name(dice, "Piece"),
            Units = units,
            Notes = dice.Chance(0.2) ? OddText.Name(dice, "some notes") : null,
            Kind = dice.Chance(0.3) ? dice.One(Enum.GetValues<PieceKind>()) : null,
            Shape = shape,
            Rings = shape is null ? [.. Rings(dice)] : [.. Filling(dice, shape)],
        };
    }

    private static IEnumerable<Ring> Rings(Dice dice)
    {
        int count = dice.Chance(0.5) ? 1 : dice.From(2, dice.Chance(0.05) ? 40 : 6);
        double outer = dice.Scale(dice.Chance(0.1) ? 0.6 : 10, dice.Chance(0.1) ? 2900 : 400);
        bool boards = dice.Chance(0.12);
        (double step, double height) = (outer * dice.Between(0.02, 0.2), Thick(dice, outer));
        for (int i = 0; i < count; i++)
        {
            double diameter = boards ? outer + (2 * step * i) : Math.Clamp(outer * dice.Between(0.8, 1.2), 0.6, 3000);
            double inner = boards ? outer - (2 * step) + (2 * step * i) : diameter * dice.Between(0.02, 0.97);
            double thickness = boards ? height : Thick(dice, diameter);
            yield return One(dice, i, Mm(dice, diameter), Mm(dice, inner), Mm(dice, thickness), boards);
        }
    }

    // Rings that fill a shape, or nearly.
    private static IEnumerable<Ring> Filling(Dice dice, Shape shape)
    {
        double left = shape.Outer[^1].Height.Millimetres - shape.Outer[0].Height.Millimetres + (dice.Chance(0.2) ? dice.Between(-5, 20) : 0);
        double usual = Math.Max(0.6, left / dice.From(1, 20));
        for (int i = 0; left > 1e-6 && i < 60; i++)
        {
            double thickness = Math.Min(left, Math.Max(0.6, usual * (dice.Chance(0.3) ? dice.Between(0.5, 2) : 1)));
            left -= thickness;
            yield return One(dice, i, null, null, Mm(dice, Math.Max(0.5, thickness)), false, solid: i == 0 || (i < 3 && dice.Chance(0.3)));
        }
    }

    private static Ring One(Dice dice, int index, Length? diameter, Length? inner, Length thickness, bool boards, bool solid = false)
    {
        string name = OddText.Name(dice, $"R{index + 1}");
        if (string.IsNullOrWhiteSpace(name)) name = $"R{index + 1}";
        int segments = dice.Chance(0.1) ? dice.From(3, 360) : dice.One([3, 4, 5, 6, 8, 10, 12, 12, 16, 18, 24, 36, 48, 72]);
        Length? allowance = dice.Chance(0.2) ? Mm(dice, dice.Between(0, 5)) : null;
        double shift = dice.Chance(0.4) ? dice.One([0.5, 1, -0.25, 0.3333, 12.5]) : 0;
        ImmutableArray<string> woods = [.. Enumerable.Range(0, Math.Min(segments, dice.From(1, 6))).Select(_ => dice.One(Woods))];
        double across = diameter?.Millimetres ?? 100;
        if (boards) return new BoardRing { Name = name, Segments = segments, Diameter = diameter, InnerDiameter = inner, Thickness = thickness, Woods = woods, Board = "Board A", Shift = shift };
        return (solid ? dice.One([0, 0, 5]) : dice.Below(8)) switch
        {
            0 => new WedgeDisc { Name = name, Segments = segments, Diameter = diameter, Thickness = thickness, Allowance = allowance, Woods = woods, Shift = shift, Tip = dice.Chance(0.2) ? Mm(dice, dice.Scale(0.01, 3)) : null, Bore = dice.Chance(0.2) ? Mm(dice, across * dice.Between(0.02, 0.9)) : null, BoardWidth = dice.Chance(0.1) ? Mm(dice, across * dice.Between(0.2, 0.5)) : null },
            1 => new OpenRing { Name = name, Segments = segments, Diameter = diameter, InnerDiameter = inner, Thickness = thickness, Allowance = allowance, Woods = woods, Shift = shift, Gap = Angle.FromDegrees(360.0 / segments * dice.Between(0.01, 0.9)) },
            2 => Mixed(dice, name, diameter, inner, thickness, allowance, shift),
            3 => new StaveRing { Name = name, Segments = segments, Diameter = diameter, InnerDiameter = inner, Thickness = thickness, Allowance = allowance, Woods = woods, Shift = shift, Lean = dice.Chance(0.5) ? Angle.FromDegrees(dice.Between(-60, 60)) : null },
            4 => new LaminatedRing { Name = name, Segments = segments, Diameter = diameter, InnerDiameter = inner, Thickness = thickness, Allowance = allowance, Shift = shift, Strips = [.. Enumerable.Range(0, dice.From(1, 7)).Select(_ => new Strip(dice.One(Woods), Mm(dice, dice.Scale(0.3, 30))))], Recut = Angle.FromDegrees(dice.Chance(0.3) ? 0 : dice.Between(-75, 75)), Mirrored = dice.Chance(0.5) },
            5 => new SolidLayer { Name = name, Diameter = diameter, Thickness = thickness, Allowance = allowance, Shift = shift, Wood = dice.One(Woods) },
            _ => new SegmentRing { Name = name, Segments = segments, Diameter = diameter, InnerDiameter = inner, Thickness = thickness, Allowance = allowance, Woods = woods, Shift = shift, BoardWidth = dice.Chance(0.1) ? Mm(dice, across * dice.Between(0.02, 0.5)) : null },
        };
    }

    private static MixedRing Mixed(Dice dice, string name, Length? diameter, Length? inner, Length thickness, Length? allowance, double shift) => new()
    {
        Name = name,
        Diameter = diameter,
        InnerDiameter = inner,
        Thickness = thickness,
        Allowance = allowance,
        Shift = shift,
        Repeats = dice.From(1, 12),
        Parts = [.. Enumerable.Range(0, dice.From(1, 6)).Select(i => i > 0 && dice.Chance(0.4)
            ? new RingPart { Wood = dice.One(Woods), Thickness = Mm(dice, dice.Scale(0.2, 6)) }
            : new RingPart { Wood = dice.One(Woods), Share = dice.Chance(0.3) ? null : dice.Scale(0.2, 5) })],
    };

    private static Shape Shape(Dice dice)
    {
        Length diameter = Mm(dice, dice.Scale(10, dice.Chance(0.1) ? 2900 : 350)), height = Mm(dice, dice.Scale(10, dice.Chance(0.1) ? 2900 : 350));
        if (dice.Chance(0.7))
        {
            try
            {
                Shape start = StartingShapes.Of(dice.One(Enum.GetValues<PieceKind>()), diameter, height);
                return dice.Chance(0.3) ? start with { Inside = Inside(dice, diameter.Millimetres, height.Millimetres) } : start;
            }
            catch (BadInputException)
            {
                // Too small for that kind: a drawn one instead.
            }
        }

        int points = dice.From(2, 12);
        return new()
        {
            Outer = [.. Enumerable.Range(0, points).Select(i => new ShapePoint { Diameter = Mm(dice, diameter.Millimetres * dice.Between(0.2, 1)), Height = Length.FromMillimetres(Math.Round(height.Millimetres * i / (points - 1), 2)), Sharp = dice.Chance(0.3) })],
            Inside = Inside(dice, diameter.Millimetres, height.Millimetres),
            Holding = dice.Chance(0.2) ? new() { Kind = dice.One(Enum.GetValues<HoldingKind>()), Diameter = Mm(dice, diameter.Millimetres * dice.Between(0.1, 0.9)), Length = Mm(dice, dice.Between(1, 15)) } : null,
        };
    }

    private static Inside? Inside(Dice dice, double diameter, double height) => dice.Below(5) switch
    {
        0 => null,
        1 => new Bore { Diameter = Mm(dice, diameter * dice.Between(0.05, 0.8)), Floor = dice.Chance(0.5) ? Mm(dice, height * dice.Between(0.02, 0.9)) : null },
        2 => new Hollow { Points = [.. Enumerable.Range(0, dice.From(2, 6)).Select(i => new ShapePoint { Diameter = Mm(dice, diameter * dice.Between(0.02, 0.8)), Height = Mm(dice, height * (0.1 + (0.18 * i))) })] },
        3 => new Wall { Thickness = Mm(dice, diameter * dice.Between(0.02, 0.3)), Along = [.. Enumerable.Range(0, dice.From(1, 4)).Select(i => new WallPoint { Height = Mm(dice, height * (i + 0.5) / 5), Thickness = Mm(dice, diameter * dice.Between(0.02, 0.25)) })] },
        _ => new Wall { Thickness = Mm(dice, diameter * dice.Between(0.02, 0.3)), Floor = dice.Chance(0.7) ? Mm(dice, height * dice.Between(0.02, 0.6)) : null },
    };

    private static double Thick(Dice dice, double diameter) => Math.Max(0.6, dice.Chance(0.1) ? dice.Scale(0.6, 500) : Math.Min(60, diameter * dice.Between(0.05, 0.5)));

    // A tenth, or a 64th of an inch, or a length of many decimals.
    private static Length Mm(Dice dice, double millimetres) => Length.FromMillimetres(dice.Below(8) switch
    {
        0 => Math.Max(1, Math.Round(millimetres / 25.4 * 64)) / 64 * 25.4,
        1 => millimetres,
        2 => Math.Max(0.5, Math.Round(millimetres)),
        _ => Math.Max(0.1, Math.Round(millimetres, 1)),
    });
}
