using CsCheck;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Tests.Measures;

public class LengthTests
{
    [Theory]
    [InlineData("3/8 in", 9.525)]
    [InlineData("1 3/8\"", 34.925)]
    [InlineData("1-3/8 in", 34.925)]
    [InlineData("35mm", 35)]
    [InlineData("0.375\"", 9.525)]
    [InlineData("3,5 cm", 35)]
    [InlineData(".5 in", 12.7)]
    [InlineData("1⅜″", 34.925)]
    [InlineData("½ inch", 12.7)]
    [InlineData("  2 IN  ", 50.8)]
    [InlineData("1.2 m", 1200)]
    [InlineData("-4 mm", -4)]
    [InlineData("0,375 in", 9.525)]
    [InlineData("5''", 127)]
    public void Reads_lengths_as_people_write_them(string text, double millimetres)
    {
        Assert.True(Length.TryParse(text, null, out Length length, out _));
        Assert.Equal(millimetres, length.Millimetres, 1e-12);
    }

    [Theory]
    [InlineData("3/8", LengthUnit.Inch, 9.525, "3/8 in")]
    [InlineData("12.5", LengthUnit.Millimetre, 12.5, "12.5 mm")]
    [InlineData("5 mm", LengthUnit.Inch, 5, "5 mm")]
    public void Takes_the_users_unit_only_where_none_is_written(string text, LengthUnit unit, double millimetres, string written)
    {
        Assert.True(Length.TryParse(text, unit, out Length length, out _));
        Assert.Equal(millimetres, length.Millimetres, 1e-12);
        Assert.Equal(written, length.Written);
    }

    [Theory]
    [InlineData("", 0)]
    [InlineData("abc", 0)]
    [InlineData("3/0 in", 2)]
    [InlineData("3/ in", 2)]
    [InlineData("1 9/8 in", 2)]
    [InlineData("12", 2)]
    [InlineData("12 km", 3)]
    [InlineData("12 mm x", 6)]
    [InlineData("1,000 mm", 1)]
    [InlineData("1 3 in", 3)]
    [InlineData("1.2.3 mm", 3)]
    [InlineData("12345678901234567890 mm", 12)]
    [InlineData("NaN mm", 0)]
    [InlineData("1e5 mm", 1)]
    [InlineData("99999999 mm", 0)]
    public void Points_at_the_character_that_cannot_be_read(string text, int position)
    {
        Assert.False(Length.TryParse(text, null, out Length length, out ParseError? error));
        Assert.Equal(position, error.Position);
        Assert.Equal(default, length);
        Assert.Contains(";", error.Sentence, StringComparison.Ordinal);
        Assert.EndsWith("\n" + new string(' ', position) + "^", error.CaretLines, StringComparison.Ordinal);
    }

    [Fact]
    public void An_inch_is_exactly_25_4_mm()
    {
        // International inch: 25.4 mm exactly (international yard and pound agreement, 1959).
        for (int sixtyFourths = 1; sixtyFourths <= 64 * 40; sixtyFourths++)
            Assert.Equal((double)(sixtyFourths * 25.4m / 64), Length.Parse($"{sixtyFourths}/64 in").Millimetres);
    }

    [Fact]
    public void Written_text_reads_back_to_the_same_length() =>
        Gen.Double[-9e6, 9e6].Sample(mm =>
        {
            var length = Length.FromMillimetres(Math.Round(mm, 6));
            return Length.TryParse(length.Written, null, out Length again, out _) && again == length;
        });

    [Fact]
    public void Fractions_round_trip_through_print_and_parse() =>
        Gen.Int[1, 64 * 100].Sample(parts =>
        {
            double mm = (double)(parts * 25.4m / 64);
            string text = MeasureStyle.InchFractions.Length(mm);
            return Length.TryParse(text, null, out Length again, out _) && Math.Abs(again.Millimetres - mm) < 1e-9;
        });

    [Fact]
    public void Any_text_is_read_or_refused_with_one_sentence() =>
        Gen.String[Gen.Char["0123456789 /,.-+'\"″mincμ½⅜°xe"], 0, 12].Sample(text =>
            Length.TryParse(text, LengthUnit.Inch, out Length length, out ParseError? error)
                ? double.IsFinite(length.Millimetres)
                : error.Position >= 0 && error.Position <= text.Length && error.Sentence.Length > 10);
}
