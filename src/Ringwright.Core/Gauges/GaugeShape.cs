using Ringwright.Core.Geometry;

namespace Ringwright.Core.Gauges;

/// <summary>A flat gauge: a convex plate, two of whose edges stand at an exact angle. Lengths in mm.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Engraving">What is written on it.</param>
/// <param name="Outline">The plate from above, counter-clockwise.</param>
/// <param name="Thickness">Its thickness.</param>
/// <param name="Angle">The angle between its two faces, radians.</param>
/// <param name="FirstFace">Which edge is the first face: it starts at the corner of this number.</param>
/// <param name="SecondFace">Which edge is the second.</param>
/// <param name="Panel">Where the writing goes: a rectangle inside the outline, lower left corner, width and height.</param>
public sealed record GaugeShape(
    string Name, string Engraving, ConvexPolygon Outline, double Thickness, double Angle, int FirstFace, int SecondFace, (Vector2D Corner, double Width, double Height) Panel)
{
    /// <summary>Least and greatest size of a printer's bed that makes sense, mm.</summary>
    public const double SmallestBed = 60, LargestBed = 1000;

    private const double WedgeThickness = 6, BlockThickness = 12;
    private const double NarrowEnd = 14; // width of the wedge gauge at its narrow end
    private const double Back = 25;      // height of the block where it is lowest
    private const double Rim = 3;        // from the writing to the nearest edge

    /// <summary>
    /// A gauge of the wedge's own angle: an isosceles trapezoid whose long edges are the two faces. Laid between the fences of a sled it
    /// touches both along its whole length when their sum is right, whatever each is alone.
    /// </summary>
    /// <param name="angle">The wedge angle, radians, below π.</param>
    /// <param name="name">What it is for.</param>
    /// <param name="engraving">What is written on it.</param>
    /// <param name="bed">The greatest length and width, mm.</param>
    /// <exception cref="BadInputException">An angle or bed that cannot be.</exception>
    public static GaugeShape Wedge(double angle, string name, string engraving, double bed = 180)
    {
        Check(angle, Math.PI, bed);
        double half = angle / 2, slope = Math.Tan(half);
        double length = Math.Min(bed, (bed - NarrowEnd) / 2 / slope), wide = (NarrowEnd / 2) + (length * slope), narrow = NarrowEnd / 2;
        ConvexPolygon outline = new([new(0, -narrow), new(length, -wide), new(length, wide), new(0, narrow)]);
        // The writing stands along the axis, as tall as the narrow end allows.
        double tall = NarrowEnd - (2 * Rim);
        return new(name, engraving, outline, WedgeThickness, angle, 0, 2, (new(Rim, -tall / 2), length - (2 * Rim), tall));
    }

    /// <summary>
    /// A block to set one fence: a plate with a straight edge, ends square to it, and a face that stands at the fence's angle to the
    /// edge. Its end laid against the blade, the face shows the fence's line.
    /// </summary>
    /// <param name="angle">The fence's angle from square, radians, below a quarter turn.</param>
    /// <param name="name">What it is for.</param>
    /// <param name="engraving">What is written on it.</param>
    /// <param name="reach">The wanted length, mm: the rule's distance at the sled.</param>
    /// <param name="bed">The greatest length and width, mm.</param>
    /// <exception cref="BadInputException">An angle or bed that cannot be.</exception>
    public static GaugeShape Block(double angle, string name, string engraving, double reach, double bed = 180)
    {
        Check(angle, Math.PI / 2, bed);
        double slope = Math.Tan(angle), length = Math.Min(Math.Min(Math.Max(reach, SmallestBed), bed), (bed - Back) / slope);
        ConvexPolygon outline = new([new(0, 0), new(length, 0), new(length, Back + (length * slope)), new(0, Back)]);
        return new(name, engraving, outline, BlockThickness, angle, 0, 2, (new(Rim, Rim), length - (2 * Rim), Back - (2 * Rim)));
    }

    /// <summary>The angle between the two faces as their corners have it, radians.</summary>
    /// <param name="round">What is done to each coordinate first; nothing when absent.</param>
    public double Measured(Func<double, double>? round = null)
    {
        Vector2D Along(int edge)
        {
            Vector2D from = Outline.Vertices[edge], to = Outline.Vertices[(edge + 1) % Outline.Vertices.Length];
            return round is null ? to - from : new(round(to.X) - round(from.X), round(to.Y) - round(from.Y));
        }

        Vector2D first = Along(FirstFace), second = -Along(SecondFace);
        return Math.Abs(Math.Atan2(first.Cross(second), first.Dot(second)));
    }

    /// <summary>The angle that a file of single precision holds, such as STL, radians.</summary>
    public double InSinglePrecision => Measured(value => (float)value);

    private static void Check(double angle, double below, double bed)
    {
        if (!(angle > 1e-3 && angle < below - 1e-3))
            throw new BadInputException("gauge", FormattableString.Invariant($"no plate can have an angle of {double.RadiansToDegrees(angle):0.###}°"), FormattableString.Invariant($"an angle between 0.1° and {double.RadiansToDegrees(below) - 0.1:0.#}° is needed"));
        if (!(bed is >= SmallestBed and <= LargestBed))
            throw new BadInputException("printer's bed", FormattableString.Invariant($"{bed:0.##} mm cannot be"), $"{SmallestBed} mm to {LargestBed} mm can");
    }
}
