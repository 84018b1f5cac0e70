namespace Ringwright.Core.Patterns.Combinators;

/// <summary>A pattern made from another one.</summary>
/// <param name="Inner">The other one.</param>
public abstract record PatternOf(Pattern Inner) : Pattern
{
    /// <inheritdoc/>
    public override IEnumerable<string> Doubts(Lattice lattice) => Inner.Doubts(lattice);

    internal override void Check(Lattice lattice) => Inner.Check(lattice);

    /// <summary>The inner pattern's sentence with an addition.</summary>
    internal string Also(string what) => $"{Inner.Describe().TrimEnd('.')}; {what}.";
}
