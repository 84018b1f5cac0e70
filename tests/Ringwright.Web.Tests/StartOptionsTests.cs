using Ringwright.Core;

namespace Ringwright.Web.Tests;

public class StartOptionsTests
{
    [Fact]
    public void Known_words_are_read() => Assert.Equal(new StartOptions(5200, false), StartOptions.Read(["--port", "5200", "--no-browser"]));

    [Fact]
    public void Nothing_said_means_the_usual_port_and_a_browser() => Assert.Equal(new StartOptions(null, true), StartOptions.Read([]));

    [Theory]
    [InlineData("--prot")]
    [InlineData("--port")]
    [InlineData("--port", "70000")]
    [InlineData("--port", "-1")]
    public void Anything_else_is_refused_in_one_sentence(params string[] args) => Assert.Throws<BadInputException>(() => StartOptions.Read(args));
}
