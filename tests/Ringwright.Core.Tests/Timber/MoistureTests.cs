using CsCheck;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Timber;

namespace Ringwright.Core.Tests.Timber;

public class MoistureTests
{
    // Wood Handbook FPL-GTR-190 (2010), Table 4-2, as a public reprint gives it: °F, percent of humidity, percent of moisture. The
    // table has one decimal; the equation stays within 0.052 of every cell.
    [Theory]
    [InlineData(40, 5, 1.4)]
    [InlineData(130, 5, 1.0)]
    [InlineData(70, 10, 2.5)]
    [InlineData(100, 15, 3.3)]
    [InlineData(40, 20, 4.6)]
    [InlineData(80, 20, 4.4)]
    [InlineData(50, 25, 5.5)]
    [InlineData(70, 25, 5.4)]
    [InlineData(70, 30, 6.2)]
    [InlineData(130, 30, 5.2)]
    [InlineData(40, 35, 7.1)]
    [InlineData(80, 40, 7.6)]
    [InlineData(110, 40, 7.0)]
    [InlineData(70, 45, 8.5)]
    [InlineData(70, 50, 9.2)]
    [InlineData(100, 50, 8.7)]
    [InlineData(50, 55, 10.3)]
    [InlineData(70, 60, 11.0)]
    [InlineData(40, 65, 12.3)]
    [InlineData(70, 65, 12.0)]
    [InlineData(130, 65, 10.3)]
    [InlineData(80, 70, 12.9)]
    [InlineData(70, 75, 14.4)]
    [InlineData(40, 80, 16.5)]
    [InlineData(100, 80, 15.1)]
    [InlineData(70, 85, 17.9)]
    [InlineData(40, 90, 21.0)]
    [InlineData(80, 90, 20.2)]
    public void Equilibrium_is_the_handbook_s_table(double fahrenheit, double humidity, double moisture)
    {
        Assert.Equal(moisture, Moisture.Equilibrium(Temperature.FromCelsius((fahrenheit - 32) / 1.8), humidity), 0.06);
        Assert.Equal(moisture, Moisture.AtFahrenheit(fahrenheit).At(humidity / 100), 0.062);
    }

    [Fact]
    public void Both_forms_of_the_equation_agree() =>
        Gen.Select(Gen.Double[30, 130], Gen.Double[0, 0.9]).Sample((f, h) =>
            Math.Abs(Moisture.AtFahrenheit(f).At(h) - Moisture.AtCelsius((f - 32) / 1.8).At(h)) < 0.012);

    [Fact]
    public void Moister_air_makes_moister_wood_and_warmer_air_dryer_wood() =>
        Gen.Select(Gen.Double[-20, 60], Gen.Double[1, 97]).Sample((t, h) =>
        {
            double here = Moisture.AtCelsius(t).At(h / 100);
            return here > 0 && Moisture.AtCelsius(t).At((h + 1) / 100) > here && (t < 10 || Moisture.AtCelsius(t + 1).At(h / 100) < here);
        });

    [Theory]
    [InlineData(21, -1)]
    [InlineData(21, 99)]
    [InlineData(21, double.NaN)]
    [InlineData(-40, 50)]
    [InlineData(200, 50)]
    public void Air_that_cannot_be_is_refused(double celsius, double humidity) =>
        Assert.Throws<BadInputException>(() => Moisture.Equilibrium(Temperature.FromCelsius(celsius), humidity));

    [Fact]
    public void Measured_wood_takes_the_place_of_the_shop_s_air()
    {
        var range = MoistureRange.Of(new Climate { WoodMoisture = 9 });
        Assert.Equal((9, 9), (range.GluedLow, range.GluedHigh));
        Assert.True(range.HomeLow < range.HomeHigh);
    }

    [Theory]
    [InlineData("21 °C", 21)]
    [InlineData("70°F", 21.1111)]
    [InlineData("-4 F", -20)]
    [InlineData("21,5 C", 21.5)]
    public void Temperatures_are_read_as_people_write_them(string text, double celsius)
    {
        var read = Temperature.Parse(text);
        Assert.Equal(celsius, read.Celsius, 1e-4);
        Assert.Equal(text, read.Written);
    }

    [Theory]
    [InlineData("21")]
    [InlineData("warm")]
    [InlineData("21 K")]
    [InlineData("2100 °C")]
    [InlineData("21 °C and more")]
    public void Other_texts_are_no_temperatures(string text) => Assert.Throws<BadInputException>(() => Temperature.Parse(text));
}
