using System.Collections.Frozen;
using System.Collections.Immutable;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Timber;

/// <summary>The woods that are known: those of the library, and a shop's own laid over them. Immutable.</summary>
public sealed class SpeciesTable
{
    private static readonly Lazy<SpeciesTable> Loaded = new(Load);

    private readonly FrozenDictionary<string, Species> _byName;

    private SpeciesTable(ImmutableArray<Species> all)
    {
        All = all;
        var names = new Dictionary<string, Species>(StringComparer.OrdinalIgnoreCase);
        foreach (Species species in all)
            foreach (string alias in species.Aliases) names.TryAdd(alias, species);
        // A wood's own name wins over another's alias.
        foreach (Species species in all) names[species.Name] = species;
        _byName = names.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>The library's own table.</summary>
    public static SpeciesTable Standard => Loaded.Value;

    /// <summary>All woods in the table's order.</summary>
    public ImmutableArray<Species> All { get; }

    /// <summary>The wood of <paramref name="name"/>, which may be an alias (case does not matter); null when it is not known.</summary>
    public Species? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return _byName.GetValueOrDefault(name.Trim());
    }

    /// <summary>The wood of <paramref name="name"/>; a middling hardwood under that name when it is not known.</summary>
    public Species FindOrAssume(string name) => Find(name) ?? OwnWoods.Assumed(name.Trim());

    /// <summary>This table with a shop's own woods laid over it: values given replace the table's, others stay.</summary>
    /// <exception cref="BadInputException">A wood that is not in the table lacks its weight or shrinkage.</exception>
    public SpeciesTable With(IEnumerable<OwnWood> own)
    {
        ArgumentNullException.ThrowIfNull(own);
        var all = All.ToBuilder();
        foreach (OwnWood wood in own)
        {
            int at = IndexOf(all, wood.Name.Trim());
            Species merged = OwnWoods.Over(at < 0 ? null : all[at], wood);
            if (at < 0) all.Add(merged);
            else all[at] = merged;
        }

        return new(all.ToImmutable());
    }

    /// <summary>The library's table with the own woods of <paramref name="shop"/>.</summary>
    /// <exception cref="BadInputException">A wood that is not in the table lacks its weight or shrinkage.</exception>
    public static SpeciesTable For(Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        return shop.Species is { IsDefaultOrEmpty: false } own ? Standard.With(own) : Standard;
    }

    private static int IndexOf(IReadOnlyList<Species> all, string name)
    {
        int Where(Func<Species, bool> fits) => all.Index().Where(s => fits(s.Item)).Select(s => (int?)s.Index).FirstOrDefault() ?? -1;
        int named = Where(s => string.Equals(s.Name, name, StringComparison.OrdinalIgnoreCase));
        return named >= 0 ? named : Where(s => s.Aliases.Contains(name, StringComparer.OrdinalIgnoreCase));
    }

    private static SpeciesTable Load()
    {
        using Stream stream = typeof(SpeciesTable).Assembly.GetManifestResourceStream("Ringwright.Core.Timber.woods.csv")!;
        using var reader = new StreamReader(stream);
        return new(SpeciesReader.Read(reader.ReadToEnd()));
    }
}
