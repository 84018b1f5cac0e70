using Ringwright.Core;
using Ringwright.Store;
using Ringwright.Web;

try
{
    StartOptions options = StartOptions.Read(args);
    WebApplication app = WebServer.Build(options.FreePort(), UserFolder.Usual());
    await app.StartAsync();
    string address = app.Urls.First();
    Console.WriteLine($"Ringwright is open at {address} (this machine only). Ctrl+C ends it.");
    if (options.OpenBrowser) Browser.Open(address);
    await app.WaitForShutdownAsync();
    return 0;
}
catch (BadInputException e)
{
    Console.Error.WriteLine(e.Message);
    return 2;
}
