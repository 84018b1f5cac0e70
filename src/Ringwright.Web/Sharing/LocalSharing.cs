using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http.Features;
using Ringwright.Core;

namespace Ringwright.Web.Sharing;

/// <summary>
/// Whether and how the app is shared on the local network: off at every start, and then with a code for each device. Thread-safe;
/// <see cref="Changed"/> is raised outside the lock.
/// </summary>
internal sealed class LocalSharing(SharedEndpoints endpoints, IServer server, TimeProvider clock)
{
    private const int PortsToTry = 50;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    private readonly Lock _lock = new();
    private readonly SemaphoreSlim _turning = new(1, 1);
    private PairingCode? _pairing;
    private DeviceList _devices = new();

    /// <summary>Raised after every change of what is shown about sharing.</summary>
    public event Action? Changed;

    /// <summary>Where it is shared; empty when it is not.</summary>
    public ImmutableArray<IPEndPoint> Places { get; private set; } = [];

    /// <summary>Whether it is shared.</summary>
    public bool IsOn => !Places.IsEmpty;

    /// <summary>The address that labels and codes lead to; null when it is not shared.</summary>
    public Uri? Address => Places is [IPEndPoint first, ..] ? new(SharedEndpoints.Url(first.Address, first.Port)) : null;

    /// <summary>The devices that were let in.</summary>
    public ImmutableArray<Device> Devices
    {
        get
        {
            lock (_lock) return _devices.All;
        }
    }

    /// <summary>The code at present, and whether it holds still; null when it is not shared.</summary>
    public (string Spoken, string Link, DateTimeOffset Until, bool IsOver)? Code
    {
        get
        {
            lock (_lock) return _pairing is { } p ? (p.Spoken, p.Link, p.Until, p.IsOver) : null;
        }
    }

    /// <summary>Starts sharing.</summary>
    /// <param name="asked">The one address to share at; null for all by which the local network reaches this machine.</param>
    /// <exception cref="BadInputException">There is no such address, or no port is free there.</exception>
    public async Task Start(IPAddress? asked = null)
    {
        await _turning.WaitAsync();
        try
        {
            if (IsOn) return;
            ImmutableArray<IPAddress> addresses = asked is null ? [.. NetworkAddresses.Of().Take(SharedEndpoints.Most)] : [asked];
            if (addresses.IsEmpty) throw new BadInputException("sharing", "this machine is on no network", "connect it to your network first");
            int port = FreePort(addresses);
            endpoints.Listen(addresses, port);
            await Opened(addresses, port);
            lock (_lock)
            {
                _devices = new();
                _pairing = new(clock);
                Places = [.. addresses.Select(a => new IPEndPoint(a, port))];
            }
        }
        finally
        {
            _turning.Release();
        }

        Changed?.Invoke();
    }

    /// <summary>Stops sharing: no address but the own machine's is listened on, and every device is let go.</summary>
    public async Task Stop()
    {
        await _turning.WaitAsync();
        try
        {
            ImmutableArray<Device> gone;
            lock (_lock)
            {
                gone = _devices.All;
                Places = [];
                _pairing = null;
                _devices = new();
            }

            foreach (Device device in gone) device.Dispose();
            endpoints.Listen([], 0);
        }
        finally
        {
            _turning.Release();
        }

        Changed?.Invoke();
    }

    /// <summary>Makes a new code and link.</summary>
    public void RenewCode()
    {
        lock (_lock)
            if (_pairing is not null) _pairing = new(clock);
        Changed?.Invoke();
    }

    /// <summary>Lets a device in that shows the right code, or the right link's secret.</summary>
    /// <returns>The key that the device shows from now on.</returns>
    /// <exception cref="BadInputException">Code, link or name cannot be used; one sentence for the device.</exception>
    public string LetIn(string? code, string? link, string name, IPAddress address)
    {
        try
        {
            lock (_lock)
            {
                if (_pairing is null) throw new BadInputException("pairing", "sharing is off", "start it on the machine that Ringwright runs on");
                DeviceList.CheckedName(name);
                if (_pairing.IsOver) throw new BadInputException("code", "its time is over", "have a new one shown on the machine that shares");
                if (link is not null && !_pairing.TryLink(link)) throw new BadInputException("link", "it was used already or is of another time", "type the code that the machine shows, or read its new picture");
                if (link is null && !_pairing.Try(code ?? "")) throw new BadInputException("code", "it is not the one that is shown", $"after {PairingCode.WrongTries} wrong ones it changes; look again and type its {PairingCode.Digits} digits");
                return _devices.Add(name, address, clock.GetUtcNow()).Key;
            }
        }
        finally
        {
            Changed?.Invoke();
        }
    }

    /// <summary>The device that shows a key, noted as seen; null when there is none.</summary>
    public Device? Recognise(string? key)
    {
        if (string.IsNullOrEmpty(key)) return null;
        lock (_lock)
        {
            Device? device = _devices.Find(key);
            device?.Seen(clock.GetUtcNow());
            return device;
        }
    }

    /// <summary>Removes a device and ends all that it has open.</summary>
    public void Remove(int id)
    {
        lock (_lock) _devices.Remove(id);
        Changed?.Invoke();
    }

    // The own port where it is free there too, so that there is one number to remember.
    private int FreePort(ImmutableArray<IPAddress> addresses)
    {
        int own = new Uri(Listened().First()).Port;
        foreach (int port in Enumerable.Range(own, PortsToTry).Where(p => p <= IPEndPoint.MaxPort))
            if (addresses.All(a => CanListen(a, port))) return port;
        throw new BadInputException("sharing", $"nothing can listen at {string.Join(", ", addresses)}", "name an address of this machine, such as one that its network settings show");
    }

    private static bool CanListen(IPAddress address, int port)
    {
        try
        {
            using var probe = new TcpListener(address, port);
            probe.Start();
            return true;
        }
        catch (SocketException)
        {
            return false;
        }
    }

    // The server follows its configuration in the background.
    private async Task Opened(ImmutableArray<IPAddress> addresses, int port)
    {
        string[] wanted = [.. addresses.Select(a => SharedEndpoints.Url(a, port))];
        long begin = clock.GetTimestamp();
        while (!wanted.All(Listened().Contains))
        {
            if (clock.GetElapsedTime(begin) > Patience)
            {
                endpoints.Listen([], 0);
                throw new BadInputException("sharing", $"the server did not begin to listen at {string.Join(", ", wanted)}", "try again, or name another address");
            }

            await Task.Delay(20);
        }
    }

    private ICollection<string> Listened() => server.Features.GetRequiredFeature<IServerAddressesFeature>().Addresses;
}
