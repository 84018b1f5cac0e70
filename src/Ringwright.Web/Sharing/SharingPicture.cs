using Ringwright.Paper.Labels;
using Ringwright.Paper.Output;

namespace Ringwright.Web.Sharing;

/// <summary>The picture of the code that lets a device in once, for this machine's own page.</summary>
internal static class SharingPicture
{
    private const string Path = SharingPage.Path + "/code.svg";
    private const double Side = 60; // mm; the page shows it as large as it likes

    /// <summary>Its address; another for every link, so that no old one is shown.</summary>
    public static string For(int place, string link) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Path}?place={place}&v={link.GetHashCode(StringComparison.Ordinal):x}");

    public static void MapSharingPicture(this WebApplication app) => app.MapGet(Path, (HttpContext context, LocalSharing sharing, int? place) =>
    {
        if (!context.User.IsOwn()) return Results.Text(SharingPage.OnlyThere, statusCode: StatusCodes.Status403Forbidden);
        if (sharing.Code is not { } code || place is not int at || at < 0 || at >= sharing.Places.Length) return Results.Text("Sharing is off, or not at this place.", statusCode: StatusCodes.Status404NotFound);
        context.Response.Headers.CacheControl = "no-store";
        Uri address = new(SharedEndpoints.Url(sharing.Places[at].Address, sharing.Places[at].Port));
        return Results.Text(SvgWriter.Write(QrPicture.Draw(PairingEndpoints.OnceLink(address, code.Link), Side), "A code that lets one device in"), "image/svg+xml");
    });
}
