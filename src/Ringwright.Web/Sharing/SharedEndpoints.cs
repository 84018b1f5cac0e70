using System.Globalization;
using System.Net;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace Ringwright.Web.Sharing;

/// <summary>
/// The addresses that the running server listens on besides its own machine's. Kestrel follows this configuration: an address that
/// is added is listened on, one that is taken away is closed, and nothing is restarted.
/// </summary>
internal sealed class SharedEndpoints : ConfigurationProvider, IConfigurationSource
{
    /// <summary>The most addresses that are listened on at once.</summary>
    public const int Most = 8;

    private readonly ConnectionLimit _limit = new();

    /// <summary>Lets a server follow.</summary>
    public void Bind(KestrelServerOptions kestrel)
    {
        var loader = kestrel.Configure(new ConfigurationBuilder().Add(this).Build(), reloadOnChange: true);
        for (int i = 0; i < Most; i++) loader.Endpoint(Name(i), endpoint => _limit.Guard(endpoint.ListenOptions));
    }

    /// <summary>Listens on these addresses and on no others besides the own machine's.</summary>
    public void Listen(IEnumerable<IPAddress> addresses, int port)
    {
        Data = addresses.Take(Most).Index().ToDictionary(
            a => $"Endpoints:{Name(a.Index)}:Url",
            string? (a) => Url(a.Item, port),
            StringComparer.OrdinalIgnoreCase);
        OnReload();
    }

    /// <summary>The address as a link.</summary>
    public static string Url(IPAddress address, int port) => string.Create(CultureInfo.InvariantCulture, $"http://{address}:{port}");

    IConfigurationProvider IConfigurationSource.Build(IConfigurationBuilder builder) => this;

    private static string Name(int index) => string.Create(CultureInfo.InvariantCulture, $"Shared{index}");
}
