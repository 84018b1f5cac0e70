using Ringwright.Web.Drawing;

namespace Ringwright.Web.Tests.Drawing;

public class WoodLookTests
{
    [Fact]
    public void Woods_that_share_a_pattern_get_different_ones_on_one_sheet()
    {
        ImmutableArray<WoodLook> looks = WoodLook.For(["maple", "holly", "padauk", "bloodwood", "Maple"]);
        Assert.Equal(4, looks.Length);
        Assert.Equal(4, looks.Select(l => l.Mark).Distinct().Count());
    }

    [Fact]
    public void Dark_woods_get_light_lines()
    {
        ImmutableArray<WoodLook> looks = WoodLook.For(["maple", "ebony"]);
        Assert.NotEqual(looks[0].Line, looks[1].Line);
    }
}
