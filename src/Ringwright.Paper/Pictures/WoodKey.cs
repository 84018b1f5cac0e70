using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Core.Timber;
using Ringwright.Paper.Drawings;

namespace Ringwright.Paper.Pictures;

/// <summary>How one wood of a ring is shown.</summary>
/// <param name="Letter">Its letter on the sheets of this ring: A is the first around the ring.</param>
/// <param name="Wood">Its name.</param>
/// <param name="Hatch">Its line pattern.</param>
/// <param name="Shade">Its grey where segments are too narrow for lines.</param>
/// <param name="Tint">A rough guess of its colour, for a screen.</param>
public sealed record WoodEntry(string Letter, string Wood, Hatch Hatch, Colour Shade, Colour Tint);

/// <summary>Tells the woods of one ring apart in black and white: by letter always, by pattern as long as patterns last.</summary>
public sealed class WoodKey
{
    private static readonly byte[] Shades = [255, 120, 195, 70, 225, 150, 95, 175];

    private readonly Dictionary<string, WoodEntry> _byName = new(StringComparer.OrdinalIgnoreCase);
    private readonly List<WoodEntry> _entries = [];

    private WoodKey(IEnumerable<string> woods)
    {
        HashSet<Hatch> taken = [];
        foreach (string wood in woods.Where(wood => !_byName.ContainsKey(wood)))
        {
            Wood swatch = Wood.Named(wood);
            Hatch wanted = Hatch.Of(swatch.Mark);
            Hatch hatch = taken.Add(wanted) ? wanted : Hatch.All.FirstOrDefault(taken.Add) ?? wanted;
            int index = _entries.Count;
            WoodEntry entry = new(LetterOf(index), wood, hatch, Colour.Grey(Shades[index % Shades.Length]), Parse(swatch.Hex));
            _byName.Add(wood, entry);
            _entries.Add(entry);
        }
    }

    /// <summary>The woods in the order in which they first come around the ring, those of spacers after all segments'.</summary>
    public IReadOnlyList<WoodEntry> Entries => _entries;

    /// <summary>How a wood is shown; one that is not around the ring, such as a laminated board, plain and without a letter.</summary>
    public WoodEntry this[string wood] => _byName.TryGetValue(wood, out WoodEntry? entry) ? entry : new("", wood, Hatch.Plain, Colour.Grey(Shades[0]), Colour.Grey(Shades[0]));

    /// <summary>The key of a ring.</summary>
    public static WoodKey Of(Ring ring)
    {
        ArgumentNullException.ThrowIfNull(ring);
        if (ring is LaminatedRing) return new(ring.Cycle);
        IEnumerable<string> between = ring is MixedRing mixed ? mixed.Parts.Where(p => p.IsSpacer).Select(p => p.Wood) : [];
        return new(Enumerable.Range(0, ring.Around).Select(ring.WoodOf).Concat(between));
    }

    /// <summary>The key of a whole piece: its woods in the order in which they first appear from the bottom up.</summary>
    public static WoodKey Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new(plan.Rings.SelectMany(r => r.Layout).Select(s => s.Wood));
    }

    // A to Z, then AA, AB and so on.
    private static string LetterOf(int index) =>
        (index < 26 ? "" : LetterOf((index / 26) - 1)) + (char)('A' + (index % 26));

    private static Colour Parse(string hex)
    {
        byte[] parts = Convert.FromHexString(hex.AsSpan(1));
        return new(parts[0], parts[1], parts[2]);
    }
}
