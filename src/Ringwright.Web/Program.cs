using Ringwright.Core;
using Ringwright.Store;
using Ringwright.Web;
using Ringwright.Web.Sharing;

try
{
    StartOptions options = StartOptions.Read(args);
    if (options.Version)
    {
        Console.WriteLine($"Ringwright {AppVersion.Text}");
        return 0;
    }

    WebApplication app = WebServer.Build(options.FreePort(), UserFolder.Usual());
    await app.StartAsync();
    string address = app.Urls.First();
    LocalSharing sharing = app.Services.GetRequiredService<LocalSharing>();
    if (options.Share) await sharing.Start(options.ShareAt);
    Console.WriteLine($"Ringwright is open at {address} ({(sharing.IsOn ? "this machine" : "this machine only")}). Ctrl+C ends it.");
    if (sharing is { Address: { } shared, Code: { } code })
        Console.WriteLine($"It is shared at {shared.GetLeftPart(UriPartial.Authority)}: type {code.Spoken} there, until {code.Until.ToLocalTime():HH:mm}. Not encrypted: only on a network you trust. More at {address}{SharingPage.Path}");
    if (options.OpenBrowser) Browser.Open(address);
    await app.WaitForShutdownAsync();
    return 0;
}
catch (BadInputException e)
{
    Console.Error.WriteLine(e.Message);
    return 2;
}
