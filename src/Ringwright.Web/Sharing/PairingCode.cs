using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace Ringwright.Web.Sharing;

/// <summary>
/// The code that is typed on a device to let it in, and the secret of a link that does the same once. Both hold for some minutes;
/// wrong tries use the code up, and a new one takes its place for the rest of the time. Not thread-safe.
/// </summary>
internal sealed class PairingCode(TimeProvider clock)
{
    /// <summary>Digits of the code: one in a hundred million.</summary>
    public const int Digits = 8;

    /// <summary>Wrong tries after which the code is another.</summary>
    public const int WrongTries = 5;

    private const int LinkBytes = 16; // 128 bit

    /// <summary>How long it holds.</summary>
    public static readonly TimeSpan Holds = TimeSpan.FromMinutes(10);

    private int _wrong;

    /// <summary>The code.</summary>
    public string Code { get; private set; } = NewCode();

    /// <summary>The link's secret.</summary>
    public string Link { get; private set; } = NewLink();

    /// <summary>Until when both hold.</summary>
    public DateTimeOffset Until { get; } = clock.GetUtcNow() + Holds;

    /// <summary>Whether the time is over.</summary>
    public bool IsOver => clock.GetUtcNow() >= Until;

    /// <summary>The code in two groups, as it is read aloud.</summary>
    public string Spoken => $"{Code[..(Digits / 2)]} {Code[(Digits / 2)..]}";

    /// <summary>Tries a code as somebody typed it; spaces and dashes do not count.</summary>
    public bool Try(string typed)
    {
        string digits = string.Concat(typed.Where(c => !char.IsWhiteSpace(c) && c != '-'));
        if (!IsOver && Same(digits, Code)) return true;
        if (++_wrong >= WrongTries)
        {
            Code = NewCode();
            _wrong = 0;
        }

        return false;
    }

    /// <summary>Tries a link's secret; the right one is used up by it.</summary>
    public bool TryLink(string secret)
    {
        if (IsOver || !Same(secret, Link)) return false;
        Link = NewLink();
        return true;
    }

    // In a time that does not tell how much of it was right.
    private static bool Same(string given, string right) => CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(given), Encoding.UTF8.GetBytes(right));

    private static string NewCode() => RandomNumberGenerator.GetString("0123456789", Digits);

    private static string NewLink() => Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(LinkBytes));
}
