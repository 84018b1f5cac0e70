namespace Ringwright.Core.Planning;

/// <summary>
/// Finds the heights of a stack's rings from the bottom up: least wood plus a price for every ring, over all sequences of
/// the heights at hand that reach the top. Exact: the best way to a height does not depend on what follows.
/// </summary>
/// <param name="heights">Ring heights at hand, mm.</param>
/// <param name="top">Height to reach, mm.</param>
/// <param name="wood">Wood of a ring from one height to another, mm³.</param>
internal sealed class HeightSearch(IReadOnlyList<double> heights, double top, Func<double, double, double> wood)
{
    // Heights this close are the same place in the stack, mm.
    private const double Grid = 1e-4;

    private const int MostPlaces = 200_000;

    // What was found about rings from one place is used again for the next price.
    private readonly Dictionary<(long From, int Height), double> _known = [];

    private readonly record struct Place(double Cost, double Wood, int Rings, long From, int Height);

    /// <summary>The best stack when a ring costs as much as <paramref name="ringPrice"/> mm³ of wood.</summary>
    /// <exception cref="BadInputException">There are more ways than can be weighed.</exception>
    public (double[] Heights, double Wood) Find(double ringPrice)
    {
        var places = new Dictionary<long, Place> { [0] = default };
        var queue = new PriorityQueue<long, long>([(0L, 0L)]);
        long goal = (long)Math.Ceiling((top - ShapeFindings.HairOfHeight) / Grid);
        long? best = null;
        while (queue.TryDequeue(out long at, out _))
        {
            if (at >= goal)
            {
                if (best is null || places[at].Cost < places[best.Value].Cost) best = at;
                continue;
            }

            Extend(places, queue, at, ringPrice);
        }

        return Trace(places, best!.Value);
    }

    private void Extend(Dictionary<long, Place> places, PriorityQueue<long, long> queue, long at, double ringPrice)
    {
        Place here = places[at];
        for (int h = 0; h < heights.Count; h++)
        {
            long next = at + (long)Math.Round(heights[h] / Grid);
            double ring = Wood(at, h);
            double cost = here.Cost + ring + ringPrice;
            bool seen = places.TryGetValue(next, out Place there);
            if (seen && there.Cost <= cost) continue;
            if (!seen)
            {
                if (places.Count > MostPlaces) throw new BadInputException("heights", "there are too many ways to stack them", "leave some of the heights out, or round them to whole millimetres");
                queue.Enqueue(next, next);
            }

            places[next] = new(cost, here.Wood + ring, here.Rings + 1, at, h);
        }
    }

    private double Wood(long at, int height)
    {
        if (_known.TryGetValue((at, height), out double known)) return known;
        double from = at * Grid;
        return _known[(at, height)] = wood(from, from + heights[height]);
    }

    private (double[] Heights, double Wood) Trace(Dictionary<long, Place> places, long end)
    {
        var found = new double[places[end].Rings];
        double all = places[end].Wood;
        for (int i = found.Length - 1; i >= 0; i--)
        {
            Place place = places[end];
            found[i] = heights[place.Height];
            end = place.From;
        }

        return (found, all);
    }
}
