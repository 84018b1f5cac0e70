using System.Collections.Immutable;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Profiles;

/// <summary>Places the levels of a ring's section.</summary>
internal sealed class SectionCutter
{
    /// <summary>Levels closer than this, mm, are one.</summary>
    private const double Same = 1e-9;

    private readonly WallLine _outer;
    private readonly WallLine _inner;
    private readonly double[] _corners;

    public SectionCutter(WallLine outer, WallLine inner)
    {
        (_outer, _inner) = (outer, inner);
        Corners = [.. outer.Corners.Concat(inner.Corners).Distinct().Order()];
        _corners = [.. Corners];
    }

    /// <summary>The corners of both walls, rising.</summary>
    public ImmutableArray<double> Corners { get; }

    /// <summary>Even slices and the corners between.</summary>
    public WallSection Even(double z0, double z1, int slices)
    {
        var levels = ImmutableArray.CreateBuilder<WallLevel>(slices + 1);
        levels.Add(Level(z0, Side.Above));
        int corner = WallLine.FirstAbove(_corners, z0 + Same);
        for (int i = 1; i <= slices; i++)
        {
            double z = i == slices ? z1 : z0 + ((z1 - z0) * i / slices);
            while (corner < _corners.Length && _corners[corner] < z - Same) AddCorner(ref corner, levels);
            bool taken = corner < _corners.Length && _corners[corner] <= z + Same;
            if (i == slices) levels.Add(Level(z1, Side.Below));
            else if (!taken) levels.Add(Level(z, Side.Below));
        }

        return new(levels.DrainToImmutable());
    }

    /// <summary>As few levels as halving gives that keep the chords within the tolerance.</summary>
    public WallSection Within(double z0, double z1, double tolerance)
    {
        var levels = ImmutableArray.CreateBuilder<WallLevel>();
        levels.Add(Level(z0, Side.Above));
        int corner = WallLine.FirstAbove(_corners, z0 + Same);
        double from = z0;
        for (; corner < _corners.Length && _corners[corner] < z1 - Same; from = levels[^1].Z)
        {
            Refine(Rim.At(this, from, Side.Above), Rim.At(this, _corners[corner], Side.Below), tolerance, levels);
            AddCorner(ref corner, levels);
        }

        Refine(Rim.At(this, from, Side.Above), Rim.At(this, z1, Side.Below), tolerance, levels);
        levels.Add(Level(z1, Side.Below));
        return new(levels.DrainToImmutable());
    }

    // Corners a rounding apart are one corner, from the wood below the first to the wood above the last.
    private void AddCorner(ref int corner, ImmutableArray<WallLevel>.Builder levels)
    {
        double z = _corners[corner];
        WallLevel below = Level(z, Side.Below);
        while (corner + 1 < _corners.Length && _corners[corner + 1] <= z + Same) corner++;
        WallLevel above = Level(_corners[corner++], Side.Above) with { Z = z };
        levels.Add(below);
        if (Math.Abs(below.Outer - above.Outer) > Same || Math.Abs(below.Inner - above.Inner) > Same) levels.Add(above);
    }

    private WallLevel Level(double z, Side side) => new(z, _outer.Radius(z, side), _inner.Radius(z, side));

    private void Refine(in Rim low, in Rim high, double tolerance, ImmutableArray<WallLevel>.Builder levels)
    {
        bool within = _outer.Sag(low.Outer, high.Outer) <= tolerance && _inner.Sag(low.Inner, high.Inner) <= tolerance;
        if (within || high.Z - low.Z <= 2 * Same) return;
        Rim middle = Rim.At(this, (low.Z + high.Z) / 2, Side.Below);
        Refine(low, middle, tolerance, levels);
        levels.Add(new(middle.Z, middle.Outer.Radius, middle.Inner.Radius));
        Refine(middle, high, tolerance, levels);
    }

    private readonly record struct Rim(double Z, ArcPoint Outer, ArcPoint Inner)
    {
        public static Rim At(SectionCutter cutter, double z, Side side) => new(z, cutter._outer.At(z, side), cutter._inner.At(z, side));
    }
}
