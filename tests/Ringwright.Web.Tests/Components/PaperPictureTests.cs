using Ringwright.Core.Planning;
using Ringwright.Paper.Output;
using Ringwright.Paper.Pictures;
using Ringwright.Web.Components;

namespace Ringwright.Web.Tests.Components;

/// <summary>Pictures of the paper keep to the page's rules.</summary>
public class PaperPictureTests
{
    [Fact]
    public void No_picture_brings_styles_or_ids_into_the_page()
    {
        Plan plan = Example.Sheet.Good;
        foreach (PlanView view in PlanView.Of(plan, plan.Rings[0]))
        {
            string page = PaperPicture.ForPage(SvgWriter.Write(view.Draw(plan, plan.Rings[0], Example.Sheet.Style), view.Shows));
            Assert.DoesNotContain(" style=", page, StringComparison.Ordinal);
            Assert.DoesNotContain(" id=", page, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(0, "0:00")]
    [InlineData(59.9, "0:59")]
    [InlineData(600, "10:00")]
    [InlineData(3661, "1:01:01")]
    [InlineData(-75, "−1:15")]
    public void A_clock_reads_in_minutes_and_seconds(double seconds, string text) => Assert.Equal(text, BigClock.Text(seconds));
}
