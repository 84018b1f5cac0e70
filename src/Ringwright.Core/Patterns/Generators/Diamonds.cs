using Ringwright.Core.Sawing;

namespace Ringwright.Core.Patterns.Generators;

/// <summary>Diamonds side by side and above each other, the first with its left corner at the first segment and its foot on the lowest ring.</summary>
/// <param name="Wide">Width of a diamond, columns.</param>
/// <param name="High">Height of a diamond, rings.</param>
/// <param name="Fill">Its wood inside.</param>
/// <param name="Background">The wood between diamonds.</param>
/// <param name="Border">The wood of its border; absent: no border.</param>
/// <param name="Thickness">How thick the border is, a number of columns and rings.</param>
/// <param name="Columns">Columns around, filled by angle; absent: the largest count of the piece.</param>
public sealed record Diamonds(int Wide, int High, string Fill, string Background, string? Border = null, double Thickness = 1, int? Columns = null) : Pattern
{
    /// <inheritdoc/>
    public override string Describe()
    {
        string border = Border is null ? "" : $" bordered with {Border}";
        return $"Diamonds of {Fill}{border} on {Background}, {PatternWords.Count(Wide, "segment")} wide and {PatternWords.Count(High, "ring")} high{PatternWords.Columns(Columns)}.";
    }

    /// <inheritdoc/>
    public override IEnumerable<string> Doubts(Lattice lattice) => PatternWords.Doubts(lattice, Columns, Wide, "diamonds");

    internal override string WoodAt(Cell cell)
    {
        double across = OffCentre(cell.Position(Columns ?? cell.Columns), Wide), up = OffCentre(cell.Row, High);
        if (!Within(across, up, 0)) return Background;
        return Border is null || Within(across, up, Thickness) ? Fill : Border;
    }

    internal override void Check(Lattice lattice)
    {
        PatternWords.CheckWoods("diamonds", [Fill, Background, Border ?? Fill]);
        PatternWords.CheckColumns("diamonds", Columns);
        Require.Count("diamonds, width", Wide, 1, Columns ?? lattice.MostSegments);
        Require.Count("diamonds, height", High, 1, 2 * lattice.Rings.Length);
        Require.Between("diamonds, border", Thickness, 0, Math.Max(Wide, High), "segments");
    }

    // The diamond's edge is where the shares of half width and half height add up to one.
    private bool Within(double across, double up, double inset)
    {
        double halfWide = (Wide / 2.0) - inset, halfHigh = (High / 2.0) - inset;
        return halfWide > 0 && halfHigh > 0 && Whole.AtMost((across / halfWide) + (up / halfHigh), 1);
    }

    // Cells of a period have their middles at 0, 1 … period − 1.
    private static double OffCentre(double position, int period) =>
        Math.Abs(position - (period * Whole.Floor((position + 0.5) / period)) - ((period - 1) / 2.0));
}
