namespace Ringwright.Core.Fitting;

/// <summary>One clear sentence for each kind of number that cannot be used.</summary>
internal static class ChanceInput
{
    internal static void Finite(string where, double value)
    {
        if (!double.IsFinite(value))
            throw new BadInputException(where, $"{value} is no number to compute with", "give a finite number");
    }

    internal static void NotNegative(string where, double value)
    {
        Finite(where, value);
        if (value < 0)
            throw new BadInputException(where, $"{value:R} is negative", "give zero or more");
    }

    internal static void Positive(string where, double value)
    {
        Finite(where, value);
        if (value <= 0)
            throw new BadInputException(where, $"{value:R} is not above zero", "give more than zero");
    }

    /// <summary>A probability that may be 0 or 1.</summary>
    internal static void Chance(string where, double value)
    {
        if (!(value >= 0 && value <= 1))
            throw new BadInputException(where, $"{value:R} is no probability", "give 0 to 1");
    }

    /// <summary>A wanted probability or level, for which 0 and 1 would have no answer.</summary>
    internal static void InnerChance(string where, double value)
    {
        if (!(value > 0 && value < 1))
            throw new BadInputException(where, $"{value:R} cannot be asked for", "give more than 0 and less than 1, for example 0.95");
    }
}
