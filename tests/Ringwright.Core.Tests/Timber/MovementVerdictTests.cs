using CsCheck;
using Ringwright.Core.Pieces;
using Ringwright.Core.Timber;

namespace Ringwright.Core.Tests.Timber;

public class MovementVerdictTests
{
    private static readonly GlueJoint Joint = new();
    private static readonly Species Maple = SpeciesTable.Standard.Find("maple")!;
    private static readonly Gen<Species> Any = Gen.Int[0, SpeciesTable.Standard.All.Length - 1].Select(i => SpeciesTable.Standard.All[i]);
    private static readonly Gen<double> AnyMoisture = Gen.Double[3, 20];

    private static readonly Gen<RingBody> Body =
        from n in Gen.Int[3, 360]
        from outer in Gen.Double[4, 300]
        from hole in Gen.Double[0, 0.98]
        from grain in Gen.Enum<SegmentGrain>()
        select new RingBody(n, outer, (grain == SegmentGrain.Upright ? Math.Max(0.1, hole) : hole) * outer, grain);

    private static readonly Gen<MoistureRange> Range =
        from glued in AnyMoisture
        from more in Gen.Double[0, 4]
        from home in AnyMoisture
        from season in Gen.Double[0, 6]
        select new MoistureRange(glued, glued + more, home, home + season);

    [Fact]
    public void Nothing_is_ever_not_a_number() =>
        Gen.Select(Body, Any, Range).Sample((body, wood, range) =>
        {
            MovementVerdict verdict = MovementVerdict.Of(body, [wood], range, Joint);
            return double.IsFinite(verdict.Worst.Use + verdict.Worst.JointPull + verdict.Worst.SplitPull + verdict.Worst.Gap) && verdict.Advice.All(a => double.IsFinite(a.Use + a.Value));
        });

    [Fact]
    public void The_further_the_moisture_goes_the_larger_the_stress() =>
        Gen.Select(Body.Where(b => b.Grain == SegmentGrain.Around), Any, Gen.Select(AnyMoisture, Gen.Double[0, 6], Gen.Double[0, 4])).Sample((body, wood, m) =>
        {
            var ring = new RingMovement(body, wood, GrainCut.FlatSawn, Joint);
            (double at, double far, double further) = (m.Item1, m.Item2, m.Item2 + m.Item3);
            return ring.Between(at, at + further).Use >= ring.Between(at, at + far).Use - 1e-12 && ring.Between(at, at - further).Use >= ring.Between(at, at - far).Use - 1e-12
                && ring.Between(at, at).Use == 0;
        });

    // Staves move across the grain both ways; wood that moves alike in both wants to open nowhere.
    [Fact]
    public void Grain_that_moves_alike_in_both_directions_carries_no_stress()
    {
        Species even = Maple with { TangentialChange = Maple.RadialChange, TangentialShrinkage = Maple.RadialShrinkage };
        MovementCase worst = MovementVerdict.Of(new(12, 60, 50, SegmentGrain.Upright), [even], new(12, 12, 5, 10), Joint).Worst;
        Assert.Equal(0, worst.Use, 1e-12);
        Assert.Equal(0, worst.Gap, 1e-12);
    }

    [Fact]
    public void A_drying_disc_is_pulled_apart_in_the_middle_and_a_swelling_one_at_the_rim()
    {
        var disc = new RingMovement(new(24, 60, 0), Maple, GrainCut.FlatSawn, Joint);
        Assert.True(disc.Between(10, 6) is { AtHole: true, Gap: < 0, SplitPull: > 3 });
        Assert.True(disc.Between(6, 10) is { AtHole: false, Gap: > 0, SplitPull: < 0.5 });
    }

    [Fact]
    public void Advice_is_only_given_where_it_helps_and_keeps_what_it_says() =>
        Gen.Select(Body, Any, Range).Sample((body, wood, range) =>
        {
            MovementVerdict verdict = MovementVerdict.Of(body, [wood], range, Joint);
            foreach (MovementAdvice advice in verdict.Advice)
            {
                Assert.True(advice.Use < verdict.Worst.Use);
                double kept = Followed(advice, verdict.Worst, body, wood, range);
                Assert.Equal(advice.Use, kept, 1e-6 * Math.Max(1, kept));
            }
        });

