namespace Ringwright.Core.Patterns.Combinators;

/// <summary>A pattern with a band of another one laid over some rings. The band's own bottom row lies on its first ring.</summary>
/// <param name="Inner">The pattern below and above.</param>
/// <param name="Band">The pattern of the band.</param>
/// <param name="FirstRing">The band's lowest ring, counted from 1 at the bottom.</param>
/// <param name="LastRing">Its highest ring.</param>
public sealed record Banded(Pattern Inner, Pattern Band, int FirstRing, int LastRing) : PatternOf(Inner)
{
    private string Rings => FirstRing == LastRing ? $"ring {FirstRing}" : $"rings {FirstRing} to {LastRing}";

    /// <inheritdoc/>
    public override string Describe() => $"{Inner.Describe().TrimEnd('.')}; on {Rings}: {Band.Describe()}";

    /// <inheritdoc/>
    public override IEnumerable<string> Doubts(Lattice lattice) => Inner.Doubts(lattice).Concat(Band.Doubts(lattice.Part(FirstRing, LastRing))).Distinct();

    internal override string WoodAt(Cell cell)
    {
        bool inside = cell.Row >= FirstRing - 1 && cell.Row < LastRing;
        return inside ? Band.WoodAt(cell.InBand(FirstRing - 1, LastRing - FirstRing + 1)) : Inner.WoodAt(cell);
    }

    internal override void Check(Lattice lattice)
    {
        if (FirstRing < 1 || LastRing < FirstRing || LastRing > lattice.Rings.Length)
            throw new BadInputException("band", $"rings {FirstRing} to {LastRing} cannot be found among {lattice.Rings.Length}", $"count from the bottom, from 1 to {lattice.Rings.Length}, the lower one first");
        base.Check(lattice);
        Band.Check(lattice.Part(FirstRing, LastRing));
    }
}
