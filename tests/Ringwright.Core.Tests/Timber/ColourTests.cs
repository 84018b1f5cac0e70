using System.Globalization;
using CsCheck;
using Ringwright.Core.Timber;
using Ringwright.Core.Timber.Colour;

namespace Ringwright.Core.Tests.Timber;

public class ColourTests
{
    private static readonly Gen<Lab> AnyLab = Gen.Select(Gen.Double[0, 100], Gen.Double[-90, 90], Gen.Double[-90, 90], (l, a, b) => new Lab(l, a, b));
    private static readonly Gen<Srgb> AnySrgb = Gen.Select(Gen.Byte, Gen.Byte, Gen.Byte, (r, g, b) => new Srgb(r, g, b));

    public static TheoryData<double[]> PublishedPairs => Rows("ciede2000-pairs.csv", 34);

    public static TheoryData<double[]> PublishedProbes => Rows("srgb-lab-probes.csv", 7);

    // Source: the head of ciede2000-pairs.csv; printed to 4 decimals.
    [Theory]
    [MemberData(nameof(PublishedPairs))]
    public void Differences_are_the_published_ones(double[] row)
    {
        Lab first = new(row[1], row[2], row[3]), second = new(row[4], row[5], row[6]);
        Assert.Equal(row[7], ColourDifference.Between(first, second), 5e-5);
        Assert.Equal(row[7], ColourDifference.Between(second, first), 5e-5);
    }

    // Source: the head of srgb-lab-probes.csv; its matrix is rounded a little differently, hence 1e-3.
    [Theory]
    [MemberData(nameof(PublishedProbes))]
    public void Screen_colours_have_the_published_Lab(double[] row)
    {
        Lab lab = new Srgb((byte)row[0], (byte)row[1], (byte)row[2]).Lab;
        Assert.Equal(row[3], lab.L, 1e-3);
        Assert.Equal(row[4], lab.A, 1e-3);
        Assert.Equal(row[5], lab.B, 1e-3);
    }

    [Fact]
    public void Lab_and_back_is_the_same_screen_colour() => AnySrgb.Sample(c => c.Lab.ToLinear().ToSrgb() == c && Srgb.Parse(c.ToString()) == c, iter: 1000);

    [Fact]
    public void Difference_is_the_same_from_both_sides_and_zero_only_to_itself() =>
        Gen.Select(AnyLab, AnyLab).Sample(
            (a, b) =>
            {
                double there = ColourDifference.Between(a, b);
                return Math.Abs(there - ColourDifference.Between(b, a)) < 1e-9 && ColourDifference.Between(a, a) == 0 && (there > 0 || a == b);
            },
            iter: 1000);

    [Theory]
    [InlineData("6d5140")]
    [InlineData("#6d514")]
    [InlineData("#6d51400")]
    [InlineData("#-d5140")]
    [InlineData("# 6d514")]
    [InlineData("")]
    public void What_is_no_colour_is_told(string text)
    {
        var refusal = Assert.Throws<BadInputException>(() => Srgb.Parse(text));
        Assert.Contains("#rrggbb", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Weak_contrast_is_said_in_a_sentence()
    {
        var weak = WoodContrast.ContrastOf("wenge", "ebony");
        Assert.True(weak.IsWeak);
        Assert.StartsWith("wenge and ebony are hard to tell apart", weak.Sentence, StringComparison.Ordinal);
        Assert.False(WoodContrast.ContrastOf("maple", "walnut").IsWeak);
    }

    [Fact]
    public void Every_swatch_has_a_Lab_and_a_light_wood_a_high_L()
    {
        Assert.All(Wood.All, w => Assert.InRange(w.Lab.L, 0, 100));
        Assert.True(Wood.Named("holly").Lab.L > Wood.Named("oak").Lab.L && Wood.Named("oak").Lab.L > Wood.Named("ebony").Lab.L);
    }

    private static TheoryData<double[]> Rows(string file, int count)
    {
        string path = Path.Combine(SolutionFolder.Path, "tests/Ringwright.Core.Tests/Timber", file);
        double[][] rows = [.. File.ReadLines(path).Where(l => !l.StartsWith('#')).Skip(1)
            .Select(l => l.Split(',').Select(t => double.Parse(t, CultureInfo.InvariantCulture)).ToArray())];
        Assert.Equal(count, rows.Length);
        return [.. rows];
    }
}
