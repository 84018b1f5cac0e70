using System.Globalization;

namespace Ringwright.Core.Timber.Colour;

/// <summary>A colour as screens and picture files hold it: sRGB, eight bits a channel (IEC 61966-2-1).</summary>
/// <param name="Red">0 to 255.</param>
/// <param name="Green">0 to 255.</param>
/// <param name="Blue">0 to 255.</param>
public readonly record struct Srgb(byte Red, byte Green, byte Blue)
{
    /// <summary>Reads #rrggbb.</summary>
    /// <exception cref="BadInputException">The text is anything else.</exception>
    public static Srgb Parse(string hex)
    {
        ArgumentNullException.ThrowIfNull(hex);
        if (hex.Length == 7 && hex[0] == '#' && int.TryParse(hex.AsSpan(1), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out int value))
            return new((byte)(value >> 16), (byte)(value >> 8), (byte)value);
        throw new BadInputException("colour", $"\"{hex}\" is no colour", "write it as #rrggbb, such as \"#6d5140\"");
    }

    /// <summary>The light it stands for.</summary>
    public LinearRgb Linear => new(LinearRgb.Decoded(Red), LinearRgb.Decoded(Green), LinearRgb.Decoded(Blue));

    /// <summary>The colour in CIELAB.</summary>
    public Lab Lab => Lab.From(Linear);

    /// <summary>The colour as #rrggbb.</summary>
    public override string ToString() => $"#{Red:x2}{Green:x2}{Blue:x2}";
}
