using CsCheck;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Tests.Measures;

public class DurationTests
{
    [Theory]
    [InlineData("10 min", 10)]
    [InlineData("10min", 10)]
    [InlineData("1 h 30 min", 90)]
    [InlineData("1 1/2 h", 90)]
    [InlineData("1,5 hours", 90)]
    [InlineData("2 days", 2880)]
    [InlineData("1 d 6 h 15 min", 1815)]
    [InlineData("90 s", 1.5)]
    [InlineData(" 0 min ", 0)]
    public void Times_are_read_as_people_write_them(string text, double minutes) => Assert.Equal(minutes, Duration.Parse(text).Minutes, 1e-9);

    [Theory]
    [InlineData("10", "unit")]
    [InlineData("ten min", "number")]
    [InlineData("30 min 1 h", "larger unit")]
    [InlineData("1 h 2 h", "larger unit")]
    [InlineData("-5 min", "not negative")]
    [InlineData("11 weeks", "unit")]
    [InlineData("", "number")]
    [InlineData("100000 days", "ten years")]
    public void What_is_no_time_is_refused_with_a_reason(string text, string reason)
    {
        Assert.False(Duration.TryParse(text, out _, out ParseError? error));
        Assert.Contains(reason, error.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.5, "0.5 min")]
    [InlineData(45, "45 min")]
    [InlineData(60, "1 h")]
    [InlineData(90, "1 h 30 min")]
    [InlineData(1440, "24 h")]
    [InlineData(2879.6, "48 h")]
    [InlineData(2880, "2 d")]
    [InlineData(3100, "2 d 4 h")]
    public void Times_are_printed_in_few_letters(double minutes, string text)
    {
        Assert.Equal(text, Duration.Print(minutes));
        Assert.Equal(text, MeasureStyle.Millimetres.Print(minutes, Quantity.Time));
    }

    [Fact]
    public void What_is_printed_reads_back_to_what_it_shows() =>
        Gen.Int[0, 2880].Sample(minutes => Assert.Equal(minutes, Duration.Parse(Duration.Print(minutes)).Minutes, 1e-9));

    [Fact]
    public void Written_times_are_kept()
    {
        Assert.Equal("1 h 30 min", Duration.Parse("1 h 30 min").Written);
        Assert.Equal(Duration.Parse("90 min"), Duration.Parse("1 h 30 min"));
        Assert.Throws<BadInputException>(() => Duration.FromMinutes(-1));
        Assert.Throws<BadInputException>(() => Duration.FromMinutes(double.NaN));
    }
}
