using Ringwright.Web.Bench;

namespace Ringwright.Web.Tests.Bench;

public class BigValueTests
{
    [Theory]
    [InlineData("9.5 mm", "", "9.5", "mm", "")]
    [InlineData("7.5°", "", "7.5°", "", "")]
    [InlineData("14", "", "14", "", "")]
    [InlineData("1 3/8 in", "", "1 3/8", "in", "")]
    [InlineData("≈ 1 13/64 in (1.201)", "≈ ", "1 13/64", "in", "1.201")]
    public void A_printed_value_is_taken_apart(string printed, string about, string figure, string unit, string note) =>
        Assert.Equal(new BigValue(about, figure, unit, note), BigValue.Of(printed));
}
