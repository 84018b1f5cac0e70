using CsCheck;
using Ringwright.Paper.Lettering;

namespace Ringwright.Paper.Tests;

public class LetteringTests
{
    [Theory]
    [InlineData(FontWeight.Regular)]
    [InlineData(FontWeight.SemiBold)]
    public void The_typeface_has_every_character_the_sheets_need(FontWeight weight)
    {
        const string Needed = "0123456789 Ø°′″\"'½¼¾⅛⅜⅝⅞⁄×·÷−±–—→←↑↓≤≥≈√⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉…µ%&äöüßéñ\u00a0";
        Assert.Equal("", string.Concat(Needed.Where(c => !Typesetter.CanShow(c.ToString(), weight))));
        Assert.False(Typesetter.CanShow("⌀", weight), "U+2300 has come: use it for diameters.");
    }

    [Fact]
    public void A_fraction_is_raised_over_a_slash_and_reads_as_before()
    {
        TextLine line = Typesetter.Set("1 3/8\"", TypeScale.Figure);
        Assert.Equal("1 3⁄8\"", line.Text);
        Assert.Equal(["1 ", "3", "⁄", "8", "\""], line.Runs.Select(run => run.Text));
        TextRun over = line.Runs[1], under = line.Runs[3];
        double small = over.Em / TypeScale.Figure.Em;
        Assert.Equal(TypeScale.Figure.Height, over.Rise + (small * TypeScale.Figure.Height), 1e-9); // its top is that of capitals
        Assert.Equal(0, under.Rise);
        Assert.Equal(line.Width, line.Runs.Sum(run => run.Width), 1e-9);
    }

    [Theory]
    [InlineData("2026/03/14")]
    [InlineData("1/2/3")]
    [InlineData("and/or")]
    [InlineData("1.5/2")]
    public void What_is_no_fraction_is_left_alone(string text) =>
        Assert.Equal(text, Typesetter.Set(text, TypeScale.Figure).Text);

    [Fact]
    public void Numbers_of_a_column_have_digits_of_one_width()
    {
        double width = Typesetter.Set("0000.00", TypeScale.Number).Width;
        Assert.Equal(width, Typesetter.Set("1111.11", TypeScale.Number).Width, 1e-9);
        Assert.NotEqual(width, Typesetter.Set("1111.11", TypeScale.Body).Width, 0.1);
    }

    [Fact]
    public void The_scale_is_that_of_ISO_3098_and_ends_at_its_smallest()
    {
        // ISO 3098-1: nominal sizes of lettering in mm.
        Assert.Equal([20, 14, 10, 7, 5, 3.5, 2.5, 1.8], TypeScale.Down(TypeScale.Body with { Height = 20 }, 1.8).Select(s => s.Height));
        Assert.Null(TypeScale.Below(1.8));
    }

    [Fact]
    public void A_text_is_measured_as_wide_as_it_is_set() =>
        Gen.Select(Gen.String[Gen.OneOf(Gen.Char["01 3/8.-iW\t"], Gen.Char), 0, 40], Gen.OneOf(Gen.Const(TypeScale.Body), Gen.Const(TypeScale.Figure), Gen.Const(TypeScale.Number), Gen.Const(TypeScale.Heading))).Sample((text, style) =>
            Assert.Equal(Typesetter.Set(text, style).Width, Typesetter.WidthOf(text, style), 1e-12 * (1 + text.Length)), iter: 1000);

    [Fact]
    public void Wrapped_lines_fit_and_lose_no_letter() =>
        Gen.Select(Gen.String[Gen.Char["abcdefgh iW1 "], 0, 120], Gen.Double[12, 90]).Sample((text, width) =>
        {
            IReadOnlyList<TextLine> lines = Wrapping.Lines(text, TypeScale.Body, width);
            Assert.All(lines, line => Assert.True(line.Width <= width + 1e-9));
            Assert.Equal(text.Replace(" ", ""), string.Concat(lines.Select(line => line.Text)).Replace(" ", ""));
        });

    [Fact]
    public void A_line_takes_the_largest_size_that_fits_and_says_which_text_does_not()
    {
        double width = Typesetter.Set("Padauk", TypeScale.Heading).Width;
        Assert.Equal(3.5, Wrapping.OneLine("Padauk", TypeScale.Figure, width, 1.8).Style.Height);
        LayoutException error = Assert.Throws<LayoutException>(() => Wrapping.OneLine("Padauk", TypeScale.Figure, 2, 1.8));
        Assert.Equal("Padauk", error.Text);
        Assert.Equal("The text \"Padauk\" does not fit 2 mm even at 1.8 mm; make it shorter.", error.Message);
    }
}
