using System.Globalization;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Patterns.Combinators;

/// <summary>A pattern turned counter-clockwise, each ring by the same number of its own segments.</summary>
/// <param name="Inner">The pattern.</param>
/// <param name="Segments">Segments; negative turns clockwise.</param>
public sealed record Rotated(Pattern Inner, int Segments) : PatternOf(Inner)
{
    /// <inheritdoc/>
    public override string Describe() => Also($"turned {PatternWords.Count(Math.Abs((double)Segments), "segment")} {(Segments < 0 ? "clockwise" : "counter-clockwise")}");

    internal override string WoodAt(Cell cell) => Inner.WoodAt(cell.At(cell.Segment - Segments));
}

/// <summary>A pattern turned counter-clockwise by an angle; each segment asks at its middle.</summary>
/// <param name="Inner">The pattern.</param>
/// <param name="Degrees">Angle in degrees; negative turns clockwise.</param>
public sealed record Turned(Pattern Inner, double Degrees) : PatternOf(Inner)
{
    /// <inheritdoc/>
    public override string Describe() => Also(string.Create(CultureInfo.InvariantCulture, $"turned {Math.Abs(Degrees):0.###}° {(Degrees < 0 ? "clockwise" : "counter-clockwise")}"));

    internal override string WoodAt(Cell cell) => Inner.WoodAt(cell.AtTurn(cell.Turn - (Degrees / 360)));

    internal override void Check(Lattice lattice)
    {
        base.Check(lattice);
        Require.Between("turned pattern", Degrees, -3600, 3600, "°");
    }
}

/// <summary>A pattern whose every ring is turned further than the one below.</summary>
/// <param name="Inner">The pattern.</param>
/// <param name="SegmentsPerRing">How much further, in segments, counter-clockwise; rounded to whole segments ring by ring.</param>
public sealed record Shifted(Pattern Inner, double SegmentsPerRing) : PatternOf(Inner)
{
    /// <inheritdoc/>
    public override string Describe() => Also($"each ring {PatternWords.Count(Math.Abs(SegmentsPerRing), "segment")} further {(SegmentsPerRing < 0 ? "clockwise" : "counter-clockwise")} than the one below");

    internal override string WoodAt(Cell cell) => Inner.WoodAt(cell.At(cell.Segment - Whole.Nearest(SegmentsPerRing * cell.Row)));

    internal override void Check(Lattice lattice)
    {
        base.Check(lattice);
        Require.Between("shifted pattern", SegmentsPerRing, -360, 360, "segments per ring");
    }
}

/// <summary>A pattern moved up; what it holds below its own bottom comes into view.</summary>
/// <param name="Inner">The pattern.</param>
/// <param name="Rings">Rings; negative moves it down.</param>
public sealed record Raised(Pattern Inner, int Rings) : PatternOf(Inner)
{
    /// <inheritdoc/>
    public override string Describe() => Also($"moved {PatternWords.Count(Math.Abs((double)Rings), "ring")} {(Rings < 0 ? "down" : "up")}");

    internal override string WoodAt(Cell cell) => Inner.WoodAt(cell.AtRow(cell.Row - Rings));
}
