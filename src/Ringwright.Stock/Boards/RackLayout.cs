using Ringwright.Core.Boards;

namespace Ringwright.Stock.Boards;

/// <summary>A strip of a stretch with what is sawn from it.</summary>
internal sealed class LaidStrip(int strips)
{
    public int Class { get; } = strips;

    /// <summary>Pieces by demand.</summary>
    public SortedDictionary<int, int> Pieces { get; } = [];
}

/// <summary>Strips laid on the stretches of one wood, and what they cost.</summary>
internal sealed class RackLayout(RackSpace space)
{
    /// <summary>What of a strip's length beyond its pieces counts: it comes back, but as a strip.</summary>
    public const double RestCounts = 0.25;

    public List<LaidStrip>[] Strips { get; } = [.. space.Stretches.Select(_ => new List<LaidStrip>())];

    public RackLayout Copy()
    {
        var copy = new RackLayout(space);
        for (int s = 0; s < Strips.Length; s++)
            foreach (LaidStrip strip in Strips[s])
            {
                var same = new LaidStrip(strip.Class);
                foreach ((int demand, int count) in strip.Pieces) same.Pieces.Add(demand, count);
                copy.Strips[s].Add(same);
            }

        return copy;
    }

    public int Given(int demand) => Strips.SelectMany(s => s).Sum(s => s.Pieces.GetValueOrDefault(demand));

    /// <summary>Pieces short; each that is needed weighs <paramref name="needed"/>.</summary>
    public long Short(long needed) => space.Classes.SelectMany(c => c.Demands).Sum(d =>
    {
        StripDemand demand = space.Demand(d);
        int given = Given(d), missing = Math.Max(0, demand.Needed - given);
        return (missing * needed) + Math.Max(0, demand.ToSaw - given);
    });

    /// <summary>Boards that the pieces of a ring come from, added up over the rings.</summary>
    public int Colours() => Enumerable.Range(0, Strips.Length)
        .SelectMany(s => Strips[s].SelectMany(strip => strip.Pieces.Keys).Select(d => (space.Demand(d).Ring, space.Stretches[s].Family)))
        .Distinct().Count();

    /// <summary>Length that the pieces of a strip take.</summary>
    public double Used(LaidStrip strip) => strip.Pieces.Sum(p => space.Demand(p.Key).LengthFor(p.Value));

    /// <summary>Wood taken, mm³ as weighed.</summary>
    public double Cost() => Enumerable.Range(0, Strips.Length).Sum(s => Strips[s].Sum(strip => Cost(space.Stretches[s], space.Classes[strip.Class], Used(strip))));

    private double Cost(Stretch stretch, StripClass strips, double used) =>
        (strips.Width + space.Rules.Kerf) * stretch.Weight * ((RestCounts * stretch.Length) + ((1 - RestCounts) * (space.Rules.StripLoss + used)));

    /// <summary>Width of a stretch that is not taken yet, with the kerf that the next strip is charged.</summary>
    public double FreeAcross(int stretch) => space.Stretches[stretch].Across - Strips[stretch].Sum(s => space.Classes[s.Class].Width + space.Rules.Kerf);
}
