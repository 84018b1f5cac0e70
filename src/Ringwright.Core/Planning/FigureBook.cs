using System.Collections.Immutable;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Planning;

/// <summary>Collects the figures of one ring. Values once entered can be used as inputs of later figures by their symbol.</summary>
internal sealed class FigureBook
{
    private readonly ImmutableArray<Figure>.Builder _figures = ImmutableArray.CreateBuilder<Figure>(40);
    private readonly Dictionary<string, Input> _inputs = [];

    public ImmutableArray<Figure> Figures => _figures.ToImmutable();

    /// <summary>The batch whose figures are entered and read now; null for figures of the whole ring.</summary>
    public int? Batch { get; private set; }

    /// <summary>What the names of figures entered now end with.</summary>
    public string Suffix { get; private set; } = "";

    /// <summary>What their labels end with.</summary>
    public string LabelSuffix { get; private set; } = "";

    /// <summary>The figure entered as <paramref name="name"/> under the present suffix.</summary>
    public Figure this[string name] => _figures.First(f => f.Name == name + Suffix);

    /// <summary>From now on figures belong to batch <paramref name="batch"/> and their labels end with <paramref name="label"/>.</summary>
    public void Begin(int batch, string label) => (Batch, Suffix, LabelSuffix) = (batch, Figure.SuffixOf(batch), label);

    /// <summary>From now on figures belong to the whole ring; <paramref name="suffix"/> tells several of a kind apart.</summary>
    public void BeginWhole(string suffix = "", string label = "") => (Batch, Suffix, LabelSuffix) = (null, suffix, label);

    /// <summary>The value known as <paramref name="symbol"/> now.</summary>
    public double Known(string symbol) => _inputs[symbol].Value;

    /// <summary>Whether there is such a figure.</summary>
    public bool Has(string name) => _figures.Any(f => f.Name == name);

    /// <summary>Makes a value known under its symbol.</summary>
    public double Know(string symbol, string meaning, double value, Quantity quantity)
    {
        _inputs[symbol] = new(symbol, meaning, value, quantity);
        return value;
    }

    /// <summary>Enters a figure whose formula, with the named inputs, evaluates to its value.</summary>
    public double Add(string name, string label, double value, Quantity quantity, string formula, string symbols, string reason, string source = Sources.Geometry) =>
        Enter(name, label, value, quantity, new(formula, source, reason, true, Inputs(symbols)));

    /// <summary>Enters a figure that was found by search or count.</summary>
    public double AddFound(string name, string label, double value, Quantity quantity, string method, string symbols, string reason, string source = Sources.Geometry) =>
        Enter(name, label, value, quantity, new(method, source, reason, false, Inputs(symbols)));

    /// <summary>Enters a figure of another book as it is.</summary>
    public void Take(Figure figure) => _figures.Add(figure);

    private double Enter(string name, string label, double value, Quantity quantity, Why why)
    {
        _figures.Add(new(name + Suffix, label + LabelSuffix, value, quantity, why) { Batch = Batch });
        return value;
    }

    private ImmutableArray<Input> Inputs(string symbols) =>
        symbols.Length == 0 ? [] : [.. symbols.Split(' ').Select(symbol => _inputs[symbol])];
}

/// <summary>Where formulas come from, as printed beside figures.</summary>
internal static class Sources
{
    public const string Geometry = "plane geometry of the regular polygon (Machinery's Handbook, table of regular polygons)";
    public const string Layer = "sum of the sizes; common practice, no source";
    public const string Cones = "plane geometry of two cones around one axis";
    public const string SineBar = "sine-bar rule, height = length · sin(angle) (Machinery's Handbook, from memory)";
    public const string SawGeometry = "plane geometry of a slanted cut of width k";
    public const string Binomial = "binomial distribution, each wedge lost by itself";
    public const string BetaBinomial = "beta-binomial distribution: each wedge lost by itself, with a chance known from a record (Johnson, Kemp and Kotz, Univariate Discrete Distributions, from memory)";
    public const string Chain = "variance of a sum of independent errors, shared cuts counted twice; normal distribution";
    public const string SmallAngle = "arc = radius · angle, small angles";
    public const string Chord = "chord = 2 · radius · sin(half the angle) (Machinery's Handbook, from memory)";
    public const string Offset = "two lines offset by half a thickness from rays through one point: where they meet";
    public const string OwnRule = "a rule of our own, no source";
}
