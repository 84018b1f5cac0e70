using Ringwright.Core.Measures;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Tests.Bench;

public class WhyTextTests
{
    [Theory]
    [InlineData("rim-edge", "2·9.5 mm·tan(7.5°)")]
    [InlineData("stop", "2·9.5 mm·tan(7.5°) + 2·0.05 mm/cos(7.5°)")]
    [InlineData("easiest-tip", "max(0, 2·(7 mm/2 − 0.5 mm)·sin(7.5°))")]
    public void Values_stand_where_the_symbols_stood(string figure, string expected) =>
        Assert.Equal(expected, WhyText.PutIn(Example.Sheet.Ring[figure].Why, MeasureStyle.Millimetres));

    [Fact]
    public void Inside_a_formula_inches_are_decimals() =>
        Assert.Equal("2·0.374 in·tan(7.5°)", WhyText.PutIn(Example.Sheet.Ring["rim-edge"].Why, MeasureStyle.InchFractions));
}
