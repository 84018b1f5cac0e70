using System.Diagnostics.CodeAnalysis;

namespace Ringwright.Core.Measures;

/// <summary>A temperature, in °C inside, remembering how a person wrote it. Equal when their °C are. The default value is 0 °C.</summary>
public readonly struct Temperature : IEquatable<Temperature>
{
    private readonly string? _written;

    private Temperature(double celsius, string? written)
    {
        Celsius = celsius;
        _written = written;
    }

    /// <summary>In °C; always finite.</summary>
    public double Celsius { get; }

    /// <summary>The text it was written as; otherwise °C.</summary>
    public string Written => _written ?? MeasureScanner.Shortest(Celsius) + " °C";

    /// <summary>A temperature in °C.</summary>
    /// <exception cref="BadInputException">Not a number, or below absolute zero or above 1000 °C.</exception>
    public static Temperature FromCelsius(double celsius) => celsius is >= -273.15 and <= 1000
        ? new(celsius, null)
        : throw new BadInputException("temperature", $"{celsius} °C is no temperature of a room", "−273 °C to 1000 °C can be read");

    /// <summary>Reads <paramref name="text"/>.</summary>
    /// <exception cref="BadInputException">It is not a temperature.</exception>
    public static Temperature Parse(string text) => TryParse(text, out Temperature temperature, out ParseError? error)
        ? temperature
        : throw new BadInputException("temperature", error.Sentence, "write it like 21 °C or 70 °F");

    /// <summary>Reads a temperature with its unit: <c>21 °C</c>, <c>70°F</c>, <c>21 C</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="temperature">The temperature; 0 °C when the text cannot be read.</param>
    /// <param name="error">Null, or what is wrong and at which character.</param>
    public static bool TryParse(string? text, out Temperature temperature, [NotNullWhen(false)] out ParseError? error)
    {
        temperature = default;
        error = null;
        string written = text ?? "";
        var scanner = new MeasureScanner(written);
        scanner.SkipSpace();
        if (Read(ref scanner, out double celsius))
        {
            temperature = new(celsius, written.Trim());
            return true;
        }

        error = scanner.Error!;
        return false;
    }

    private static bool Read(ref MeasureScanner scanner, out double celsius)
    {
        celsius = 0;
        if (!scanner.Number("21 °C", out decimal number)) return false;
        scanner.SkipSpace();
        scanner.Take("°");
        bool fahrenheit = scanner.Take("F");
        if (!fahrenheit && !scanner.Take("C")) return scanner.Fail("the unit °C or °F is needed");
        scanner.SkipSpace();
        if (!scanner.AtEnd) return scanner.Fail("nothing may follow the unit");
        celsius = MeasureScanner.Nearest(number);
        if (fahrenheit) celsius = (celsius - 32) / 1.8;
        return celsius is >= -273.15 and <= 1000 || scanner.Fail("−273 °C to 1000 °C can be read");
    }

    /// <inheritdoc/>
    public bool Equals(Temperature other) => Celsius.Equals(other.Celsius);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Temperature other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Celsius.GetHashCode();

    /// <summary>The text as written.</summary>
    public override string ToString() => Written;

    /// <summary>Equal in °C.</summary>
    public static bool operator ==(Temperature left, Temperature right) => left.Equals(right);

    /// <summary>Not equal in °C.</summary>
    public static bool operator !=(Temperature left, Temperature right) => !left.Equals(right);
}
