using System.Net;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.HostFiltering;
using Ringwright.Core.Boards;
using Ringwright.Stock.Boards;
using Ringwright.Web.Bench;
using Ringwright.Web.Floor;
using Ringwright.Web.Frame;
using Ringwright.Web.Library;
using Ringwright.Web.Printing;
using Ringwright.Web.Saving;
using Ringwright.Web.Security;
using Ringwright.Web.Sharing;
using Ringwright.Web.Stage;
using Ringwright.Web.Stations;
using Ringwright.Web.Viewing;

namespace Ringwright.Web;

/// <summary>Puts the app together.</summary>
internal static class WebServer
{
    /// <summary>The largest piece file that is read, in bytes; some thousand rings.</summary>
    public const int LargestFile = 4 * 1024 * 1024;

    // One keystroke or a part of an uploaded file; a circuit needs no more at once.
    private const int LargestMessage = 64 * 1024;

    // Circuits of pages that were closed or lost; each is kept for some minutes, for the page to come back to.
    private const int MostLeftCircuits = 32;

    public static WebApplication Build(int port, string dataFolder)
    {
        var shared = new SharedEndpoints();
        WebApplicationBuilder builder = WebApplication.CreateBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory, ApplicationName = "Ringwright.Web" });
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = LargestFile;
            kestrel.Listen(IPAddress.Loopback, port);
            shared.Bind(kestrel);
        });
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        // A page left open over a restart still has the old run's token; it gets a new one, and that is no error.
        builder.Logging.AddFilter("Microsoft.AspNetCore.Antiforgery", LogLevel.None);
        // Keys live in memory only; nothing is persisted that would need encrypting.
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        builder.Services.AddSingleton(shared);
        AddServices(builder.Services, dataFolder);
        WebApplication app = builder.Build();
        Use(app);
        return app;
    }

    private static void AddServices(IServiceCollection services, string dataFolder)
    {
        // Which hosts are ours depends on where a request comes in: KnownHosts.
        services.Configure<HostFilteringOptions>(o =>
        {
            o.AllowedHosts = ["*"];
            o.AllowEmptyHosts = false;
        });
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton<LocalSharing>();
        services.AddShareLimits();
        services.AddDataProtection().UseEphemeralDataProtectionProvider();
        services.AddAntiforgery(o => o.SuppressXFrameOptionsHeader = true);
        services.AddRazorComponents().AddInteractiveServerComponents(o => o.DisconnectedCircuitMaxRetained = MostLeftCircuits).AddHubOptions(o => o.MaximumReceiveMessageSize = LargestMessage);
        services.AddSingleton(_ => new PieceShelf(dataFolder));
        string examples = Path.Combine(AppContext.BaseDirectory, "examples");
        services.AddSingleton(_ => new Examples(examples));
        services.AddSingleton(s => StartState.From(s.GetRequiredService<PieceShelf>(), Path.Combine(examples, "two-wood-disc.json")));
        services.AddSingleton(s => new Workbench(s.GetRequiredService<StartState>().Sheet));
        services.AddScoped<StageLook>();
        services.AddScoped<Painter>();
        services.AddScoped<StationLook>();
        services.AddSingleton(s => new ShopFloor(s.GetRequiredService<StartState>().Unwritable is null ? dataFolder : null, TimeProvider.System));
        services.AddSingleton<FloorNumbers>();
        services.AddSingleton<ViewerStore>();
        services.AddSingleton<IBoardPlanner>(_ => new BoardPlanner());
        services.AddSingleton<RackDesk>();
        services.AddSingleton<GlueDesk>();
        services.AddSingleton<PrintChoices>();
        services.AddSingleton<AutoSave>();
        services.AddHostedService(s => s.GetRequiredService<AutoSave>());
    }

    private static void Use(WebApplication app)
    {
        app.UseResponseHeaders();
        app.UseSentences();
        app.UseKnownHosts();
        app.UseWebSockets();
        app.UseOwnOriginOnly();
        app.UseVisitor();
        app.UseRateLimiter();
        app.UseShareGate();
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapPieces();
        app.MapDeskFiles();
        app.MapPairing();
        app.MapSharingPicture();
        app.MapViewer();
        app.MapFloor();
        // Our own headers say who may frame the page.
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(o => o.ContentSecurityFrameAncestorsPolicy = null);
    }
}
