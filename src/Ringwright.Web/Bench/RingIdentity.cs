using System.Globalization;
using Ringwright.Core.Pieces;

namespace Ringwright.Web.Bench;

/// <summary>
/// Which ring is which through renaming, reordering and undo. Each ring has a short mark that nobody sees; what is counted and
/// ticked off on the shop floor hangs on it.
/// </summary>
public static class RingIdentity
{
    /// <summary>Marks for rings that have none yet: their numbers from the bottom up.</summary>
    public static ImmutableArray<string> First(int rings) => [.. Enumerable.Range(1, rings).Select(i => i.ToString(CultureInfo.InvariantCulture))];

    /// <summary>
    /// The marks after a change. A ring of the same name is the same one; of the others, one that changed nothing but its name;
    /// then, where no ring came or went, the one in the same place. The rest are new.
    /// </summary>
    /// <param name="before">The rings before.</param>
    /// <param name="marks">Their marks.</param>
    /// <param name="after">The rings now.</param>
    public static ImmutableArray<string> Follow(ImmutableArray<Ring> before, ImmutableArray<string> marks, ImmutableArray<Ring> after)
    {
        string?[] found = new string?[after.Length];
        bool[] taken = new bool[before.Length];
        Match((was, now) => was.Item.Name == now.Item.Name);
        Match((was, now) => was.Item with { Name = now.Item.Name } == now.Item);
        if (before.Length == after.Length) Match((was, now) => was.Index == now.Index);
        return [.. found.Select(mark => mark ?? Guid.NewGuid().ToString("N")[..8])];

        void Match(Func<(int Index, Ring Item), (int Index, Ring Item), bool> same)
        {
            foreach ((int Index, Ring Item) now in after.Index().Where(a => found[a.Index] is null))
            {
                foreach ((int Index, Ring Item) was in before.Index().Where(b => !taken[b.Index] && same(b, now)).Take(1))
                    (found[now.Index], taken[was.Index]) = (marks[was.Index], true);
            }
        }
    }
}
