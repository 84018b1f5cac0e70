using Ringwright.Core.Pieces;

namespace Ringwright.Web.Tests;

public class ExampleTests
{
    [Fact]
    public void The_example_is_a_24_segment_disc_of_19_mm_in_two_woods_with_a_bore_of_7_mm()
    {
        WedgeDisc disc = Assert.IsType<WedgeDisc>(Assert.Single(Example.Piece.Rings));
        Assert.Equal(24, disc.Segments);
        Assert.Equal(19, disc.Outside.Millimetres);
        Assert.Equal(7, disc.Bore!.Value.Millimetres);
        Assert.Equal(0, disc.Allowance!.Value.Millimetres);
        Assert.Equal(["maple", "padauk"], disc.Woods);
        Assert.Null(disc.Tip);
    }
}
