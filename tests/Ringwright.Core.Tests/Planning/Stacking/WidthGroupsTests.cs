using System.Collections.Immutable;
using CsCheck;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Tests.Planning;

public class WidthGroupsTests
{
    private static readonly Gen<(double Needed, double PerWidth)[]> Rings =
        Gen.Select(Gen.Int[10, 30].Select(w => (double)w), Gen.Double[1, 9]).Array[1, 7];

    [Fact]
    public void Every_number_of_widths_wastes_as_little_as_any_assignment_could() => Rings.Sample(rings =>
    {
        double[] needed = [.. rings.Select(r => r.Needed)], wood = [.. rings.Select(r => r.PerWidth)];
        ImmutableArray<WidthChoice> choices = WidthGroups.All(needed, wood);
        for (int k = 1; k <= choices.Length; k++) Assert.Equal(BruteForce(needed, wood, k), choices[k - 1].Extra, 6);
    });

    [Fact]
    public void A_choice_is_what_it_says() => Rings.Sample(rings =>
    {
        foreach (WidthChoice choice in WidthGroups.All([.. rings.Select(r => r.Needed)], [.. rings.Select(r => r.PerWidth)]))
        {
            Assert.Equal(choice.Widths.Order().Distinct(), choice.Widths);
            double waste = 0;
            for (int i = 0; i < rings.Length; i++)
            {
                double width = choice.Widths[choice.GroupOf[i]];
                Assert.True(width >= rings[i].Needed);
                waste += (width - rings[i].Needed) * rings[i].PerWidth;
            }

            Assert.Equal(waste, choice.Extra, 6);
        }
    });

    [Fact]
    public void As_many_widths_as_rings_differ_waste_nothing() => Rings.Sample(rings =>
        Assert.Equal(0, WidthGroups.All([.. rings.Select(r => r.Needed)], [.. rings.Select(r => r.PerWidth)])[^1].Extra, 9));

    // All sets of k of the needed widths that hold the widest.
    private static double BruteForce(double[] needed, double[] wood, int k)
    {
        double[] distinct = [.. needed.Distinct().Order()];
        double best = double.PositiveInfinity;
        for (int set = 0; set < 1 << distinct.Length; set++)
        {
            if (System.Numerics.BitOperations.PopCount((uint)set) != k || (set >> (distinct.Length - 1)) == 0) continue;
            double[] widths = [.. distinct.Where((_, i) => (set >> i & 1) == 1)];
            best = Math.Min(best, needed.Select((w, i) => (widths.First(x => x >= w) - w) * wood[i]).Sum());
        }

        return best;
    }
}
