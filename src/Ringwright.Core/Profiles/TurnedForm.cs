using System.Collections.Immutable;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Profiles;

/// <summary>How far the wood reaches over a range of heights, mm, each end exact.</summary>
/// <param name="MaxOuter">Greatest outer radius.</param>
/// <param name="MinInner">Least inner radius; 0 where it is solid anywhere.</param>
/// <param name="MinOuter">Least outer radius.</param>
/// <param name="MaxInner">Greatest inner radius.</param>
public readonly record struct WallExtents(double MaxOuter, double MinInner, double MinOuter, double MaxInner);

/// <summary>
/// The turned piece as a body of revolution between an outer and an inner wall, found once from its shape; every question is then
/// answered without searching the whole curve. The chuck's tenon or recess is not part of it. Immutable; lengths in mm.
/// </summary>
public sealed class TurnedForm
{
    /// <summary>Heights this close to an end, mm, are that end.</summary>
    private const double Rounding = 1e-9;

    private readonly WallLine _outer;
    private readonly WallLine _inner;
    private readonly SectionCutter _cutter;
    private readonly double _recess;

    private TurnedForm(Shape shape)
    {
        OuterCurve = ProfileCurve.Through(shape.Outer);
        _outer = OuterCurve.Line;
        _inner = InnerWall.Of(shape.Inside, OuterCurve);
        _cutter = new(_outer, _inner);
        _recess = shape.Holding is { Kind: HoldingKind.Recess } recess ? recess.Length.Millimetres : 0;
        Moments moments = _outer.Moments(Bottom, Top) - _inner.Moments(Bottom, Top);
        Volume = Math.PI * moments.Square;
        CentroidHeight = moments.Raised / moments.Square;
    }

    /// <summary>The curve it is turned to outside.</summary>
    public ProfileCurve OuterCurve { get; }

    /// <summary>Height of its lowest point above the bottom of the lowest ring.</summary>
    public double Bottom => OuterCurve.Bottom;

    /// <summary>Height of its highest point above the bottom of the lowest ring.</summary>
    public double Top => OuterCurve.Top;

    /// <summary>From its lowest to its highest point.</summary>
    public double Height => Top - Bottom;

    /// <summary>True when nothing is hollow.</summary>
    public bool IsSolid => _inner.IsEmpty;

    /// <summary>Its wood, mm³.</summary>
    public double Volume { get; }

    /// <summary>Height of its centre of volume.</summary>
    public double CentroidHeight { get; }

    /// <summary>Heights where a wall begins, ends, jumps or turns sharply, rising: rings and slices do well to part there.</summary>
    public ImmutableArray<double> Corners => _cutter.Corners;

    internal WallLine InnerLine => _inner;

    /// <summary>The form of a shape.</summary>
    /// <exception cref="BadInputException">What <see cref="ShapeCheck"/> says of the shape.</exception>
    public static TurnedForm Of(Shape shape) => ShapeCheck.Form(shape);

    /// <summary>Outer radius; its bottom counts as seen from above and its top as seen from below.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a height of the form.</exception>
    public double Outer(double z, Side side = Side.Above)
    {
        z = Within(z);
        return _outer.Radius(z, Inward(z, side));
    }

    /// <summary>Inner radius, 0 where it is solid; its bottom counts as seen from above and its top as seen from below.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a height of the form.</exception>
    public double Inner(double z, Side side = Side.Above)
    {
        z = Within(z);
        return _inner.Radius(z, Inward(z, side));
    }

    /// <summary>Exact extents of the wood between two heights; a step or floor at either height counts only as seen from between.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not two rising heights of the form.</exception>
    public WallExtents Extents(double z0, double z1)
    {
        (z0, z1) = Rising(z0, z1);
        (double minOuter, double maxOuter) = _outer.Extents(z0, z1);
        (double minInner, double maxInner) = _inner.Extents(z0, z1);
        return new(maxOuter, minInner, minOuter, maxInner);
    }

    /// <summary>Volume of wood between two heights, mm³.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not two rising heights of the form.</exception>
    public double VolumeBetween(double z0, double z1)
    {
        (z0, z1) = Rising(z0, z1);
        return Math.PI * (_outer.Moments(z0, z1) - _inner.Moments(z0, z1)).Square;
    }

    /// <summary>The section of a ring, in slices of even height and parted at every corner besides.</summary>
    /// <param name="z0">Lower face.</param>
    /// <param name="z1">Upper face.</param>
    /// <param name="slices">Number of even slices, at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not two rising heights of the form, or no slice.</exception>
    public WallSection Section(double z0, double z1, int slices)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(slices, 1);
        (z0, z1) = Rising(z0, z1);
        return _cutter.Even(z0, z1, slices);
    }

    /// <summary>The section of a ring with as many levels as keep both walls within <paramref name="tolerance"/> of their chords.</summary>
    /// <param name="z0">Lower face.</param>
    /// <param name="z1">Upper face.</param>
    /// <param name="tolerance">Greatest distance between wall and chord, mm, square to the chord.</param>
    /// <exception cref="ArgumentOutOfRangeException">Not two rising heights of the form, or a tolerance below 1e-6 mm.</exception>
    public WallSection SectionWithin(double z0, double z1, double tolerance)
    {
        if (!(tolerance >= 1e-6)) throw new ArgumentOutOfRangeException(nameof(tolerance));
        (z0, z1) = Rising(z0, z1);
        return _cutter.Within(z0, z1, tolerance);
    }

    /// <summary>The least wood between outside and inside: wall or floor; null when it is solid.</summary>
    public ThinnestWood? Thinnest() => _inner.IsEmpty ? null : WoodSearch.Thinnest(OuterCurve, _inner, _recess);

    internal static TurnedForm Unchecked(Shape shape) => new(shape);

    private Side Inward(double z, Side side) => z == Bottom ? Side.Above : z == Top ? Side.Below : side;

    // Heights that are sums and multiples may miss the ends by a rounding; anything more is the caller's mistake.
    private double Within(double z) => z >= Bottom - Rounding && z <= Top + Rounding
        ? Math.Clamp(z, Bottom, Top)
        : throw new ArgumentOutOfRangeException(nameof(z), z, $"the form reaches from {Bottom} to {Top} mm");

    private (double From, double To) Rising(double z0, double z1)
    {
        (double from, double to) = (Within(z0), Within(z1));
        return from < to ? (from, to) : throw new ArgumentOutOfRangeException(nameof(z1), (z0, z1), "a range of heights must rise");
    }
}
