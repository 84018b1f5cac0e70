using System.Net;
using Ringwright.Core;

namespace Ringwright.Web.Tests;

public class StartOptionsTests
{
    [Fact]
    public void Known_words_are_read() => Assert.Equal(new StartOptions(5200, false), StartOptions.Read(["--port", "5200", "--no-browser"]));

    [Fact]
    public void Nothing_said_means_the_usual_port_and_a_browser() => Assert.Equal(new StartOptions(null, true), StartOptions.Read([]));

    [Fact]
    public void Sharing_is_asked_for_with_or_without_an_address()
    {
        Assert.Equal((true, (IPAddress?)null, false), Shared("--share", "--no-browser"));
        Assert.Equal((true, IPAddress.Parse("192.168.1.20"), true), Shared("--share", "192.168.1.20"));
        Assert.False(StartOptions.Read([]).Share);

        static (bool, IPAddress?, bool) Shared(params string[] args) => StartOptions.Read(args) is var o ? (o.Share, o.ShareAt, o.OpenBrowser) : default;
    }

    [Fact]
    public void The_version_is_asked_for()
    {
        Assert.True(StartOptions.Read(["--version"]).Version);
        Assert.Matches(@"^\d+\.\d+\.\d+$", AppVersion.Text);
    }

    [Theory]
    [InlineData("--share", "5")]
    [InlineData("--share", "0.0.0.0")]
    [InlineData("--share", "127.0.0.1")]
    [InlineData("--share", "shop.example")]
    [InlineData("--prot")]
    [InlineData("--port")]
    [InlineData("--port", "70000")]
    [InlineData("--port", "-1")]
    public void Anything_else_is_refused_in_one_sentence(params string[] args) => Assert.Throws<BadInputException>(() => StartOptions.Read(args));
}
