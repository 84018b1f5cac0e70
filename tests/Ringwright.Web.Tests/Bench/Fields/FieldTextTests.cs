using Ringwright.Core.Measures;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Tests.Bench.Fields;

public class FieldTextTests
{
    [Theory]
    [InlineData("24", 24)]
    [InlineData("  7 ", 7)]
    public void Whole_numbers_are_read(string text, int expected)
    {
        Assert.True(FieldText.TryWhole(text, out int value, out _));
        Assert.Equal(expected, value);
    }

    [Theory]
    [InlineData("", 0)]
    [InlineData("24.5", 2)]
    [InlineData("2x", 1)]
    [InlineData("-3", 0)]
    [InlineData("12345678901", 9)]
    public void What_is_no_whole_number_is_pointed_at(string text, int position)
    {
        Assert.False(FieldText.TryWhole(text, out _, out ParseError? error));
        Assert.Equal(position, error.Position);
    }

    [Theory]
    [InlineData("4", 0.04)]
    [InlineData("4 %", 0.04)]
    [InlineData("99.5%", 0.995)]
    [InlineData(" 2,5 % ", 0.025)]
    [InlineData("0.04 %", 0.0004)]
    public void Percentages_are_read(string text, double expected)
    {
        Assert.True(FieldText.TryPercent(text, out double share, out _));
        Assert.Equal(expected, share);
    }

    [Theory]
    [InlineData("%", 0)]
    [InlineData("4 percent", 2)]
    [InlineData("4..5", 2)]
    [InlineData("4 %%", 3)]
    public void What_is_no_percentage_is_pointed_at(string text, int position)
    {
        Assert.False(FieldText.TryPercent(text, out _, out ParseError? error));
        Assert.Equal(position, error.Position);
    }

    [Theory]
    [InlineData("650", "kg/m³", 650)]
    [InlineData(" 650 kg/m³ ", "kg/m³", 650)]
    [InlineData("-0,5", "", -0.5)]
    [InlineData("−1.25 MPa", "MPa", -1.25)]
    public void Numbers_are_read_with_their_unit_or_without(string text, string unit, double expected)
    {
        Assert.True(FieldText.TryNumber(text, unit, out double value, out _));
        Assert.Equal(expected, value);
    }

    [Theory]
    [InlineData("half", "", 0)]
    [InlineData("650 g", "kg/m³", 4)]
    [InlineData("1.2.3", "", 3)]
    public void What_is_no_number_is_pointed_at(string text, string unit, int position)
    {
        Assert.False(FieldText.TryNumber(text, unit, out _, out ParseError? error));
        Assert.Equal(position, error.Position);
    }

    [Theory]
    [InlineData(0.04)]
    [InlineData(0.95)]
    [InlineData(0)]
    [InlineData(0.9999)]
    public void A_share_comes_back_from_its_text(double share)
    {
        Assert.True(FieldText.TryPercent(FieldText.Percent(share), out double back, out _));
        Assert.Equal(share, back);
    }
}
