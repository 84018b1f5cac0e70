using System.Collections.Immutable;
using CsCheck;
using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Profiles;
using Ringwright.Paper.Tests.JobSheets;

namespace Ringwright.Paper.Tests.Pictures;

/// <summary>Plans of whole pieces: known ones, and random ones of every kind from a speck to the largest.</summary>
internal static class AnyPiece
{
    private static readonly string[] Woods = ["maple", "African blackwood from an old clarinet", "holly", "oak", "ash", "cherry", "wenge", "beech", "padauk"];

    /// <summary>Random pieces; null where a stack for the shape cannot be made.</summary>
    public static readonly Gen<Plan?> Plans =
        from kind in Gen.Enum<PieceKind>()
        from diameter in Gen.OneOf(Gen.Double[8, 60], Gen.Double[60, 500], Gen.Double[500, 3000])
        from slender in Gen.Double[0.1, 4]
        from rings in Gen.Int[1, 70]
        from segments in Gen.OneOf(Gen.Int[3, 24], Gen.Int[24, 360])
        from woods in Gen.Int[1, 9]
        from inch in Gen.Bool
        from longNames in Gen.Bool
        select Of(kind, diameter, slender * diameter, rings, segments, woods, inch ? LengthUnit.Inch : LengthUnit.Millimetre, longNames);

    /// <summary>Straight rings of no shape; each a little wider than the one below.</summary>
    public static Plan Stack(int rings, double diameter, double height, LengthUnit unit, string name = "Ring") => Planner.Plan(
        new() { Name = "Stack", Units = unit, Rings = [.. Enumerable.Range(0, rings).Select(i => Straight($"{name} {i + 1}", diameter * (1 + (0.0037 * i)), height * (1 + (0.0113 * i))))] },
        Shop.Starting with { Boards = new() { Length = AnyPlan.Mm(9000) } });

    public static Plan? Of(PieceKind kind, double diameter, double height, int rings, int segments, int woods, LengthUnit unit, bool longNames)
    {
        try
        {
            Shape shape = StartingShapes.Of(kind, AnyPlan.Mm(Math.Round(diameter, 2)), AnyPlan.Mm(Math.Clamp(height, 8, 3000)));
            StackSuggestion stack = StackFinder.Find(new() { Shape = shape, Heights = [height / rings], Segments = segments, Woods = [.. Woods.Take(Math.Min(woods, segments))] }, Shop.Starting);
            ImmutableArray<Ring> named = [.. stack.Rings.Select((r, i) => longNames ? r with { Name = $"{new string('W', 50)} {i}" } : r)];
            return Planner.Plan(new() { Name = longNames ? new('M', 120) : "Piece", Units = unit, Kind = kind, Shape = shape, Rings = named }, Shop.Starting);
        }
        catch (BadInputException)
        {
            return null;
        }
    }

    private static SegmentRing Straight(string name, double diameter, double height) => new()
    {
        Name = name,
        Segments = 12,
        Diameter = AnyPlan.Mm(diameter),
        InnerDiameter = AnyPlan.Mm(0.8137 * diameter),
        Thickness = AnyPlan.Mm(height),
        Woods = ["maple", "walnut"],
    };
}
