using System.Globalization;

namespace Ringwright.Core.Measures;

/// <summary>Reads numbers as people write them (whole, decimal with point or comma, fraction, mixed) from left to right.</summary>
internal ref struct MeasureScanner(string text)
{
    // Enough for any length in wood, and small enough that decimal arithmetic stays exact.
    private const int MostDigits = 12;

    // The shortest text of any double above 1e-9 fits, so that written values read back exactly.
    private const int MostDecimals = 28;

    // Each is a quarter, eighth, ... as one character.
    private const string Vulgar = "½¼¾⅛⅜⅝⅞⅓⅔⅕⅖⅗⅘⅙⅚";
    private static readonly (int Over, int Under)[] VulgarValues =
        [(1, 2), (1, 4), (3, 4), (1, 8), (3, 8), (5, 8), (7, 8), (1, 3), (2, 3), (1, 5), (2, 5), (3, 5), (4, 5), (1, 6), (5, 6)];

    private readonly string _text = text;

    /// <summary>Index of the next character.</summary>
    public int Position { get; private set; }

    /// <summary>What is wrong, once something is.</summary>
    public ParseError? Error { get; private set; }

    private readonly char Current => Position < _text.Length ? _text[Position] : '\0';

    public readonly bool AtEnd => Position >= _text.Length;

    public readonly bool AtDigit => char.IsAsciiDigit(Current) || IsVulgar(Current);

    public void SkipSpace()
    {
        while (!AtEnd && char.IsWhiteSpace(Current)) Position++;
    }

    public bool Fail(string expected)
    {
        Error ??= new(_text, Position, expected);
        return false;
    }

    /// <summary>Takes <paramref name="word"/> when it comes next (case does not matter, letters may not follow a word of letters).</summary>
    public bool Take(string word)
    {
        if (string.Compare(_text, Position, word, 0, word.Length, StringComparison.OrdinalIgnoreCase) != 0) return false;
        int end = Position + word.Length;
        if (char.IsLetter(word[^1]) && end < _text.Length && char.IsLetter(_text[end])) return false;
        Position = end;
        return true;
    }

    /// <summary>A number with optional sign, exact as a decimal.</summary>
    public bool Number(string example, out decimal value)
    {
        bool negative = Take("-") || Take("−");
        if (!negative) Take("+");
        SkipSpace();
        if (!Magnitude(example, out value)) return false;
        if (negative) value = -value;
        return true;
    }

    private bool Magnitude(string example, out decimal value)
    {
        if (IsVulgar(Current))
        {
            value = TakeVulgar();
            return true;
        }

        if (!Digits(example, out value)) return false;
        if (Current == '/') return Fraction(ref value);
        return Current is '.' or ',' ? Decimals(ref value) : MixedPart(ref value);
    }

    private bool Digits(string example, out decimal value)
    {
        value = 0;
        int start = Position;
        // ".5" is common on drawings; an empty whole part counts as nought.
        if (Current is '.' or ',' && Position + 1 < _text.Length && char.IsAsciiDigit(_text[Position + 1])) return true;
        while (char.IsAsciiDigit(Current))
        {
            if (Position - start >= MostDigits) return Fail($"at most {MostDigits} digits in a row, such as {example}");
            value = (value * 10) + (Current - '0');
            Position++;
        }

        return Position > start || Fail($"write a number, such as {example}");
    }

    private bool Decimals(ref decimal value)
    {
        bool comma = Current == ',';
        int mark = Position++;
        int start = Position;
        while (char.IsAsciiDigit(Current)) Position++;
        int count = Position - start;
        if (count > MostDecimals)
        {
            Position = start + MostDecimals;
            return Fail($"at most {MostDecimals} decimals");
        }

        // "1,000" is a thousand to some and one to others: never guess.
        if (comma && count == 3 && value != 0)
        {
            Position = mark;
            return Fail("a comma before three digits may mean thousands or decimals: write 1000 or 1.000");
        }

        if (count == 0) return Fail("write decimals after the point, such as 0.5");
        value += decimal.Parse("0." + _text[start..Position], CultureInfo.InvariantCulture);
        return true;
    }

    // The fraction after a whole number: "1 3/8", "1-3/8", "1⅜".
    private bool MixedPart(ref decimal value)
    {
        if (IsVulgar(Current))
        {
            value += TakeVulgar();
            return true;
        }

        int mark = Position;
        bool joined = Current == '-' || char.IsWhiteSpace(Current);
        if (joined) Position++;
        SkipSpace();
        if (joined && IsVulgar(Current))
        {
            value += TakeVulgar();
            return true;
        }

        if (!joined || !char.IsAsciiDigit(Current))
        {
            Position = mark;
            return true;
        }

        if (!Digits("3/8", out decimal part)) return false;
        if (Current != '/') return Fail("after a whole number only a fraction may follow, such as 1 3/8");
        if (!Fraction(ref part)) return false;
        if (part >= 1)
        {
            Position = mark + 1;
            return Fail("the fraction after a whole number is less than one, such as 1 3/8");
        }

        value += part;
        return true;
    }

    private bool Fraction(ref decimal over)
    {
        Position++;
        int mark = Position;
        if (!Digits("3/8", out decimal under)) return false;
        if (under == 0)
        {
            Position = mark;
            return Fail("a fraction cannot have 0 below the line");
        }

        over /= under;
        return true;
    }

    /// <summary>The double nearest to <paramref name="value"/> (the plain conversion may miss it by one step).</summary>
    public static double Nearest(decimal value) =>
        double.Parse(value.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    /// <summary>The shortest text, without exponent, that <see cref="Nearest"/> reads back to <paramref name="value"/>.</summary>
    public static string Shortest(double value) =>
        decimal.Parse(value.ToString("R", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture).ToString(CultureInfo.InvariantCulture);

    private decimal TakeVulgar()
    {
        (int over, int under) = VulgarValues[Vulgar.IndexOf(Current, StringComparison.Ordinal)];
        Position++;
        return (decimal)over / under;
    }

    private static bool IsVulgar(char c) => c != '\0' && Vulgar.Contains(c, StringComparison.Ordinal);
}
