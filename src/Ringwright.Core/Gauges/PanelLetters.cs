using System.Collections.Frozen;

namespace Ringwright.Core.Gauges;

/// <summary>
/// Letters of five by seven square cells, upright, for writing that is cut into a plate. No two cells of a text touch at a corner alone:
/// the solid around them would not be closed properly there.
/// </summary>
internal static class PanelLetters
{
    /// <summary>Cells from letter to letter, and cells of a line of letters with a free row above and below.</summary>
    public const int Pitch = 6, Rows = 9;

    private const int Wide = 5, Tall = 7;

    // Seven rows from the top, five bits each, the leftmost highest.
    private static readonly FrozenDictionary<char, byte[]> Cells = Table(
        "A0E11111F111111 B1E11111E11111E C0E11101010110E D1E11111111111E E1F10101E10101F F1F10101E101010 G0E11101711110E H1111111F111111 I0E04040404040E " +
        "J0702020202120C K11121418141211 L1010101010101F M111B1515111111 N11111915131111 O0E11111111110E P1E11111E101010 Q0E11111115120D R1E11111E141211 " +
        "S0F10100E01011E T1F040404040404 U1111111111110E V11111111110A04 W1111111515150A X11110A040A1111 Y11110A04040404 Z1F01020408101F " +
        "00E11131519110E 1040C040404040E 20E11010204081F 31F02040201110E 402060A121F0202 51F101E0101110E 60608101E11110E 71F010204080808 80E11110E11110E 90E11110F01020C " +
        ".00000000000C0C -0000001F000000 °0C12120C000000 /00010204081000 ,000000000C0408 :000C0C000C0C00 +0004041F040400 (02040808080402 )08040202020408");

    /// <summary>What can be written of a text: capitals, digits and a few signs; a dash for anything else.</summary>
    public static string Plain(string text) => string.Concat(text.ToUpperInvariant().EnumerateRunes().Select(r => r.Value == ' ' ? ' ' : r.IsBmp && Cells.ContainsKey((char)r.Value) ? (char)r.Value : '-')).Trim();

    /// <summary>Cells across a text, a free one at each end.</summary>
    public static int Columns(string plain) => (Pitch * plain.Length) + 1;

    /// <summary>Which cells of a text are cut: column and row from the lower left; the border is free.</summary>
    public static bool[,] Of(string plain)
    {
        bool[,] cut = new bool[Columns(plain), Rows];
        for (int i = 0; i < plain.Length; i++)
        {
            if (!Cells.TryGetValue(plain[i], out byte[]? rows)) continue;
            for (int y = 0; y < Tall; y++)
                for (int x = 0; x < Wide; x++)
                    cut[1 + (Pitch * i) + x, Tall - y] = (rows[y] >> (Wide - 1 - x) & 1) == 1;
        }

        while (JoinCorners(cut)) { }
        return cut;
    }

    // Where two cells touch at a corner alone, one of the two beside them is cut too: the one with more cut cells around it, inside a bend.
    private static bool JoinCorners(bool[,] cut)
    {
        bool any = false;
        for (int x = 0; x + 1 < cut.GetLength(0); x++)
            for (int y = 0; y + 1 < cut.GetLength(1); y++)
            {
                if (cut[x, y] != cut[x + 1, y + 1] || cut[x + 1, y] != cut[x, y + 1] || cut[x, y] == cut[x + 1, y]) continue;
                ((int X, int Y) one, (int X, int Y) two) = cut[x, y] ? ((x + 1, y), (x, y + 1)) : ((x, y), (x + 1, y + 1));
                (int X, int Y) chosen = Around(cut, one) >= Around(cut, two) ? one : two;
                cut[chosen.X, chosen.Y] = any = true;
            }

        return any;
    }

    private static int Around(bool[,] cut, (int X, int Y) at)
    {
        int count = 0;
        for (int x = Math.Max(0, at.X - 1); x <= Math.Min(cut.GetLength(0) - 1, at.X + 1); x++)
            for (int y = Math.Max(0, at.Y - 1); y <= Math.Min(cut.GetLength(1) - 1, at.Y + 1); y++)
                if (cut[x, y]) count++;
        return count;
    }

    private static FrozenDictionary<char, byte[]> Table(string all) => all.Split(' ').ToFrozenDictionary(g => g[0], g => Convert.FromHexString(g.AsSpan(1)));
}
