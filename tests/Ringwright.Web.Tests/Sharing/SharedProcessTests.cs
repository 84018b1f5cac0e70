using System.Net;
using System.Text.RegularExpressions;
using Ringwright.Web.Tests.Browser;

namespace Ringwright.Web.Tests.Sharing;

/// <summary>The app as it is started from a shell to be shared at once.</summary>
public sealed class SharedProcessTests : IDisposable
{
    private readonly TemporaryFolder _data = new();

    public void Dispose() => _data.Dispose();

    [Fact]
    public async Task It_says_where_it_is_shared_and_by_which_code_and_answers_there()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() || OperatingSystem.IsWindows(), "Only 127.0.0.1 of the loopback addresses is usual on this system.");
        using AppProcess app = await AppProcess.Start(_data.Path, "--share", "127.0.0.2");
        Match said = Regex.Match(await app.Line() ?? "", @"It is shared at (http://127\.0\.0\.2:\d+): type (\d{4} \d{4}) there");
        Assert.True(said.Success);
        using var client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false });
        using HttpResponseMessage answer = await client.GetAsync(new Uri(said.Groups[1].Value), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.StartsWith("/pair", answer.Headers.Location!.ToString(), StringComparison.Ordinal);
    }
}
