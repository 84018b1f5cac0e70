namespace Ringwright.Stock.Boards;

/// <summary>One way to cut one stick: how many of each kind.</summary>
internal sealed class Pattern(int stock, int[] counts) : IEquatable<Pattern>
{
    public int Stock { get; } = stock;

    public int[] Counts { get; } = counts;

    public bool Equals(Pattern? other) => other is not null && other.Stock == Stock && other.Counts.AsSpan().SequenceEqual(Counts);

    public override bool Equals(object? obj) => Equals(obj as Pattern);

    public override int GetHashCode()
    {
        var hash = new HashCode();
        hash.Add(Stock);
        foreach (int count in Counts) hash.Add(count);
        return hash.ToHashCode();
    }
}

/// <summary>Ways to cut sticks, each once, in the order they were found.</summary>
internal sealed class PatternPool
{
    private readonly HashSet<Pattern> _known = [];

    public List<Pattern> All { get; } = [];

    public bool Add(Pattern pattern)
    {
        if (!_known.Add(pattern)) return false;
        All.Add(pattern);
        return true;
    }
}
