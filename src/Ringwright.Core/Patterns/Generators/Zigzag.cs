using System.Collections.Immutable;
using Ringwright.Core.Sawing;

namespace Ringwright.Core.Patterns.Generators;

/// <summary>Bands that go up and down around the piece, lowest at the first segment.</summary>
/// <param name="Woods">Woods of the bands from the bottom up.</param>
/// <param name="Rise">How far a band rises from valley to peak, a number of rings.</param>
/// <param name="Period">Number of columns from valley to valley.</param>
/// <param name="BandHeight">Height of one band, a number of rings.</param>
/// <param name="Background">The wood below and above the bands, which then come once; absent: the bands repeat upwards.</param>
/// <param name="Columns">Columns around, filled by angle; absent: the largest count of the piece.</param>
public sealed record Zigzag(ImmutableArray<string> Woods, double Rise, double Period, double BandHeight = 1, string? Background = null, int? Columns = null) : Pattern
{
    /// <inheritdoc/>
    public override string Describe()
    {
        string ground = Background is null ? "repeated upwards" : $"on {Background}";
        return $"Zigzag bands of {PatternWords.List(Woods)} {ground}, each {PatternWords.Count(BandHeight, "ring")} high, rising {PatternWords.Count(Rise, "ring")} and falling again every {PatternWords.Count(Period, "segment")}{PatternWords.Columns(Columns)}.";
    }

    /// <inheritdoc/>
    public override IEnumerable<string> Doubts(Lattice lattice) => PatternWords.Doubts(lattice, Columns, Period, "zigzags");

    internal override string WoodAt(Cell cell)
    {
        double along = cell.Position(Columns ?? cell.Columns) / Period;
        double wave = Rise * (1 - Math.Abs((2 * (along - Math.Floor(along))) - 1));
        int band = Whole.Floor((cell.Row - wave) / BandHeight);
        if (Background is not null && (band < 0 || band >= Woods.Length)) return Background;
        return Woods[Whole.Modulo(band, Woods.Length)];
    }

    internal override void Check(Lattice lattice)
    {
        PatternWords.CheckWoods("zigzag", Background is null ? Woods : Woods.Add(Background));
        PatternWords.CheckColumns("zigzag", Columns);
        Require.Between("zigzag, rise", Rise, 0, 1000, "rings");
        Require.Between("zigzag, period", Period, 1, Columns ?? lattice.MostSegments, "segments");
        Require.Between("zigzag, band height", BandHeight, 0.1, 1000, "rings");
    }
}
