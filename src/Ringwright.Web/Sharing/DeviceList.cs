using System.Buffers.Text;
using System.Net;
using System.Security.Cryptography;
using System.Text;
using Ringwright.Core;

namespace Ringwright.Web.Sharing;

/// <summary>
/// The devices that were let in. Of a device's key only the SHA-256 is kept, in memory; the key has 256 random bits, so no salt
/// and no slow hash is needed. Not thread-safe.
/// </summary>
internal sealed class DeviceList
{
    /// <summary>The most devices at once.</summary>
    public const int Most = 12;

    /// <summary>The most letters of a device's name.</summary>
    public const int MostLetters = 40;

    private const int KeyBytes = 32;

    private readonly Dictionary<string, Device> _byHash = new(StringComparer.Ordinal);
    private int _count;

    /// <summary>All of them, in the order they were let in.</summary>
    public ImmutableArray<Device> All => [.. _byHash.Values.OrderBy(d => d.Id)];

    /// <summary>Lets a device in.</summary>
    /// <param name="name">What it shall be called; empty for a name of its number.</param>
    /// <param name="address">Where it is.</param>
    /// <param name="now">When that is.</param>
    /// <returns>The device, and the key that it shows from now on.</returns>
    /// <exception cref="BadInputException">The name cannot be used, or there are too many devices.</exception>
    public (Device Device, string Key) Add(string name, IPAddress address, DateTimeOffset now)
    {
        string called = CheckedName(name);
        if (_byHash.Count >= Most) throw new BadInputException("devices", $"{Most} are let in already", "remove one on the machine that shares");
        string key = Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(KeyBytes));
        var device = new Device(++_count, called.Length == 0 ? $"Device {_count}" : called, address, now);
        _byHash.Add(Hash(key), device);
        return (device, key);
    }

    /// <summary>The device that shows a key; null when there is none.</summary>
    public Device? Find(string key) => _byHash.GetValueOrDefault(Hash(key));

    /// <summary>Removes a device and ends all that it has open.</summary>
    public void Remove(int id)
    {
        foreach ((string hash, Device device) in _byHash.Where(d => d.Value.Id == id).ToArray())
        {
            _byHash.Remove(hash);
            device.Dispose();
        }
    }

    /// <summary>A device's name, checked before a code is used up for it.</summary>
    /// <exception cref="BadInputException">It is too long, or has signs that cannot be shown.</exception>
    public static string CheckedName(string name)
    {
        string trimmed = name.Trim();
        if (trimmed.Length > MostLetters) throw new BadInputException("name of the device", $"it has {trimmed.Length} letters", $"{MostLetters} at most are needed");
        return trimmed.EnumerateRunes().All(r => !Rune.IsControl(r) && r != Rune.ReplacementChar)
            ? trimmed
            : throw new BadInputException("name of the device", "it has signs that cannot be shown", "letters, digits and spaces are needed");
    }

    private static string Hash(string key) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(key)));
}
