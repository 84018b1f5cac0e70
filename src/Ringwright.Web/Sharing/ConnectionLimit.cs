using System.Net;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace Ringwright.Web.Sharing;

/// <summary>Bounds how many connections other devices hold open, so that none can shut out the rest or the machine itself. Thread-safe.</summary>
internal sealed class ConnectionLimit
{
    // A browser opens six connections for pages and one for each window's circuit.
    private const int MostOfOne = 24, MostOfAll = 192;

    private readonly Lock _lock = new();
    private readonly Dictionary<IPAddress, int> _open = [];
    private int _all;

    /// <summary>Guards an endpoint.</summary>
    public void Guard(ListenOptions endpoint) => endpoint.Use(next => connection => Hold(connection, next));

    private async Task Hold(ConnectionContext connection, ConnectionDelegate next)
    {
        IPAddress from = (connection.RemoteEndPoint as IPEndPoint)?.Address.Plain() ?? IPAddress.None;
        if (!Enter(from))
        {
            connection.Abort();
            return;
        }

        try
        {
            await next(connection);
        }
        finally
        {
            Leave(from);
        }
    }

    private bool Enter(IPAddress from)
    {
        lock (_lock)
        {
            int own = _open.GetValueOrDefault(from);
            if (own >= MostOfOne || _all >= MostOfAll) return false;
            _open[from] = own + 1;
            _all++;
            return true;
        }
    }

    private void Leave(IPAddress from)
    {
        lock (_lock)
        {
            _all--;
            if (--_open[from] == 0) _open.Remove(from);
        }
    }
}
