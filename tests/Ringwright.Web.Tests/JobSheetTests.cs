using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;

namespace Ringwright.Web.Tests;

public sealed class JobSheetTests : IDisposable
{
    private readonly TemporaryFolder _data = new();

    public void Dispose() => _data.Dispose();

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Job_sheets_are_offered_where_the_service_is_there_and_nowhere_else(bool there)
    {
        await using WebApplication app = WebServer.Build(0, _data.Path, services =>
        {
            if (there) services.AddSingleton<IJobSheets, NamedSheets>();
        });
        await app.StartAsync(TestContext.Current.CancellationToken);
        using var client = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };
        string page = await client.GetStringAsync("/", TestContext.Current.CancellationToken);
        Assert.Equal(there, page.Contains(PieceEndpoints.JobSheetPath, StringComparison.Ordinal));
        using HttpResponseMessage sheet = await client.GetAsync(PieceEndpoints.JobSheetPath, TestContext.Current.CancellationToken);
        Assert.Equal(there ? HttpStatusCode.OK : HttpStatusCode.NotFound, sheet.StatusCode);
        if (there) Assert.Equal("Two-wood disc in Millimetre", await sheet.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
    }

    private sealed class NamedSheets : IJobSheets
    {
        public byte[] Pdf(Plan plan, MeasureStyle style) => System.Text.Encoding.UTF8.GetBytes($"{plan.Piece.Name} in {style.Unit}");
    }
}
