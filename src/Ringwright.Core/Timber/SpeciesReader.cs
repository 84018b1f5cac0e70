using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;

namespace Ringwright.Core.Timber;

/// <summary>Reads the table of woods that is part of the library. Its head explains cells and sources.</summary>
internal sealed class SpeciesReader
{
    private const double MegapascalsPerPsi = 0.00689475729;
    private const double NewtonsPerPound = 4.4482216;

    private static readonly FrozenDictionary<string, string> Sources = new Dictionary<string, string>
    {
        ["W43"] = "Wood Handbook FPL-GTR-190, Table 4-3",
        ["W44"] = "Wood Handbook FPL-GTR-190, Table 4-4",
        ["W135"] = "Wood Handbook FPL-GTR-190, Table 13-5",
        ["W51"] = "Wood Handbook FPL-GTR-190, Table 5-1",
        ["W53"] = "Wood Handbook FPL-GTR-190, Table 5-3b",
        ["W55"] = "Wood Handbook FPL-GTR-190, Table 5-5b",
        ["F"] = "list of the floor trade",
        ["G"] = "general timber references, from memory",
        ["R"] = "rough guess",
    }.ToFrozenDictionary();

    private readonly FrozenDictionary<string, int> _columns;
    private readonly string[] _cells;

    private SpeciesReader(FrozenDictionary<string, int> columns, string[] cells)
    {
        _columns = columns;
        _cells = cells;
    }

    /// <summary>All rows of <paramref name="text"/>.</summary>
    /// <exception cref="FormatException">The table is not as its head says.</exception>
    public static ImmutableArray<Species> Read(string text)
    {
        string[][] rows = [.. text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(line => line[0] != '#').Select(Cells)];
        var columns = rows[0].Index().ToFrozenDictionary(c => c.Item, c => c.Index);
        return [.. rows.Skip(1).Select(cells => new SpeciesReader(columns, cells).Species())];
    }

    private Species Species()
    {
        Sourced density = Density();
        Sourced radial = Share("shrink_R"), tangential = Share("shrink_T");
        return new()
        {
            Name = Text("name"),
            FullName = Text("full"),
            Aliases = [.. Text("aliases").Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)],
            Density = density,
            RadialShrinkage = radial,
            TangentialShrinkage = tangential,
            RadialChange = Find("C_R") ?? SpeciesEstimates.Change(radial),
            TangentialChange = Find("C_T") ?? SpeciesEstimates.Change(tangential),
            Modulus = Find("moe_Mpsi", 1e6 * MegapascalsPerPsi) ?? SpeciesEstimates.Modulus(density.Value),
            RadialStiffness = Find("E_R/E_L") ?? SpeciesEstimates.RadialStiffness,
            TangentialStiffness = Find("E_T/E_L") ?? SpeciesEstimates.TangentialStiffness,
            Shear = Find("shear_psi", MegapascalsPerPsi) ?? SpeciesEstimates.Shear(density.Value),
            TensionAcross = Find("tension_perp_psi", MegapascalsPerPsi) ?? SpeciesEstimates.TensionAcross(density.Value),
            Hardness = Find("hardness_lbf", NewtonsPerPound),
            Fresh = Colour("Lab_fresh"),
            Aged = Colour("Lab_aged"),
            Hex = Text("swatch"),
            Mark = int.Parse(Text("mark"), CultureInfo.InvariantCulture),
            Caution = Text("caution"),
        };
    }

    private Sourced Density()
    {
        string[] parts = Text("weight").Split(' ');
        double number = Number(parts[0]);
        return new(parts[1] switch
        {
            "sg12" => SpeciesEstimates.Density(number),
            "green" => SpeciesEstimates.Density(SpeciesEstimates.GravityFromGreen(number)),
            "kg" => number,
            string other => throw new FormatException($"Unknown weight {other}."),
        }, Source(parts[2]));
    }

    private Sourced? Find(string column, double unit = 1)
    {
        string[] parts = Text(column).Split(' ');
        return parts.Length == 2 ? new(unit * Number(parts[0]), Source(parts[1])) : null;
    }

    private Sourced Share(string column) => Find(column, 0.01) ?? throw new FormatException($"{Text("name")} has no {column}.");

    private SourcedColour Colour(string column)
    {
        string[] parts = Text(column).Split(' ');
        string[] lab = parts[0].Split('/');
        return new(Number(lab[0]), Number(lab[1]), Number(lab[2]), Source(parts[1]));
    }

    private string Text(string column) => _cells[_columns[column]];

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string Source(string code) => code.EndsWith('~') ? Sources[code[..^1]] + " (from memory)" : Sources[code];

    // Cells are quoted only where they hold a comma, and never hold a quote.
    private static string[] Cells(string line)
    {
        var cells = new List<string>();
        bool quoted = false;
        int start = 0;
        for (int i = 0; i <= line.Length; i++)
        {
            if (i < line.Length && line[i] == '"') quoted = !quoted;
            if (i < line.Length && (quoted || line[i] != ',')) continue;
            cells.Add(line[start..i].Trim('"', '\r'));
            start = i + 1;
        }

        return [.. cells];
    }
}
