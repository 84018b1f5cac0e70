using System.Diagnostics.CodeAnalysis;

namespace Ringwright.Core.Measures;

/// <summary>
/// A length, in millimetres inside, remembering how a person wrote it so that a saved file shows the same text.
/// Two lengths are equal when their millimetres are. The default value is 0 mm.
/// </summary>
public readonly struct Length : IEquatable<Length>
{
    private const decimal MillimetresPerInch = 25.4m;

    // Beyond this (10 km) nothing is a length of wood; keeps all later arithmetic finite.
    private const decimal Largest = 1e7m;

    // Below this (a millionth of a micron) a length is nought; keeps its text short enough to read back.
    private const double Smallest = 1e-9;

    private readonly string? _written;

    private Length(double millimetres, string? written)
    {
        Millimetres = millimetres;
        _written = written;
    }

    /// <summary>The length in millimetres; always finite.</summary>
    public double Millimetres { get; }

    /// <summary>The text it was written as, with its unit; otherwise the shortest text that reads back to the same value.</summary>
    public string Written => _written ?? MeasureScanner.Shortest(Millimetres) + " mm";

    /// <summary>A length of <paramref name="millimetres"/> mm; below 1e-9 mm it is 0.</summary>
    /// <exception cref="BadInputException">Not a number, or beyond 10 km.</exception>
    public static Length FromMillimetres(double millimetres) => Math.Abs(millimetres) <= (double)Largest
        ? new(Math.Abs(millimetres) < Smallest ? 0 : millimetres, null)
        : throw new BadInputException("length", $"{millimetres} mm is not a length", "a number of at most 10 km is needed");

    /// <summary>
    /// Reads a length as people write it: <c>3/8</c>, <c>1 3/8"</c>, <c>1-3/8 in</c>, <c>35mm</c>, <c>0.375"</c>, <c>3,5 cm</c>.
    /// </summary>
    /// <param name="text">The text.</param>
    /// <param name="unitWhenNone">The unit to take when none is written; null when one must be written.</param>
    /// <param name="length">The length; 0 when the text cannot be read.</param>
    /// <param name="error">Null, or what is wrong and at which character.</param>
    public static bool TryParse(string? text, LengthUnit? unitWhenNone, out Length length, [NotNullWhen(false)] out ParseError? error)
    {
        length = default;
        string written = text ?? "";
        var scanner = new MeasureScanner(written);
        scanner.SkipSpace();
        bool read = scanner.Number("12.5 mm or 1/2\"", out decimal number);
        scanner.SkipSpace();
        decimal millimetres = 0;
        string suffix = "";
        read = read && TakeUnit(ref scanner, unitWhenNone, number, out millimetres, out suffix);
        scanner.SkipSpace();
        read = read && (scanner.AtEnd || scanner.Fail("nothing may follow the unit"));
        if (!read)
        {
            error = scanner.Error!;
            return false;
        }

        if (Math.Abs(millimetres) > Largest)
        {
            error = new(written, 0, "a length of at most 10 km is needed");
            return false;
        }

        error = null;
        length = new(MeasureScanner.Nearest(millimetres), written.Trim() + suffix);
        return true;
    }

    /// <summary>Reads a length or throws <see cref="BadInputException"/> with the sentence of <see cref="ParseError"/>.</summary>
    public static Length Parse(string text, LengthUnit? unitWhenNone = null) =>
        TryParse(text, unitWhenNone, out Length length, out ParseError? error)
            ? length
            : throw new BadInputException("length", error.Sentence, "lengths are written like 12.5 mm or 1 3/8 in");

    private static bool TakeUnit(ref MeasureScanner scanner, LengthUnit? unitWhenNone, decimal number, out decimal millimetres, out string suffix)
    {
        suffix = "";
        millimetres = number;
        if (scanner.Take("mm") || scanner.Take("millimetres") || scanner.Take("millimeters")) return true;
        if (scanner.Take("cm")) return Scale(10m, number, out millimetres);
        if (scanner.Take("m")) return Scale(1000m, number, out millimetres);
        if (scanner.Take("inches") || scanner.Take("inch") || scanner.Take("in") || TakeInchMark(ref scanner))
            return Scale(MillimetresPerInch, number, out millimetres);
        if (unitWhenNone is null || !scanner.AtEnd) return scanner.Fail("write the unit mm, cm, m or in, such as 35 mm or 1 3/8 in");
        suffix = unitWhenNone == LengthUnit.Inch ? " in" : " mm";
        return Scale(unitWhenNone == LengthUnit.Inch ? MillimetresPerInch : 1m, number, out millimetres);
    }

    // Straight, curly and double-prime marks, and two single quotes, all mean inch on paper.
    private static bool TakeInchMark(ref MeasureScanner scanner) =>
        scanner.Take("\"") || scanner.Take("″") || scanner.Take("”") || scanner.Take("“") || scanner.Take("''");

    private static bool Scale(decimal factor, decimal number, out decimal millimetres)
    {
        millimetres = number * factor;
        return true;
    }

    /// <inheritdoc/>
    public bool Equals(Length other) => Millimetres.Equals(other.Millimetres);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Length other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Millimetres.GetHashCode();

    /// <summary>The text as written.</summary>
    public override string ToString() => Written;

    /// <summary>Equal in millimetres.</summary>
    public static bool operator ==(Length left, Length right) => left.Equals(right);

    /// <summary>Not equal in millimetres.</summary>
    public static bool operator !=(Length left, Length right) => !left.Equals(right);
}
