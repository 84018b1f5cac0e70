using System.Globalization;

namespace Ringwright.Core.Fitting;

/// <summary>What readings and ring must fulfil before wedges can be chosen.</summary>
public static class WedgeChoiceChecks
{
    /// <summary>Throws at the first thing that cannot be.</summary>
    /// <exception cref="BadInputException">Says the wedge or field, what is wrong, and what would be right.</exception>
    public static void Check(WedgeChoiceInput input)
    {
        CheckRing(input);
        CheckPattern(input);
        foreach (var wedge in input.Wedges) CheckWedge(wedge);
        CheckNumbers(input.Wedges);
        CheckCounts(input);
    }

    private static void CheckRing(WedgeChoiceInput input)
    {
        if (input.Places is < 3 or > WedgeChoiceInput.MostPlaces)
            throw new BadInputException("places", $"a ring of {input.Places} wedges cannot be chosen", $"3 to {WedgeChoiceInput.MostPlaces} can");
        if (input.Closing == Closing.Halves && input.Places % 2 != 0)
            throw new BadInputException("places", $"{input.Places} wedges do not make two equal halves", "an even number does");
        NeedPositive("radius", "a radius", input.Radius);
        NeedPositive("depth", "a depth", input.Depth);
        NeedNotNegative("caliper sd", input.CaliperSd);
        NeedNotNegative("gap step", input.GapStep);
    }

    private static void CheckPattern(WedgeChoiceInput input)
    {
        int length = input.Pattern.Count;
        if (input.Pattern.Any(string.IsNullOrWhiteSpace)) throw new BadInputException("pattern", "a place in it has no wood", "each needs a name such as maple");
        if (length > 0 && input.Places % length != 0)
            throw new BadInputException("pattern", $"its {length} woods do not repeat evenly in {input.Places} places", $"a length that divides {input.Places} is needed");
    }

    private static void CheckWedge(CaliperReading wedge)
    {
        string where = $"wedge {wedge.Number}";
        if (string.IsNullOrWhiteSpace(wedge.Wood)) throw new BadInputException(where, "its wood is not said", "a name such as maple is needed");
        NeedPositive(where, "a rim reading", wedge.Rim);
        NeedPositive(where, "a tip reading", wedge.Tip);
        if (wedge.Depth is { } depth) NeedPositive(where, "a depth", depth);
        if (wedge.Tip >= wedge.Rim)
            throw new BadInputException(where, $"the tip of {Mm(wedge.Tip)} is not narrower than the rim of {Mm(wedge.Rim)}", "the rim is the wider end");
    }

    private static void CheckNumbers(IReadOnlyList<CaliperReading> wedges)
    {
        var seen = new HashSet<int>();
        foreach (var wedge in wedges)
            if (!seen.Add(wedge.Number)) throw new BadInputException($"wedge {wedge.Number}", "this number is on more than one wedge", "each wedge needs its own");
    }

    private static void CheckCounts(WedgeChoiceInput input)
    {
        if (input.Wedges.Count > WedgeChoiceInput.MostWedges)
            throw new BadInputException("wedges", $"{input.Wedges.Count} are too many to choose from", $"up to {WedgeChoiceInput.MostWedges} can be");
        if (input.Wedges.Count < input.Places)
            throw new BadInputException("wedges", $"{input.Wedges.Count} are fewer than the ring's {input.Places} places", $"at least {input.Places} are needed");
        foreach (string wood in input.Pattern.Distinct(StringComparer.OrdinalIgnoreCase)) CheckWood(input, wood);
    }

    private static void CheckWood(WedgeChoiceInput input, string wood)
    {
        bool IsIt(string other) => string.Equals(other, wood, StringComparison.OrdinalIgnoreCase);
        int need = input.Pattern.Count(IsIt) * (input.Places / input.Pattern.Count);
        var have = input.Wedges.Where(w => IsIt(w.Wood)).Select(w => w.Number).ToList();
        if (have.Count >= need) return;
        string which = have.Count == 0 ? "no wedge is" : $"only {have.Count} wedges are ({string.Join(", ", have)})";
        throw new BadInputException("pattern", $"{need} places want {wood} and {which} of it", $"{need - have.Count} more of {wood} or another pattern is needed");
    }

    private static void NeedPositive(string where, string what, double value)
    {
        if (!(value > 0 && double.IsFinite(value)))
            throw new BadInputException(where, $"{what} of {Mm(value)} cannot be", "a length above 0 mm can");
    }

    private static void NeedNotNegative(string where, double value)
    {
        if (!(value >= 0 && double.IsFinite(value))) throw new BadInputException(where, $"{Mm(value)} cannot be", "0 mm or more can");
    }

    private static string Mm(double value) => string.Create(CultureInfo.InvariantCulture, $"{value:0.####} mm");
}
