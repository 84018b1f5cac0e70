using Ringwright.Core.Sawing;

namespace Ringwright.Core.Tests.Sawing;

public class SandingTests
{
    private const double Off = 0.1;

    // The stated closeness of the facets to the round.
    private const double Proud = 0.002;

    // 2 s / cos a off both flats (design, section 4).
    [Fact]
    public void Even_sanding_keeps_the_angle_and_shortens_both_flats()
    {
        SawRun run = SawSimulator.Run(Example.Job(Example.Sled()) with { Sanding = Sanding.Both(new(Off, Off)) });
        double shorter = 2 * Off / Math.Cos(Example.Half);
        Assert.All(run.Wedges, wedge =>
        {
            Assert.Equal(2 * Example.Half, wedge.Angle, 12);
            Assert.Equal(Example.Rim(1) - shorter, wedge.RimLength(5), 10);
            Assert.Equal(1 - shorter, wedge.TipLength(5), 10);
            Assert.True(wedge.IsCleanedUp);
        });
        double faces = 2 * Off * Example.Thickness * Example.Width / Math.Cos(Example.Half) * Example.Segments;
        Assert.Equal(faces, run.Volumes.SandingDust, 6);
    }

    [Fact]
    public void Sanding_more_at_the_rim_makes_the_wedge_sharper()
    {
        SawRun run = SawSimulator.Run(Example.Job(Example.Sled()) with { Sanding = Sanding.Both(new(Off, 0)) });
        double turned = Math.Atan(Off * Math.Cos(Example.Half) / Example.Width);
        Assert.All(run.Wedges, wedge =>
        {
            Assert.Equal(2 * (Example.Half - turned), wedge.Angle, 12);
            Assert.Equal(1, wedge.TipLength(5), 10);
        });
    }

    [Fact]
    public void One_sided_sanding_turns_one_face()
    {
        var sanding = new Sanding(default, new(0, Off));
        SawnWedge wedge = SawSimulator.Run(Example.Job(Example.Sled()) with { Sanding = sanding }).Wedges[5];
        Assert.Equal((2 * Example.Half) + Math.Atan(Off * Math.Cos(Example.Half) / Example.Width), wedge.Angle, 12);
        Assert.False(wedge.IsCleanedUp);
    }

    // A round of radius r in a corner of interior angle b takes r² (cot(b/2) - (pi - b)/2) of area and r cot(b/2) of length.
    [Theory]
    [InlineData(0.3)]
    [InlineData(0.05)]
    public void Rounding_takes_the_corner_to_a_round(double radius)
    {
        SawJob job = Example.Job(Example.Sled(), 2);
        SawnWedge sharp = SawSimulator.Run(job).Wedges[2];
        SawnWedge round = SawSimulator.Run(job with { Sanding = Sanding.Both(new() { RimRadius = radius, TipRadius = radius }) }).Wedges[2];
        double rim = (Math.PI / 2) - Example.Half;
        double tip = (Math.PI / 2) + Example.Half;
        // Facets at most a step apart: the flats end radius tan(step/2) beyond the round's, at most.
        double step = Math.Min(Math.PI / 4, 2 * Math.Acos(radius / (radius + Proud)));
        double slack = 2 * radius * Math.Tan(step / 2);
        Assert.InRange(round.RimLength(5) - sharp.RimLength(5) + (2 * radius / Math.Tan(rim / 2)), 0, slack);
        Assert.InRange(round.TipLength(5) - sharp.TipLength(5) + (2 * radius / Math.Tan(tip / 2)), 0, slack);
        double lost = 2 * (CornerArea(radius, rim) + CornerArea(radius, tip));
        double taken = sharp.Section(5).Area - round.Section(5).Area;
        Assert.InRange(lost - taken, 0, 2 * Math.PI / step * radius * radius * (Math.Tan(step / 2) - (step / 2)));
        Assert.Equal(2 * Example.Half, round.Angle, 12);
        Geometry.SolidChecks.AssertSound(round.Solid);
    }

    [Fact]
    public void A_sharp_tip_is_rounded_as_one()
    {
        const double radius = 0.2;
        SawJob job = Example.Job(Example.Sled(), 0, 2);
        SawnWedge round = SawSimulator.Run(job with { Sanding = Sanding.Both(new() { TipRadius = radius }) }).Wedges[1];
        (double tip, double rim) = round.Solid.Extent(new(1, 0, 0));
        double shorter = radius * ((1 / Math.Sin(Example.Half)) - 1);
        Assert.Equal(Example.Width - shorter, rim - tip, Proud);
    }

    [Fact]
    public void Sanding_everything_away_leaves_an_empty_wedge_and_no_NaN()
    {
        SawnWedge wedge = SawSimulator.Run(Example.Job(Example.Sled()) with { Sanding = Sanding.Both(new(15, 15) { RimRadius = 1 }) }).Wedges[0];
        Assert.True(wedge.Solid.IsEmpty);
        Assert.True(wedge.Section(5).IsEmpty);
        Assert.Equal(0, wedge.RimLength(5));
        Assert.True(double.IsFinite(wedge.Angle));
    }

    private static double CornerArea(double radius, double angle) =>
        radius * radius * ((1 / Math.Tan(angle / 2)) - ((Math.PI - angle) / 2));
}
