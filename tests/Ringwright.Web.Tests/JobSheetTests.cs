using Microsoft.AspNetCore.Builder;

namespace Ringwright.Web.Tests;

public sealed class JobSheetTests : IDisposable
{
    private readonly TemporaryFolder _data = new();

    public void Dispose() => _data.Dispose();

    [Fact]
    public async Task The_page_offers_the_job_sheet_and_it_is_a_pdf_of_several_pages()
    {
        await using WebApplication app = WebServer.Build(0, _data.Path);
        await app.StartAsync(TestContext.Current.CancellationToken);
        using var client = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };
        string page = await client.GetStringAsync("/print", TestContext.Current.CancellationToken);
        Assert.Contains(PieceEndpoints.JobSheetPath, page, StringComparison.Ordinal);
        byte[] pdf = await client.GetByteArrayAsync(PieceEndpoints.JobSheetPath, TestContext.Current.CancellationToken);
        Assert.Equal("%PDF"u8.ToArray(), pdf[..4]);
        Assert.True(pdf.Length > 10_000, $"{pdf.Length} bytes");
    }
}
