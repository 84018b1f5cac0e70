using Ringwright.Core.Boards;

namespace Ringwright.Stock.Boards;

/// <summary>
/// A sensible layout at once: ring after ring, the largest first, from the smallest board that gives all of it, and only where there is
/// none from several. Where the search starts, and what is left when it is stopped.
/// </summary>
internal sealed class RackGreedy(RackSpace space)
{
    public RackLayout Lay()
    {
        var layout = new RackLayout(space);
        int[] demands = [.. Enumerable.Range(0, space.Classes.Length).SelectMany(c => space.Classes[c].Demands)];
        foreach (var ring in demands.GroupBy(d => space.Demand(d).Ring).OrderByDescending(g => g.Sum(Face)).ThenBy(g => g.Min()))
        {
            int[] own = [.. ring.OrderByDescending(d => space.Demand(d).Width)];
            layout = OneFamily(layout, own) ?? Several(layout, own);
        }

        return layout;
    }

    private double Face(int d) => space.Demand(d).Width * space.Demand(d).LengthFor(space.Demand(d).ToSaw);

    private RackLayout? OneFamily(RackLayout layout, int[] demands)
    {
        foreach (string family in space.Stretches.GroupBy(s => s.Family).OrderBy(g => g.Sum(s => s.Weight * s.Length * s.Across)).Select(g => g.Key))
        {
            RackLayout copy = layout.Copy();
            if (demands.All(d => Place(copy, d, space.Demand(d).ToSaw, s => s.Family == family) == 0)) return copy;
        }

        return null;
    }

    private RackLayout Several(RackLayout layout, int[] demands)
    {
        // What is needed of all comes before spares of any.
        Dictionary<int, int> left = demands.ToDictionary(d => d, d => Place(layout, d, space.Demand(d).Needed, _ => true));
        foreach (int d in demands)
            if (left[d] == 0) Place(layout, d, space.Demand(d).ToSaw - space.Demand(d).Needed, _ => true);
        return layout;
    }

    // How many could not be placed.
    private int Place(RackLayout layout, int d, int count, Func<Stretch, bool> allowed)
    {
        StripDemand demand = space.Demand(d);
        int of = Array.FindIndex(space.Classes, c => c.Demands.Contains(d));
        int[] stretches = [.. Enumerable.Range(0, space.Stretches.Length).Where(s => allowed(space.Stretches[s]) && space.StripsAcross(space.Stretches[s], space.Classes[of]) > 0)
            .OrderBy(s => space.Stretches[s].Weight * space.Stretches[s].Length * space.Stretches[s].Across)];
        foreach (int s in stretches)
            foreach (LaidStrip strip in layout.Strips[s].Where(t => t.Class == of))
                count -= Fill(layout, s, strip, d, demand, count);
        while (count > 0)
        {
            // The shortest stretch that takes all that is left, or else the longest.
            int[] open = [.. stretches.Where(s => layout.FreeAcross(s) + 1e-9 >= space.Classes[of].Width + space.Rules.Kerf && demand.CountIn(space.Room(space.Stretches[s])) > 0)];
            if (open.Length == 0) break;
            int best = open.Where(s => demand.CountIn(space.Room(space.Stretches[s])) >= count).OrderBy(s => space.Stretches[s].Weight * space.Stretches[s].Length).FirstOrDefault(-1);
            if (best < 0) best = open.OrderByDescending(s => space.Stretches[s].Length).First();
            var strip = new LaidStrip(of);
            layout.Strips[best].Add(strip);
            count -= Fill(layout, best, strip, d, demand, count);
        }

        return Math.Max(0, count);
    }

    private int Fill(RackLayout layout, int s, LaidStrip strip, int d, StripDemand demand, int count)
    {
        double room = space.Room(space.Stretches[s]) - layout.Used(strip);
        int had = strip.Pieces.GetValueOrDefault(d);
        int more = Math.Min(count, had > 0 ? (int)Math.Floor((room + 1e-9) / demand.Pitch) : demand.CountIn(room));
        if (more <= 0) return 0;
        strip.Pieces[d] = had + more;
        return more;
    }
}
