using System.Text;

namespace Ringwright.Fuzz.Making;

/// <summary>Changes bytes, kept as one character each.</summary>
public static class ByteMutator
{
    public static string Text(byte[] bytes) => Encoding.Latin1.GetString(bytes);

    public static byte[] Bytes(string text) => Encoding.Latin1.GetBytes(text);

    /// <summary>The bytes with a few changed, a stretch lost, doubled, zeroed or filled with noise, or the end cut off.</summary>
    public static string Mutate(Dice dice, string text)
    {
        char[] bytes = text.ToCharArray();
        for (int changes = 1 + dice.Below(4); changes > 0 && bytes.Length > 0; changes--)
        {
            int at = dice.Chance(0.3) ? dice.Below(Math.Min(bytes.Length, 200)) : dice.Below(bytes.Length);
            int length = Math.Min(bytes.Length - at, dice.Chance(0.3) ? dice.From(1, 5000) : dice.From(1, 16));
            switch (dice.Below(8))
            {
                case 0: bytes = bytes[..at]; break;
                case 1: bytes = [.. bytes[..at], .. bytes[(at + length)..]]; break;
                case 2: bytes = [.. bytes[..(at + length)], .. bytes[at..]]; break;
                case 3: Array.Fill(bytes, dice.One(['\0', '\u00ff']), at, length); break;
                case 4:
                    byte[] noise = new byte[length];
                    dice.Bytes(noise);
                    for (int i = 0; i < length; i++) bytes[at + i] = (char)noise[i];
                    break;
                case 5: bytes[at] = (char)(bytes[at] ^ (1 << dice.Below(8))); break;
                default: bytes[at] = (char)dice.Below(256); break;
            }
        }

        return new(bytes);
    }
}
