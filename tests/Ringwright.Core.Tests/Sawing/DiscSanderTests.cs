using Ringwright.Core.Sawing;

namespace Ringwright.Core.Tests.Sawing;

public class DiscSanderTests
{
    private const double Lean = 0.3 * Example.Degree;

    [Fact]
    public void Truing_gives_the_fences_angle_and_the_wanted_size_whatever_the_saw_did()
    {
        var fence = new Fence(Example.Half, 0.1 * Example.Degree);
        SawRun run = SawSimulator.Run(Rough() with { Sander = new(fence, 0.6) });
        Assert.All(run.Wedges, wedge =>
        {
            Assert.Equal(2 * fence.True, wedge.Angle, 12);
            Assert.Equal(Example.Rim(1), wedge.RimLength(5), 10);
            Assert.True(wedge.IsCleanedUp);
            Assert.True(wedge.AsSawn.Volume > wedge.Solid.Volume);
        });
    }

    [Fact]
    public void Too_little_oversize_leaves_sawn_wood_on_a_face()
    {
        SawRun run = SawSimulator.Run(Rough() with { Sander = new(new(Example.Half), 0) });
        Assert.Contains(run.Wedges, wedge => !wedge.IsCleanedUp);
        Assert.All(run.Wedges, wedge => Geometry.SolidChecks.AssertSound(wedge.Solid));
    }

    [Fact]
    public void Turned_over_between_its_faces_table_lean_shears_all_wedges_alike()
    {
        SawRun run = SawSimulator.Run(Rough() with { Sander = new(new(Example.Half), 0.6) { TableLean = Lean } });
        for (int i = 1; i < run.Wedges.Length; i++)
        {
            Assert.Equal(0, run.Wedges[i].Taper, 12);
            Assert.Equal(0, run.Wedges[i - 1].PlusFace.Normal.Z + run.Wedges[i].MinusFace.Normal.Z, 12);
        }
    }

    [Fact]
    public void Never_turned_over_table_lean_tapers_every_wedge()
    {
        var sander = new DiscSander(new(Example.Half), 0.6) { TableLean = Lean, TurnedOver = false };
        SawRun run = SawSimulator.Run(Rough() with { Sander = sander });
        Assert.All(run.Wedges, wedge => Assert.Equal(2 * Math.Tan(Lean), wedge.Taper, 12));
    }

    private static SawJob Rough() => Example.Leaning(Example.Sled(Example.Half + 0.004, Example.Half - 0.001), 0.002) with
    {
        Variation = new() { SeatingDeviation = 0.1 * Example.Degree, StopDeviation = 0.05 },
        Seed = 11,
    };
}
