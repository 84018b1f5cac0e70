using CsCheck;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Tests.Measures;

public class AngleTests
{
    [Theory]
    [InlineData("7.5°", 7.5)]
    [InlineData("7,5 deg", 7.5)]
    [InlineData("10", 10)]
    [InlineData("7°30'", 7.5)]
    [InlineData("7° 30′ 36″", 7.51)]
    [InlineData("-0.05°", -0.05)]
    [InlineData("-1° 30'", -1.5)]
    public void Reads_angles(string text, double degrees)
    {
        Assert.True(Angle.TryParse(text, out Angle angle, out _));
        Assert.Equal(degrees, angle.Degrees, 1e-12);
    }

    [Theory]
    [InlineData("")]
    [InlineData("steep")]
    [InlineData("7° 61'")]
    [InlineData("7° 30")]
    [InlineData("720°")]
    [InlineData("7° 30' 10")]
    public void Refuses_what_is_no_angle(string text) => Assert.False(Angle.TryParse(text, out _, out _));

    [Fact]
    public void Written_text_reads_back() =>
        Gen.Double[-360, 360].Sample(degrees =>
            Angle.TryParse(Angle.FromDegrees(Math.Round(degrees, 5)).Written, out Angle again, out _) && Math.Abs(again.Degrees - degrees) < 1e-5);
}
