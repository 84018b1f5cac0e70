using CsCheck;
using Ringwright.Core.Timber;

namespace Ringwright.Core.Tests.Timber;

public class MovementTests
{
    // Wood Handbook FPL-GTR-190, pp. 13-16/17: white fir, flat-grained, 232 mm (9.15 in) wide, C_T 0.00245, 8 to 11 percent: + 1.7 mm
    // (0.067 in). Result looked up, inputs from memory.
    [Fact]
    public void The_handbook_s_worked_example()
    {
        Assert.Equal(1.7, Movement.ByCoefficient(232, 0.00245, 8, 11), 0.05);
        Assert.Equal(0.067, Movement.ByCoefficient(9.15, 0.00245, 8, 11), 0.0005);
    }

    // Red alder, flat-sawn, 8 in, 6 percent, 0.0026: 0.1248 in (a magazine's example). Mesquite, 5 in, 6 to 9 percent, 0.00129:
    // 0.019 in (floor trade).
    [Theory]
    [InlineData(8, 0.0026, 8, 14, 0.1248, 1e-9)]
    [InlineData(5, 0.00129, 6, 9, 0.019, 0.0005)]
    public void Published_examples(double size, double coefficient, double from, double to, double change, double within) =>
        Assert.Equal(change, Movement.ByCoefficient(size, coefficient, from, to), within);

    // Wood Handbook Table 13-5 follows from Table 4-3 by eq. 13-3 at 10 percent; printed coefficients, five decimals.
    [Theory]
    [InlineData(4.8, 0.00165)] // sugar maple, radial
    [InlineData(9.9, 0.00353)] // sugar maple, tangential
    [InlineData(5.5, 0.00190)] // black walnut, radial
    [InlineData(7.8, 0.00274)] // black walnut, tangential
    [InlineData(3.7, 0.00126)] // black cherry, radial
    [InlineData(11.9, 0.00431)] // American beech, tangential
    public void The_form_for_wide_ranges_gives_the_printed_coefficients(double shrinkage, double coefficient) =>
        Assert.Equal(coefficient, Movement.ByShrinkage(1, shrinkage / 100, 10, 11), 6e-6);

    [Fact]
    public void From_green_to_oven_dry_it_is_the_shrinkage() => Assert.Equal(-0.099, Movement.ByShrinkage(1, 0.099, 30, 0), 1e-12);

    [Fact]
    public void Moister_wood_is_never_smaller() =>
        Gen.Select(Gen.Int[0, SpeciesTable.Standard.All.Length - 1], Gen.Enum<GrainCut>(), Gen.Select(Gen.Double[0, 35], Gen.Double[0, 35], Gen.Double[0, 5])).Sample((wood, cut, m) =>
        {
            Species species = SpeciesTable.Standard.All[wood];
            double less = Movement.AcrossWidth(species, cut, m.Item1, m.Item2), more = Movement.AcrossWidth(species, cut, m.Item1, m.Item2 + m.Item3);
            return double.IsFinite(less) && more >= less - 1e-12 && (m.Item2 >= Math.Min(m.Item1, 30) ? less >= 0 : less < 0);
        });
}
