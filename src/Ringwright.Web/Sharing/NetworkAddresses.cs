using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;

namespace Ringwright.Web.Sharing;

/// <summary>The addresses by which other devices on the local network reach this machine.</summary>
internal static class NetworkAddresses
{
    /// <summary>
    /// IPv4 addresses of the interfaces that are up and lead to a router; of all that are up when none does. Addresses that a
    /// machine gives itself for want of a network (RFC 3927) are left out.
    /// </summary>
    public static ImmutableArray<IPAddress> Of()
    {
        (IPAddress Address, bool Routed)[] found =
        [
            .. from adapter in NetworkInterface.GetAllNetworkInterfaces()
               where adapter.OperationalStatus == OperationalStatus.Up && adapter.NetworkInterfaceType != NetworkInterfaceType.Loopback
               let properties = adapter.GetIPProperties()
               let routed = properties.GatewayAddresses.Any(g => g.Address.AddressFamily == AddressFamily.InterNetwork && !g.Address.Equals(IPAddress.Any))
               from unicast in properties.UnicastAddresses
               where unicast.Address.AddressFamily == AddressFamily.InterNetwork && !IsSelfGiven(unicast.Address)
               select (unicast.Address, routed),
        ];
        bool anyRouted = found.Any(f => f.Routed);
        return [.. found.Where(f => f.Routed || !anyRouted).Select(f => f.Address).Distinct()];
    }

    /// <summary>An IPv4 address as such, also when a socket for both versions wrote it as IPv6.</summary>
    public static IPAddress Plain(this IPAddress address) => address.IsIPv4MappedToIPv6 ? address.MapToIPv4() : address;

    private static bool IsSelfGiven(IPAddress address) => address.GetAddressBytes() is [169, 254, ..];
}
