using System.Globalization;
using System.Net;
using System.Net.Sockets;
using Ringwright.Core;

namespace Ringwright.Web;

/// <summary>What the command line asks for.</summary>
/// <param name="Port">The port to listen on; null for the usual one or the next that is free.</param>
/// <param name="OpenBrowser">Whether to open the page in the user's browser.</param>
internal sealed record StartOptions(int? Port, bool OpenBrowser)
{
    private const string Known = "--port N, --no-browser, --share [ADDRESS] and --version are known";

    /// <summary>Whether to share on the local network at once.</summary>
    public bool Share { get; init; }

    /// <summary>Whether only the version is asked for.</summary>
    public bool Version { get; init; }

    /// <summary>The one address to share at; null for all by which the local network reaches this machine.</summary>
    public IPAddress? ShareAt { get; init; }

    private const int UsualPort = 5177;
    private const int PortsToTry = 50;

    /// <summary>Reads <c>--port N</c>, <c>--no-browser</c>, <c>--share [ADDRESS]</c> and <c>--version</c>.</summary>
    /// <exception cref="BadInputException">Anything else.</exception>
    public static StartOptions Read(string[] args)
    {
        var options = new StartOptions(null, true);
        for (int i = 0; i < args.Length; i++)
        {
            options = args[i] switch
            {
                "--no-browser" => options with { OpenBrowser = false },
                "--version" => options with { Version = true },
                "--port" => options with { Port = ReadPort(i + 1 < args.Length ? args[++i] : "") },
                "--share" => options with { Share = true, ShareAt = i + 1 < args.Length && !args[i + 1].StartsWith("--", StringComparison.Ordinal) ? ReadAddress(args[++i]) : null },
                _ => throw new BadInputException("command line", $"“{args[i]}” is unknown", Known),
            };
        }

        return options;
    }

    /// <summary>The port asked for, or the first free one from the usual one on.</summary>
    /// <exception cref="BadInputException">It is taken, or all are.</exception>
    public int FreePort()
    {
        if (Port is int asked)
            return IsFree(asked) ? asked : throw new BadInputException("--port", $"port {asked} is taken", "leave --port away and the next free one is used");
        foreach (int port in Enumerable.Range(UsualPort, PortsToTry))
            if (IsFree(port)) return port;
        throw new BadInputException("port", $"all from {UsualPort} to {UsualPort + PortsToTry - 1} are taken", "name a free one with --port N");
    }

    private static int ReadPort(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int port) && port <= IPEndPoint.MaxPort
            ? port
            : throw new BadInputException("--port", $"“{text}” is no port", "a number from 0 (any free port) to 65535 is needed");

    // Four numbers: the parser alone would also take "5" for an address.
    private static IPAddress ReadAddress(string text) =>
        text.Count(c => c == '.') == 3 && IPAddress.TryParse(text, out IPAddress? address) && address.AddressFamily == AddressFamily.InterNetwork && !address.Equals(IPAddress.Any) && !address.Equals(IPAddress.Loopback)
            ? address
            : throw new BadInputException("--share", $"“{text}” is no address to share at", "an IPv4 address of this machine on your network is needed, such as 192.168.1.20, or none for all of them");

    private static bool IsFree(int port)
    {
        try
        {
            using var probe = new TcpListener(IPAddress.Loopback, port);
            probe.Start();
            return true;
        }
        catch (SocketException)
        {
            return false;
        }
    }
}
