using System.Collections.Immutable;
using Ringwright.Core.Geometry;
using Ringwright.Core.Rings;

namespace Ringwright.Core.Sawing;

/// <summary>
/// Where ideal wedges lie in a ripped strip, sawn one after another with the mitre to alternate sides: end trim, first
/// angled offcut, wedges a kerf apart, and a rest long enough to hold. Lengths in mm.
/// </summary>
/// <param name="Wedge">The wedge as sawn (before sanding).</param>
/// <param name="Kerf">Width of the cut, normal to the blade.</param>
/// <param name="EndTrim">Wood lost to square the end.</param>
/// <param name="HoldingLength">Shortest edge of the rest that is never sawn.</param>
public readonly record struct StripLayout(WedgeGeometry Wedge, double Kerf, double EndTrim, double HoldingLength)
{
    /// <summary>Strip left out behind each wedge so that every wedge starts at the same place of a pattern; 0 for plain wood.</summary>
    public double Slip { get; init; }

    /// <summary>Width of the kerf along the strip, k / cos a.</summary>
    public double KerfAlong => Kerf / Math.Cos(Wedge.HalfAngle);

    /// <summary>Strip used for each wedge, (Lo + Li)/2 + k / cos a and what is left out behind it.</summary>
    public double Pitch => ((Wedge.RimEdge + Wedge.Tip) / 2) + KerfAlong + Slip;

    /// <summary>Share of the strip turned to sawdust, kerf over pitch.</summary>
    public double DustShare => KerfAlong / Pitch;

    /// <summary>Strip that every board loses whatever it yields: trim, first angled cut and last slant (w tan a), first kerf, rest to hold.</summary>
    public double Overhead => EndTrim + (Wedge.Depth * Math.Tan(Wedge.HalfAngle)) + KerfAlong + HoldingLength;

    /// <summary>Shortest strip that yields <paramref name="wedges"/> (0 for none).</summary>
    public double LengthFor(int wedges) => wedges == 0 ? 0 : Overhead + (wedges * Pitch);

    /// <summary>Wedges that a strip of <paramref name="length"/> yields. A hair (1e-9 mm) is forgiven, so that LengthFor's answer is enough.</summary>
    public int WedgesIn(double length) => Math.Max(0, (int)Math.Floor((length - Overhead + 1e-9) / Pitch));

    /// <summary>Where along the strip the middle of the wedge sawn as number <paramref name="cut"/> (0-based) lies.</summary>
    public double MiddleOf(int cut) => EndTrim + (Wedge.Depth * Math.Tan(Wedge.HalfAngle) / 2) + KerfAlong + (cut * Pitch) + ((Wedge.RimEdge + Wedge.Tip) / 4);

    /// <summary>
    /// The pieces in plan when <paramref name="wedges"/> are sawn from a strip of <paramref name="length"/>: x along the strip from
    /// its rough end, y across from 0 to the width. Pieces, kerfs, first offcut and rest fill the strip.
    /// </summary>
    /// <exception cref="BadInputException">The strip is too short for that many.</exception>
    public StripPlan Saw(double length, int wedges)
    {
        if (wedges > WedgesIn(length))
            throw new BadInputException("strip", $"{wedges} wedges do not fit in {length:0.##} mm", $"it yields {WedgesIn(length)}");
        double width = Wedge.Depth;
        var strip = ConvexPolygon.Rectangle(0, 0, length, width);
        var trim = ConvexPolygon.Rectangle(0, 0, EndTrim, width);
        double cut = EndTrim + (width / 2 * Math.Tan(Wedge.HalfAngle));
        ConvexPolygon offcut = strip.Clip(new(new(-1, 0), -EndTrim)).Clip(Before(cut, 0));
        var pieces = ImmutableArray.CreateBuilder<ConvexPolygon>(wedges);
        var kerfs = ImmutableArray.CreateBuilder<ConvexPolygon>(wedges + 1);
        for (int i = 0; i <= wedges; i++)
        {
            double after = cut + KerfAlong + (i > 0 ? Slip : 0);
            kerfs.Add(strip.Clip(After(cut, i)).Clip(Before(after, i)));
            if (i == wedges) return new(trim, offcut, pieces.MoveToImmutable(), kerfs.MoveToImmutable(), strip.Clip(After(after, i)));
            cut = after + ((Wedge.RimEdge + Wedge.Tip) / 2);
            pieces.Add(strip.Clip(After(after, i)).Clip(Before(cut, i + 1)));
        }

        throw new InvalidOperationException("The loop above always returns.");
    }

    // The side towards the rough end of cut number i, whose middle is at x: even cuts lean towards +x with y, odd ones back.
    private HalfPlane Before(double x, int cut)
    {
        (double sin, double cos) = Math.SinCos(cut % 2 == 0 ? Wedge.HalfAngle : -Wedge.HalfAngle);
        var normal = new Vector2D(cos, -sin);
        return new(normal, normal.Dot(new(x, Wedge.Depth / 2)));
    }

    private HalfPlane After(double x, int cut) => Before(x, cut).Complement;
}

/// <summary>A strip taken apart in plan; areas add up to the strip. Lengths in mm.</summary>
/// <param name="Trim">Wood lost to square the end.</param>
/// <param name="Offcut">What the first angled cut drops.</param>
/// <param name="Wedges">The wedges in cut order, pointing to alternate edges.</param>
/// <param name="Kerfs">The wood turned to dust, one more than the wedges, with what is left out behind each wedge.</param>
/// <param name="Rest">The rest that stays in the hand or clamp.</param>
public sealed record StripPlan(ConvexPolygon Trim, ConvexPolygon Offcut, ImmutableArray<ConvexPolygon> Wedges, ImmutableArray<ConvexPolygon> Kerfs, ConvexPolygon Rest);
