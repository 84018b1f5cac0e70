using System.Collections.Immutable;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Planning;

/// <summary>Collects the figures of one ring. Values once entered can be used as inputs of later figures by their symbol.</summary>
internal sealed class FigureBook
{
    private readonly ImmutableArray<Figure>.Builder _figures = ImmutableArray.CreateBuilder<Figure>(40);
    private readonly Dictionary<string, Input> _inputs = [];

    public ImmutableArray<Figure> Figures => _figures.ToImmutable();

    /// <summary>The figure entered as <paramref name="name"/>.</summary>
    public Figure this[string name] => _figures.First(f => f.Name == name);

    /// <summary>The value that is known under a symbol.</summary>
    public double Known(string symbol) => _inputs[symbol].Value;

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

    private double Enter(string name, string label, double value, Quantity quantity, Why why)
    {
        _figures.Add(new(name, label, value, quantity, why));
        return value;
    }

    private ImmutableArray<Input> Inputs(string symbols) =>
        symbols.Length == 0 ? [] : [.. symbols.Split(' ').Select(symbol => _inputs[symbol])];
}

/// <summary>Where formulas come from, as printed beside figures.</summary>
internal static class Sources
{
    public const string Geometry = "plane geometry of the regular polygon (Machinery's Handbook, table of regular polygons)";
    public const string SineBar = "sine-bar rule, height = length · sin(angle) (Machinery's Handbook, from memory)";
    public const string SawGeometry = "plane geometry of a slanted cut of width k";
    public const string Binomial = "binomial distribution, each wedge lost by itself";
    public const string Chain = "variance of a sum of independent errors, shared cuts counted twice; normal distribution";
    public const string SmallAngle = "arc = radius · angle, small angles";
    public const string OwnRule = "a rule of our own, no source";
}
