using System.Collections.Immutable;

namespace Ringwright.Core.Planning;

/// <summary>Collects the glue-ups of one ring or board. No glue-up has more joints than can be closed at once.</summary>
/// <param name="atOnce">Joints that can be spread and closed within the open time, at least 1.</param>
internal sealed class GlueUpList(int atOnce)
{
    private readonly ImmutableArray<GlueUp>.Builder _all = ImmutableArray.CreateBuilder<GlueUp>();

    public ImmutableArray<GlueUp> All => _all.ToImmutable();

    public int Add(GlueUp glueUp)
    {
        _all.Add(glueUp);
        return _all.Count - 1;
    }

    /// <summary>
    /// Glues neighbouring pieces to one run, in the fewest stages and of those with the fewest parts in the last one: the long parts are
    /// the hard ones to handle. Pairs are rubbed together.
    /// </summary>
    /// <returns>The glue-up that makes the run; none for a single piece.</returns>
    public int? Run(int first, int count, GlueWork work, GlueClamp clamp, int clamps)
    {
        if (count <= 1) return null;
        int[] parts = Even(count, PartsOf(count));
        List<int> after = [], joints = [];
        int at = first;
        foreach (int part in parts)
        {
            if (Run(at, part, work, clamp, clamps) is int made) after.Add(made);
            at += part;
            if (at < first + count) joints.Add(at - 1);
        }

        bool rubbed = count == 2 && clamp == GlueClamp.Band && clamps == 1;
        return Add(new(work, [new(first, count)], [.. joints], [.. after], rubbed ? GlueClamp.Rubbed : clamp, rubbed ? 0 : clamps));
    }

    /// <summary>Of how many parts the last stage joins a run of so many pieces; all of them when that can be done at once.</summary>
    private int PartsOf(int count)
    {
        // A stage multiplies what hangs together by at most one more than its joints.
        long reach = 1;
        while (reach * (atOnce + 1) < count) reach *= atOnce + 1;
        return (int)((count + reach - 1) / reach);
    }

    /// <summary>As <see cref="PartsOf"/> for a ring, whose last stage has as many joints as parts; two cannot be avoided.</summary>
    public int PartsOfRing(int count)
    {
        int most = Math.Max(2, atOnce);
        long reach = 1;
        while (reach * most < count) reach *= atOnce + 1;
        return (int)Math.Max(2, (count + reach - 1) / reach);
    }

    /// <summary>A number of pieces dealt to parts that differ by one at most, the larger ones first.</summary>
    public static int[] Even(int count, int parts) => [.. Enumerable.Range(0, parts).Select(i => (count / parts) + (i < count % parts ? 1 : 0))];
}