    [Fact]
    public void Little_stress_asks_for_no_advice() =>
        Assert.Empty(MovementVerdict.Of(new(24, 60, 55), [Maple], new(8, 8, 7.5, 8.5), Joint).Advice);

    [Fact]
    public void A_shallow_ring_carries_less_than_a_disc()
    {
        MoistureRange range = new(9, 9, 6, 10);
        double disc = MovementVerdict.Of(new(24, 60, 0), [Maple], range, Joint).Worst.Use;
        double ring = MovementVerdict.Of(new(24, 60, 52), [Maple], range, Joint).Worst.Use;
        Assert.True(ring < 0.7 * disc, $"{ring} of {disc}");
    }

    [Fact]
    public void A_layer_on_wood_that_moves_alike_carries_no_stress() =>
        Gen.Select(Any, Gen.Enum<GrainCut>(), Gen.Select(AnyMoisture, AnyMoisture)).Sample((wood, cut, m) =>
            LayerMovement.Between(wood, cut, 120, 12, m.Item1, m.Item2, Movement.AcrossWidth(wood, cut, m.Item1, m.Item2), Joint) is { Use: 0, FreeChange: 0 });

    // An independent numeric solution of σ″ = (σ + E·e)/λ²: differences of second order, free ends.
    [Theory]
    [InlineData(20, 10)]
    [InlineData(60, 10)]
    [InlineData(150, 6)]
    public void Shear_lag_is_the_numeric_solution(double width, double thickness)
    {
        var layer = LayerMovement.Between(Maple, GrainCut.FlatSawn, width, thickness, 10, 6, 0, new() { StressKept = 1 });
        double modulus = Maple.WidthModulus(GrainCut.FlatSawn), lag = thickness * Math.Sqrt(modulus / (3 * 0.02 * Maple.Modulus.Value));
        double[] stress = ShearLag(width, lag, modulus * layer.Mismatch);
        Assert.Equal(stress.Max(), layer.SplitPull, 1e-3 * layer.SplitPull);
        // Equilibrium: the shear at the edge is the thickness times the slope of the stress.
        double slope = ((4 * stress[1]) - stress[2]) / (2 * (width / (stress.Length - 1)));
        Assert.Equal(thickness * slope, layer.EdgeShear, 2e-3 * layer.EdgeShear);
    }

    [Fact]
    public void A_solid_base_is_told_to_float_and_how_much_room_it_needs()
    {
        LayerVerdict verdict = LayerVerdict.Of(Maple, 120, 12, 12, new(10, 10, 6, 10), Joint);
        Assert.True(verdict.Worst.Use > 1);
        LayerAdvice floats = verdict.Advice.Single(a => a.Help == LayerHelp.Unglued);
        Assert.Equal(120 * 0.00353 * 4, floats.Value, 1e-6);
        Assert.All(verdict.Advice, a => Assert.True(a.Use < verdict.Worst.Use));
        LayerAdvice smaller = verdict.Advice.Single(a => a.Help == LayerHelp.Smaller);
        Assert.InRange((verdict.Worst with { Width = smaller.Value }).Use, 0.999, 1);
    }

    private static double Followed(MovementAdvice advice, MovementCase worst, RingBody body, Species wood, MoistureRange range) => advice.Help switch
    {
        MovementHelp.GlueMoisture => MovementVerdict.Of(body, [wood], range.GluedAt(advice.Value), Joint).Worst.Use,
        MovementHelp.Ring => MovementVerdict.Of(body with { Inner = body.Outer - advice.Value }, [wood], range, Joint).Worst.Use,
        _ => new RingMovement(body, wood, worst.Ring.Cut == GrainCut.FlatSawn ? GrainCut.QuarterSawn : GrainCut.FlatSawn, Joint).Worst(range).Use,
    };

    private static double[] ShearLag(double width, double lag, double load)
    {
        const int n = 4000;
        double h = width / n, diagonal = -2 - (h * h / (lag * lag)), right = load * h * h / (lag * lag);
        double[] stress = new double[n + 1], upper = new double[n + 1], value = new double[n + 1];
        for (int i = 1; i < n; i++)
        {
            double pivot = diagonal - upper[i - 1];
            upper[i] = 1 / pivot;
            value[i] = (right - value[i - 1]) / pivot;
        }

        for (int i = n - 1; i > 0; i--) stress[i] = value[i] - (upper[i] * stress[i + 1]);
        return stress;
    }
}
