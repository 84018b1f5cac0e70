using System.Globalization;
using MathNet.Numerics.Distributions;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Tests.Planning;

/// <summary>Evaluates the formulas printed beside figures, so that a formula that does not give its figure fails a test.</summary>
internal sealed class FormulaReader
{
    private readonly string _text;
    private readonly IReadOnlyDictionary<string, double> _values;
    private int _at;

    private FormulaReader(string text, IReadOnlyDictionary<string, double> values)
    {
        _text = text.Replace(" ", "", StringComparison.Ordinal).Replace('−', '-').Replace('·', '*');
        _values = values;
    }

    public static double Evaluate(string formula, IReadOnlyDictionary<string, double> values)
    {
        var reader = new FormulaReader(formula, values);
        double value = reader.Sum();
        return reader._at == reader._text.Length ? value : throw new FormatException($"“{formula}” cannot be read from {reader._at}.");
    }

    /// <summary>Carries out a printed search, "least m with … ≥ …", one m after another.</summary>
    public static int Search(string method, IReadOnlyDictionary<string, double> values)
    {
        const string Least = "least m with ";
        if (!method.StartsWith(Least, StringComparison.Ordinal)) throw new FormatException($"“{method}” is no search for the least m.");
        string[] sides = [method[Least.Length..method.LastIndexOf('≥')], method[(method.LastIndexOf('≥') + 1)..]];
        return Enumerable.Range(1, 100_000).First(m =>
        {
            var tried = new Dictionary<string, double>(values) { ["m"] = m };
            return Evaluate(sides[0], tried) >= Evaluate(sides[1], tried);
        });
    }

    /// <summary>Every formula of the plan, with its printed inputs, gives its figure; no figure is ever not a number.</summary>
    public static void AssertAll(RingPlan plan)
    {
        foreach (Figure figure in plan.Figures)
        {
            Assert.True(double.IsFinite(figure.Value), figure.Name);
            if (!figure.Why.Evaluates) continue;
            double value = Evaluate(figure.Why.Formula, figure.Why.Inputs.ToDictionary(i => i.Symbol, i => i.Value));
            Assert.True(Math.Abs(value - figure.Value) <= 1e-9 * Math.Max(1, Math.Abs(figure.Value)), $"{figure.Name} = {figure.Value}, but {figure.Why.Formula} = {value}");
        }
    }

    private char Next => _at < _text.Length ? _text[_at] : '\0';

    private double Sum()
    {
        double value = Product();
        while (Next is '+' or '-') value += _text[_at++] == '+' ? Product() : -Product();
        return value;
    }

    private double Product()
    {
        double value = Power();
        while (Next is '*' or '/') value = _text[_at++] == '*' ? value * Power() : value / Power();
        return value;
    }

    private double Power()
    {
        double value = Atom();
        if (Next != '^') return value;
        _at++;
        return Math.Pow(value, Atom());
    }

    private double Atom()
    {
        if (Take('(')) return Closed(Sum());
        if (Take('-')) return -Atom();
        int start = _at;
        while (char.IsLetterOrDigit(Next) || Next is '.') _at++;
        string word = _text[start.._at];
        if (word == "π") return Math.PI;
        if (double.TryParse(word, CultureInfo.InvariantCulture, out double number)) return number;
        if (!Take('(')) return _values[word];
        return word == "P" ? Chance() : Call(word);
    }

    /// <summary>P(law(…) ≥ least), by the distributions of MathNet.</summary>
    private double Chance()
    {
        int start = _at;
        while (Next != '(') _at++;
        string law = _text[start.._at++];
        List<double> parameters = [Sum()];
        while (Take(',')) parameters.Add(Sum());
        Closed(0);
        if (!Take('≥')) throw new FormatException($"“{_text}” lacks ≥ at {_at}.");
        int least = (int)Closed(Sum());
        int tries = (int)parameters[0];
        IDiscreteDistribution good = law switch
        {
            "Binomial" => new Binomial(parameters[1], tries),
            "BetaBinomial" => new BetaBinomial(tries, parameters[1], parameters[2]),
            _ => throw new FormatException($"Unknown distribution {law}."),
        };
        return Enumerable.Range(least, Math.Max(0, tries + 1 - least)).Sum(good.Probability);
    }

    private double Call(string function)
    {
        double first = Sum();
        double second = Take(',') ? Sum() : 0;
        Closed(first);
        return function switch
        {
            "sin" => Math.Sin(first),
            "cos" => Math.Cos(first),
            "tan" => Math.Tan(first),
            "asin" => Math.Asin(first),
            "atan" => Math.Atan(first),
            "sqrt" => Math.Sqrt(first),
            "Φ" => Normal.CDF(0, 1, first),
            "ceil" => Math.Ceiling(first),
            "max" => Math.Max(first, second),
            "min" => Math.Min(first, second),
            _ => throw new FormatException($"Unknown function {function}."),
        };
    }

    private bool Take(char c)
    {
        if (Next != c) return false;
        _at++;
        return true;
    }

    private double Closed(double value) => Take(')') ? value : throw new FormatException($"“{_text}” lacks a bracket at {_at}.");
}
