using Ringwright.Core.Measures;

namespace Ringwright.Core.Tests.Measures;

public class MeasureStyleTests
{
    [Theory]
    [InlineData(9.5, "9.5 mm")]
    [InlineData(9.504, "9.5 mm")]
    [InlineData(-0.001, "0 mm")]
    [InlineData(-2, "−2 mm")]
    public void Prints_millimetres(double mm, string text) => Assert.Equal(text, MeasureStyle.Millimetres.Length(mm));

    [Theory]
    [InlineData(9.525, "3/8 in")]
    [InlineData(34.925, "1 3/8 in")]
    [InlineData(25.4, "1 in")]
    [InlineData(0, "0 in")]
    [InlineData(9.4, "≈ 3/8 in (0.370)")]
    [InlineData(25.3, "≈ 1 in (0.996)")]
    public void Prints_inch_fractions_and_says_when_they_are_not_exact(double mm, string text) => Assert.Equal(text, MeasureStyle.InchFractions.Length(mm));

    [Fact]
    public void Prints_inch_decimals_with_all_three_places() => Assert.Equal("0.750 in", MeasureStyle.InchDecimals.Length(19.05));

    [Fact]
    public void Prints_the_other_quantities()
    {
        Assert.Equal("7.5°", MeasureStyle.Millimetres.Print(Math.PI / 24, Quantity.Angle));
        Assert.Equal("95 %", MeasureStyle.Millimetres.Print(0.95, Quantity.Share));
        Assert.Equal("14", MeasureStyle.InchFractions.Print(14, Quantity.Count));
        Assert.Equal("0.0039 in", MeasureStyle.InchFractions.Print(0.1, Quantity.FineLength));
    }
}
