namespace Ringwright.Fuzz.Making;

/// <summary>Text that programs stumble over, and mutations of text.</summary>
public static class OddText
{
    private static readonly string[] Bits =
    [
        "", " ", "\t", "\n", "\r\n", "\0", "\u001b", "\u200b", "\u202e", "\ufeff", "\u00a0", "\u2028", "😀", "\ud83d", "\ude00", "é", "e\u0301", "ﷺ", "文字", "½", "⅜", "″", "”", "’", "−", "–", "٣", "３", "∞", "NaN", "1e9", "1E-9", "0x10",
        "\"", "'", "\\", "/", "//", ",", ".", "..", ";", ":", "°", "%", "{", "}", "{0}", "{0:}", "<", ">", "&amp;", "<script>", "--", "-", "+", "±", "=1+1", "@", "null", "true", "999999999999", "1234567890123", "0.0000000000000000000000000001", "mm", "in", "deg", "h", "min",
    ];

    /// <summary>A short odd text.</summary>
    public static string Bit(Dice dice) => dice.One(Bits);

    /// <summary>A name or note, now and then an odd one.</summary>
    public static string Name(Dice dice, string plain)
    {
        if (!dice.Chance(0.15)) return plain;
        return dice.Below(4) switch
        {
            0 => plain + Bit(dice),
            1 => Bit(dice) + plain,
            2 => plain + new string(dice.One("xW i".ToCharArray()), dice.From(1, 50)),
            _ => string.Concat(Enumerable.Range(0, dice.From(1, 12)).Select(_ => Bit(dice))),
        };
    }

    /// <summary>The text with one to several small changes.</summary>
    public static string Mutate(Dice dice, string text)
    {
        for (int changes = 1 + dice.Below(3) * dice.Below(3); changes > 0; changes--) text = Once(dice, text);
        return text;
    }

    private static string Once(Dice dice, string text)
    {
        int at = dice.Below(text.Length + 1);
        int length = Math.Min(text.Length - at, 1 + dice.Below(dice.Chance(0.1) ? 200 : 4));
        return dice.Below(9) switch
        {
            0 => text.Remove(at, length),
            1 => text[..at],
            2 => text[at..],
            3 => text.Insert(at, Bit(dice)),
            4 => text.Insert(at, text.Substring(at, length)),
            5 => text.Remove(at, length).Insert(at, Bit(dice)),
            6 => text.Insert(at, ((char)dice.From(1, dice.Chance(0.8) ? 126 : 0xFFFF)).ToString()),
            7 => text.Remove(at, length).Insert(dice.Below(text.Length - length + 1), text.Substring(at, length)),
            _ => text.Insert(at, new string(dice.One("0123456789 -./x[{(\"".ToCharArray()), dice.Chance(0.05) ? dice.From(100, 5000) : dice.From(1, 30))),
        };
    }
}
