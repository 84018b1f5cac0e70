using System.Collections.Immutable;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Fitting;

/// <summary>
/// A wedge as it lies flat on the table for the dry fit: its plan sections at the bottom and at the top,
/// in the wedge's own frame, mm. The rim looks towards +x, the face that meets the next wedge
/// (counter-clockwise in the ring) towards +y. The origin may be anywhere.
/// </summary>
public sealed class FitWedge
{
    /// <summary>Takes the two sections (the same polygon twice for a wedge with upright faces).</summary>
    /// <exception cref="BadInputException">A section has no area or a coordinate is not a number.</exception>
    public FitWedge(ConvexPolygon bottom, ConvexPolygon top)
    {
        Bottom = Checked(bottom, nameof(bottom));
        Top = Checked(top, nameof(top));
        IsUpright = ReferenceEquals(bottom, top) || bottom.Vertices.AsSpan().SequenceEqual(top.Vertices.AsSpan());
    }

    /// <summary>Plan section on the table.</summary>
    public ConvexPolygon Bottom { get; }

    /// <summary>Plan section of the upper face.</summary>
    public ConvexPolygon Top { get; }

    /// <summary>Whether both sections are the same, corner for corner.</summary>
    public bool IsUpright { get; }

    /// <summary>
    /// The symmetric upright wedge that a caliper describes: width at the rim, width at the tip (0 for a point)
    /// and radial depth between them, mm. Its angle is 2 atan((rim - tip) / (2 depth)).
    /// </summary>
    /// <exception cref="BadInputException">A width or the depth cannot belong to a wedge.</exception>
    public static FitWedge FromCaliper(double rimWidth, double tipWidth, double radialDepth)
    {
        Require(rimWidth > 0 && double.IsFinite(rimWidth), "rim width", rimWidth, "it must be more than 0 mm");
        Require(tipWidth >= 0 && tipWidth < rimWidth, "tip width", tipWidth, "it must be at least 0 mm and less than at the rim");
        Require(radialDepth > 0 && double.IsFinite(radialDepth), "radial depth", radialDepth, "it must be more than 0 mm");
        ImmutableArray<Vector2D> rim = [new(radialDepth, -rimWidth / 2), new(radialDepth, rimWidth / 2)];
        ConvexPolygon plan = tipWidth == 0
            ? new([Vector2D.Zero, .. rim])
            : new([new(0, -tipWidth / 2), .. rim, new(0, tipWidth / 2)]);
        return new(plan, plan);
    }

    private static ConvexPolygon Checked(ConvexPolygon section, string name)
    {
        foreach (Vector2D p in section.Vertices)
            Require(double.IsFinite(p.X) && double.IsFinite(p.Y), $"{name} section", p.X + p.Y, "every coordinate must be a number");
        Require(section.Area > 0, $"{name} section", section.Area, "it must have an area, corners counter-clockwise");
        return section;
    }

    private static void Require(bool holds, string what, double value, string right)
    {
        if (!holds) throw new BadInputException($"Wedge, {what}", FormattableString.Invariant($"{value:0.###} cannot be used"), right);
    }
}
