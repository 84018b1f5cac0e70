using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Timber;

/// <summary>
/// The moisture wood comes to in air that stays as it is: equilibrium moisture content, percent of the oven-dry mass. Hailwood and
/// Horrobin's equation with two hydrates, Wood Handbook FPL-GTR-190 (2010), eq. 4-5; the table it makes is 4-2.
/// </summary>
/// <param name="W">Molecular weight of the polymer unit.</param>
/// <param name="K">Equilibrium constant of dissolved water.</param>
/// <param name="K1">Equilibrium constant of the first hydrate.</param>
/// <param name="K2">Equilibrium constant of the second hydrate.</param>
public readonly record struct Moisture(double W, double K, double K1, double K2)
{
    /// <summary>Coldest air taken, °C. The published table begins at −1 °C; below it the equation hardly changes.</summary>
    public const double ColdestCelsius = -20;

    /// <summary>Hottest air taken, °C: the end of the published table.</summary>
    public const double HottestCelsius = 132;

    /// <summary>The equation's constants for a temperature; the form for °C.</summary>
    public static Moisture AtCelsius(double t) => new(
        349 + (1.29 * t) + (0.0135 * t * t),
        0.805 + (0.000736 * t) - (0.00000273 * t * t),
        6.27 - (0.00938 * t) - (0.000303 * t * t),
        1.91 + (0.0407 * t) - (0.000293 * t * t));

    /// <summary>The equation's constants for a temperature; the form for °F, rounded on its own: up to 0.011 percent from the other.</summary>
    public static Moisture AtFahrenheit(double t) => new(
        330 + (0.452 * t) + (0.00415 * t * t),
        0.791 + (0.000463 * t) - (0.000000844 * t * t),
        6.34 + (0.000775 * t) - (0.0000935 * t * t),
        1.09 + (0.0284 * t) - (0.0000904 * t * t));

    /// <summary>Equilibrium moisture, percent, for a relative humidity as a share from 0 to 1.</summary>
    public double At(double humidity)
    {
        double h = K * humidity;
        double one = K1 * h, two = K1 * K2 * h * h;
        return 1800 / W * ((h / (1 - h)) + ((one + (2 * two)) / (1 + one + two)));
    }

    /// <summary>Equilibrium moisture, percent, of wood in <paramref name="temperature"/> at <paramref name="humidity"/> percent.</summary>
    /// <exception cref="BadInputException">The humidity is below 0 or above 98 percent, or the temperature beyond −20 to 132 °C.</exception>
    public static double Equilibrium(Temperature temperature, double humidity)
    {
        if (!(humidity is >= 0 and <= 98)) throw new BadInputException("humidity", string.Create(CultureInfo.InvariantCulture, $"{humidity} percent cannot be"), "0 to 98 percent can be computed");
        if (!(temperature.Celsius is >= ColdestCelsius and <= HottestCelsius)) throw new BadInputException("temperature", $"{temperature} cannot be", "−20 °C to 132 °C can be computed");
        return AtCelsius(temperature.Celsius).At(humidity / 100);
    }

    /// <summary>Equilibrium moisture of wood in <paramref name="air"/>, percent.</summary>
    /// <exception cref="BadInputException">The air is beyond what the equation holds for.</exception>
    public static double Of(Air air)
    {
        ArgumentNullException.ThrowIfNull(air);
        return Equilibrium(air.Temperature, air.Humidity);
    }
}

/// <summary>The moistures a piece goes through, percent: when it is glued, and at home.</summary>
/// <param name="GluedLow">Least when glued.</param>
/// <param name="GluedHigh">Most when glued.</param>
/// <param name="HomeLow">Least at home.</param>
/// <param name="HomeHigh">Most at home.</param>
public readonly record struct MoistureRange(double GluedLow, double GluedHigh, double HomeLow, double HomeHigh)
{
    /// <summary>The moistures of a climate.</summary>
    /// <exception cref="BadInputException">The air is beyond what the equation holds for.</exception>
    public static MoistureRange Of(Climate climate)
    {
        ArgumentNullException.ThrowIfNull(climate);
        (double shopWinter, double shopSummer) = (Moisture.Of(climate.Shop.Winter), Moisture.Of(climate.Shop.Summer));
        (double homeWinter, double homeSummer) = (Moisture.Of(climate.Home.Winter), Moisture.Of(climate.Home.Summer));
        return new(
            climate.WoodMoisture ?? Math.Min(shopWinter, shopSummer), climate.WoodMoisture ?? Math.Max(shopWinter, shopSummer),
            Math.Min(homeWinter, homeSummer), Math.Max(homeWinter, homeSummer));
    }

    /// <summary>The same home for wood that is glued at <paramref name="moisture"/> percent.</summary>
    public MoistureRange GluedAt(double moisture) => this with { GluedLow = moisture, GluedHigh = moisture };
}
