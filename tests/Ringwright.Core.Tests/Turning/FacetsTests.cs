using CsCheck;
using Ringwright.Core.Turning;

namespace Ringwright.Core.Tests.Turning;

public class FacetsTests
{
    [Fact]
    public void The_least_number_keeps_the_chord_near_enough() => Gen.Select(
        Gen.Double[0.5, 300], Gen.Double[0.01, 6.28], Gen.Double[0.001, 1]).Sample((radius, angle, tolerance) =>
    {
        int count = Facets.FacetsFor(radius, angle, tolerance);
        Assert.True(Sagitta(radius, angle / count) <= tolerance * (1 + 1e-6));
        bool forced = count <= Math.Ceiling(angle / (2 * Math.PI / 3));
        Assert.True(forced || Sagitta(radius, angle / (count - 1)) > tolerance);
    });

    [Fact]
    public void A_full_turn_never_has_fewer_than_three()
    {
        Assert.Equal(3, Facets.FacetsFor(0.1, 2 * Math.PI, 5));
        Assert.Equal(3, Facets.Fixed(1).Over(10, 2 * Math.PI));
        Assert.Equal(1, default(Facets).Over(10, 1));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_tolerance_must_be_above_zero(double tolerance) => Assert.Throws<ArgumentOutOfRangeException>(() => Facets.Within(tolerance));

    private static double Sagitta(double radius, double angle) => radius * (1 - Math.Cos(angle / 2));
}
