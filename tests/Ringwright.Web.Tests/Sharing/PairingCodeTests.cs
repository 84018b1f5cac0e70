using System.Net;
using Ringwright.Core;
using Ringwright.Web.Sharing;

namespace Ringwright.Web.Tests.Sharing;

public class PairingCodeTests
{
    private readonly SetClock _clock = new();

    [Fact]
    public void It_is_eight_digits_and_another_each_time()
    {
        string[] codes = [.. Enumerable.Range(0, 50).Select(_ => new PairingCode(_clock).Code)];
        Assert.All(codes, c => Assert.Matches("^[0-9]{8}$", c));
        Assert.Equal(50, codes.Distinct().Count());
    }

    [Fact]
    public void It_is_read_with_spaces_and_dashes()
    {
        var pairing = new PairingCode(_clock);
        Assert.True(pairing.Try(pairing.Spoken));
        Assert.True(pairing.Try($" {pairing.Code[..3]}-{pairing.Code[3..]}\t"));
        Assert.False(pairing.Try(pairing.Code[..7]));
    }

    [Fact]
    public void It_ends_by_itself()
    {
        var pairing = new PairingCode(_clock);
        _clock.Now += PairingCode.Holds - TimeSpan.FromSeconds(1);
        Assert.True(pairing.Try(pairing.Code));
        _clock.Now += TimeSpan.FromSeconds(1);
        Assert.False(pairing.Try(pairing.Code));
        Assert.False(pairing.TryLink(pairing.Link));
    }

    [Fact]
    public void Wrong_tries_make_another_for_the_rest_of_the_time()
    {
        var pairing = new PairingCode(_clock);
        (string code, DateTimeOffset until) = (pairing.Code, pairing.Until);
        for (int i = 0; i < PairingCode.WrongTries; i++) pairing.Try("");
        Assert.NotEqual(code, pairing.Code);
        Assert.Equal(until, pairing.Until);
    }

    [Fact]
    public void The_link_has_128_bits_and_works_once()
    {
        var pairing = new PairingCode(_clock);
        string link = pairing.Link;
        Assert.Equal(16, System.Buffers.Text.Base64Url.DecodeFromChars(link).Length);
        Assert.True(pairing.TryLink(link));
        Assert.False(pairing.TryLink(link));
    }

    [Fact]
    public void Devices_are_known_by_their_key_alone_and_are_bounded()
    {
        var devices = new DeviceList();
        (Device first, string key) = devices.Add(" Phone ", IPAddress.Loopback, _clock.Now);
        Assert.Equal("Phone", first.Name);
        Assert.Equal(32, System.Buffers.Text.Base64Url.DecodeFromChars(key).Length);
        Assert.Same(first, devices.Find(key));
        Assert.Null(devices.Find(key[..^1]));
        for (int i = 1; i < DeviceList.Most; i++) devices.Add("", IPAddress.Loopback, _clock.Now);
        Assert.Throws<BadInputException>(() => devices.Add("", IPAddress.Loopback, _clock.Now));
        devices.Remove(first.Id);
        Assert.True(first.Ended.IsCancellationRequested);
        Assert.Null(devices.Find(key));
        Assert.Throws<BadInputException>(() => DeviceList.CheckedName("a\u0007b"));
    }

    private sealed class SetClock : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = new(2026, 5, 4, 10, 0, 0, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
