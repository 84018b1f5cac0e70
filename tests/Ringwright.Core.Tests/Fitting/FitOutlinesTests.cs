using Ringwright.Core.Fitting;
using Ringwright.Core.Geometry;

namespace Ringwright.Core.Tests.Fitting;

/// <summary>The picture of a fit with wider gaps.</summary>
public class FitOutlinesTests
{
    private static readonly DryFitResult Fit = DryFitSolver.Fit(DryFitRings.Equal(12, 40, 15, 0.05));

    [Theory]
    [InlineData(1)]
    [InlineData(10)]
    [InlineData(100)]
    public void Gaps_are_drawn_wider_by_the_factor_and_touching_corners_stay_together(double factor)
    {
        var outlines = FitOutlines.Draw(Fit, top: false, factor);
        for (int i = 0; i < 12; i++)
        {
            // Corners of a caliper wedge: tip -, rim -, rim +, tip +.
            Vector2D rimGap = outlines[(i + 1) % 12][1] - outlines[i][2];
            Vector2D tipGap = outlines[(i + 1) % 12][0] - outlines[i][3];
            Assert.Equal(factor * Fit.Joints[i].RimBottom, rimGap.Length, 0.01 * factor * Fit.Joints[i].RimBottom);
            Assert.InRange(tipGap.Length, 0, 0.01 * factor * Fit.Joints[i].RimBottom); // tips may slide along each other a little
        }
    }

    [Fact]
    public void The_suggested_factor_shows_the_gap_and_leaves_the_wedge()
    {
        double factor = FitOutlines.SuggestFactor(Fit);
        Assert.InRange(factor * Fit.Summary.WorstGap, Fit.Summary.BandLength / 12 / 10, Fit.Summary.BandLength / 12 / 3);
    }

    [Fact]
    public void A_factor_below_one_is_refused() => Assert.Throws<BadInputException>(() => FitOutlines.Draw(Fit, top: false, 0.5));
}
