using Ringwright.Core.Turning.Speed;

namespace Ringwright.Core.Tests.Turning;

public class RotatingStressTests
{
    private const double PoundPerFoot3 = 16.01846337, Ksi = 6.894757, Foot = 0.3048;

    // Singer, Strength of Materials, problem 139: steel 490 lb/ft³, 20 ksi: 435.04 ft/s; 30 ksi: 532.81 ft/s, 6105.54 rpm at 10 in.
    // (weights with g = 32.2 ft/s² make the third digit differ from SI's g)
    [Theory]
    [InlineData(20, 435.04)]
    [InlineData(30, 532.81)]
    public void A_thin_ring_is_Singer_s_problem(double ksi, double feetPerSecond) =>
        Assert.Equal(ksi * Ksi, RotatingStress.ThinRing(490 * PoundPerFoot3, feetPerSecond * Foot), 0.001 * ksi * Ksi);

    // Problem 140 of the same book: 7850 kg/m³, 150 MPa, r 220 mm: 628.33 rad/s (answer from memory).
    [Fact]
    public void A_thin_rim_s_speed()
    {
        double turns = 628.33 * 60 / (2 * Math.PI);
        Assert.Equal(150, RotatingStress.ThinRing(7850, RotatingStress.RimSpeed(220, turns)), 0.05);
        Assert.Equal(150, RotatingStress.Ring(7850, 220, 219.99, turns), 0.1);
    }

    // Thin wooden rings, computed with ρ·v² outside this library.
    [Theory]
    [InlineData(300, 1000, 706, 15.708, 0.1742)]
    [InlineData(400, 1500, 706, 31.416, 0.6968)]
    [InlineData(250, 3000, 616, 39.270, 0.9499)]
    [InlineData(150, 3500, 1120, 27.489, 0.8463)]
    public void Thin_wooden_rings(double diameter, double turns, double density, double speed, double stress)
    {
        Assert.Equal(speed, RotatingStress.RimSpeed(diameter / 2, turns), 5e-4);
        Assert.Equal(stress, RotatingStress.ThinRing(density, speed), 6e-5);
    }

    // Carvill, Mechanical Engineer's Data Handbook, 1.2.7: full disc ρ·v²·(3 + ν)/8; a hole, however small, doubles it.
    [Fact]
    public void A_pinhole_doubles_a_disc_s_stress()
    {
        Assert.Equal(0.4125 * RotatingStress.ThinRing(700, RotatingStress.RimSpeed(100, 2000)), RotatingStress.Disc(700, 100, 2000, 0.3), 1e-12);
        Assert.Equal(2 * RotatingStress.Disc(700, 100, 2000), RotatingStress.Ring(700, 100, 1e-9, 2000), 1e-12);
    }

    [Fact]
    public void Turns_for_a_stress_give_that_stress() =>
        Assert.Equal(1, RotatingStress.Ring(700, 150, 120, RotatingStress.TurnsFor(1, 700, 150, 120)), 1e-12);

    // Common practice, no source: 6 in 1000 to 1500, 12 in 500 to 750 turns a minute.
    [Theory]
    [InlineData(6, 1000, 1500)]
    [InlineData(12, 500, 750)]
    [InlineData(20, 300, 450)]
    public void The_rim_rule(double inches, double low, double high)
    {
        Assert.Equal(low, RimRule.Turns(inches * 25.4, RimRule.Low), 1e-9);
        Assert.Equal(high, RimRule.Turns(inches * 25.4, RimRule.High), 1e-9);
    }
}
