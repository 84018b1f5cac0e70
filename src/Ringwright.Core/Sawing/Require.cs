using System.Globalization;

namespace Ringwright.Core.Sawing;

/// <summary>The checks of numbers a person typed, each told in one sentence.</summary>
internal static class Require
{
    private const double Degree = Math.PI / 180;

    /// <summary>The value is finite and from <paramref name="least"/> to <paramref name="most"/>.</summary>
    public static void Between(string where, double value, double least, double most, string unit)
    {
        if (value >= least && value <= most) return;
        throw new BadInputException(where, $"{Text(value)} {unit} is out of range", $"give {Text(least)} to {Text(most)} {unit}");
    }

    /// <summary>The angle is finite and from <paramref name="least"/> to <paramref name="most"/>, all in radians (told in degrees).</summary>
    public static void Angle(string where, double value, double least, double most) =>
        Between(where, value / Degree, least / Degree, most / Degree, "°");

    /// <summary>
    /// A standard deviation that cannot drive <paramref name="size"/> to zero: no draw of <see cref="Draws"/> is
    /// farther out than 9 of them.
    /// </summary>
    public static void Spread(string where, double deviation, double size, double most, string unit)
    {
        Between(where, deviation, 0, most, unit);
        if (9 * deviation < size || deviation == 0) return;
        throw new BadInputException(where, $"a deviation of {Text(deviation)} {unit} could use up all of {Text(size)} {unit}", $"give less than {Text(size / 9)} {unit}");
    }

    /// <summary>A whole number from <paramref name="least"/> to <paramref name="most"/>.</summary>
    public static void Count(string where, int value, int least, int most)
    {
        if (value >= least && value <= most) return;
        throw new BadInputException(where, $"{value} is out of range", $"give {least} to {most}");
    }

    /// <summary>A number as a person would write it.</summary>
    public static string Text(double value) => value.ToString("0.######", CultureInfo.InvariantCulture);
}
