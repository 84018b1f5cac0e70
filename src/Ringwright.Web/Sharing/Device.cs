using System.Net;

namespace Ringwright.Web.Sharing;

/// <summary>A device that was let in. Thread-safe.</summary>
internal sealed class Device : IDisposable
{
    /// <summary>Windows that one device may have open.</summary>
    public const int MostWindows = 6;

    private readonly CancellationTokenSource _ending = new();
    private int _windows;
    private long _lastSeen;

    /// <summary>Lets a device in.</summary>
    /// <param name="id">Its number, from 1, since sharing began.</param>
    /// <param name="name">What it is called on the page.</param>
    /// <param name="address">Where it was let in from.</param>
    /// <param name="since">When it was let in.</param>
    public Device(int id, string name, IPAddress address, DateTimeOffset since)
    {
        (Id, Name, Address, _lastSeen) = (id, name, address, since.UtcTicks);
        Ended = _ending.Token;
    }

    public int Id { get; }

    public string Name { get; }

    public IPAddress Address { get; }

    /// <summary>When it last asked for anything.</summary>
    public DateTimeOffset LastSeen => new(Interlocked.Read(ref _lastSeen), TimeSpan.Zero);

    /// <summary>Cancelled when the device is removed or sharing stops.</summary>
    public CancellationToken Ended { get; }

    /// <summary>Notes that it asked for something.</summary>
    public void Seen(DateTimeOffset now) => Interlocked.Exchange(ref _lastSeen, now.UtcTicks);

    /// <summary>Counts one window more; false when it has as many as it may.</summary>
    public bool OpenWindow()
    {
        if (Interlocked.Increment(ref _windows) <= MostWindows) return true;
        CloseWindow();
        return false;
    }

    /// <summary>Counts one window fewer.</summary>
    public void CloseWindow() => Interlocked.Decrement(ref _windows);

    /// <summary>Ends all that it has open.</summary>
    public void Dispose()
    {
        _ending.Cancel();
        _ending.Dispose();
    }
}
