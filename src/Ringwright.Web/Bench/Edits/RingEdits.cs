using System.Globalization;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Web.Bench.Edits;

/// <summary>Changes to the stack of rings. Each gives the work as it would be; whether it can be is for the planner to say.</summary>
public static class RingEdits
{
    /// <summary>With a ring like the one at <paramref name="index"/> above it.</summary>
    public static Work AddAbove(Work work, int index)
    {
        ArgumentNullException.ThrowIfNull(work);
        Ring copy = work.Piece.Rings[index] with { Name = FreeName(work.Piece) };
        return work.WithRings(work.Piece.Rings.Insert(index + 1, copy));
    }

    /// <summary>Without these rings.</summary>
    /// <exception cref="BadInputException">None would be left.</exception>
    public static Work Remove(Work work, IReadOnlyCollection<int> indices)
    {
        ArgumentNullException.ThrowIfNull(work);
        ImmutableArray<Ring> left = [.. work.Piece.Rings.Where((_, i) => !indices.Contains(i))];
        return left.IsEmpty ? throw new BadInputException("rings", "none would be left", "a piece has at least one ring") : work.WithRings(left);
    }

    /// <summary>With the ring at <paramref name="index"/> one place up (1) or down (−1); the same at the end of the stack.</summary>
    public static Work Move(Work work, int index, int by)
    {
        ArgumentNullException.ThrowIfNull(work);
        int to = index + by;
        if (to < 0 || to >= work.Piece.Rings.Length) return work;
        Ring ring = work.Piece.Rings[index];
        return work.WithRings(work.Piece.Rings.RemoveAt(index).Insert(to, ring));
    }

    /// <summary>With the ring at <paramref name="index"/> as two of half its height.</summary>
    public static Work Split(Work work, int index)
    {
        ArgumentNullException.ThrowIfNull(work);
        Ring ring = work.Piece.Rings[index];
        var half = Length.FromMillimetres(Math.Round(ring.Thickness.Millimetres / 2, 4));
        var rest = Length.FromMillimetres(ring.Thickness.Millimetres - half.Millimetres);
        return work.WithRings(work.Piece.Rings.SetItem(index, ring with { Thickness = half }).Insert(index + 1, ring with { Name = FreeName(work.Piece), Thickness = rest }));
    }

    /// <summary>With neighbouring rings as one: the lowest of them, as high as all.</summary>
    /// <exception cref="BadInputException">They are fewer than two, or others lie between them.</exception>
    public static Work Merge(Work work, ImmutableSortedSet<int> indices)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(indices);
        if (indices.Count < 2 || indices.Max - indices.Min != indices.Count - 1)
            throw new BadInputException("rings", "they are not neighbours", "choose two or more rings that lie on each other");
        Ring low = work.Piece.Rings[indices.Min] with { Thickness = Length.FromMillimetres(indices.Sum(i => work.Piece.Rings[i].Thickness.Millimetres)) };
        return work.WithRings(work.Piece.Rings.RemoveRange(indices.Min, indices.Count).Insert(indices.Min, low));
    }

    /// <summary>With woods added to the list of a ring of equal segments, each a copy of a choice.</summary>
    public static Work WithWoods(Work work, IEnumerable<int> indices, Func<ImmutableArray<string>, ImmutableArray<string>> change)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(indices);
        ArgumentNullException.ThrowIfNull(change);
        foreach (int i in indices)
            if (work.Piece.Rings[i] is SegmentedRing ring) work = work.WithRing(i, ring with { Woods = change(ring.Woods) });
        return work;
    }

    private static string FreeName(Piece piece)
    {
        HashSet<string> taken = new(piece.Rings.Select(r => r.Name), StringComparer.OrdinalIgnoreCase);
        return Enumerable.Range(piece.Rings.Length + 1, PieceCheck.MostRings + 1).Select(n => string.Create(CultureInfo.InvariantCulture, $"Ring {n}")).First(n => !taken.Contains(n));
    }
}
