namespace Ringwright.Stock.Boards;

/// <summary>
/// Chooses patterns that give exactly what is wanted, by trying: always the kind that the fewest patterns still give comes next. For
/// problems with no length to spare, where every stick must be full and rounding finds nothing.
/// </summary>
internal sealed class CoverSearch(IReadOnlyList<Pattern> patterns, CancellationToken cancel)
{
    private readonly (int Kind, int Count)[][] _given = [.. patterns.Select(p => p.Counts.Select((n, i) => (i, n)).Where(k => k.n > 0).ToArray())];
    private readonly List<Pattern> _chosen = [];
    private long _nodesLeft;

    /// <summary>The patterns, one for each stick; null when there are none, or none were found in <paramref name="nodes"/> steps.</summary>
    public List<Pattern>? Find(int[] wanted, long nodes)
    {
        _nodesLeft = nodes;
        _chosen.Clear();
        return Search([.. wanted], [.. Enumerable.Range(0, patterns.Count)]) ? _chosen : null;
    }

    private bool Search(int[] left, List<int> usable)
    {
        if (left.All(n => n == 0)) return true;
        if (--_nodesLeft <= 0) return false;
        if ((_nodesLeft & 0xFF) == 0) cancel.ThrowIfCancellationRequested();
        int scarce = Scarcest(left, usable);
        int[] having = [.. usable.Where(p => patterns[p].Counts[scarce] > 0)];
        for (int tried = 0; tried < having.Length; tried++)
        {
            int at = having[tried];
            _chosen.Add(patterns[at]);
            foreach ((int kind, int count) in _given[at]) left[kind] -= count;
            // What was tried before in this place is not tried again below it.
            HashSet<int> before = [.. having.Take(tried)];
            if (Search(left, [.. usable.Where(p => !before.Contains(p) && Fits(p, left))])) return true;
            foreach ((int kind, int count) in _given[at]) left[kind] += count;
            _chosen.RemoveAt(_chosen.Count - 1);
        }

        return false;
    }

    private bool Fits(int pattern, int[] left)
    {
        foreach ((int kind, int count) in _given[pattern])
            if (count > left[kind]) return false;
        return true;
    }

    private int Scarcest(int[] left, List<int> usable)
    {
        var having = new int[left.Length];
        foreach (int p in usable)
            foreach ((int kind, _) in _given[p]) having[kind]++;
        int scarce = -1;
        for (int i = 0; i < left.Length; i++)
            if (left[i] > 0 && (scarce < 0 || having[i] < having[scarce])) scarce = i;
        return scarce;
    }
}
