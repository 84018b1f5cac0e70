using System.Diagnostics.CodeAnalysis;

namespace Ringwright.Core.Measures;

/// <summary>
/// An angle, in radians inside, remembering how a person wrote it. Two angles are equal when their radians are.
/// The default value is 0°.
/// </summary>
public readonly struct Angle : IEquatable<Angle>
{
    // Below this an angle is nought; keeps its text short enough to read back.
    private const double Smallest = 1e-9;

    private readonly string? _written;

    private Angle(double radians, string? written)
    {
        Radians = radians;
        _written = written;
    }

    /// <summary>The angle in radians; always finite.</summary>
    public double Radians { get; }

    /// <summary>The angle in degrees.</summary>
    public double Degrees => double.RadiansToDegrees(Radians);

    /// <summary>The text it was written as; otherwise the shortest decimal degrees that read back to the same value or its nearest neighbour.</summary>
    public string Written => _written ?? MeasureScanner.Shortest(Degrees) + "°";

    /// <summary>An angle of <paramref name="radians"/>; below 1e-9 it is 0.</summary>
    /// <exception cref="BadInputException">Not a number, or beyond a full turn.</exception>
    public static Angle FromRadians(double radians) => Math.Abs(radians) <= Math.Tau * (1 + 1e-12)
        ? new(Math.Abs(radians) < Smallest ? 0 : radians, null)
        : throw new BadInputException("angle", $"{radians} rad is not an angle", "at most a full turn is needed");

    /// <summary>An angle of <paramref name="degrees"/>.</summary>
    /// <exception cref="BadInputException">Not a number, or beyond a full turn.</exception>
    public static Angle FromDegrees(double degrees) => FromRadians(double.DegreesToRadians(degrees));

    /// <summary>Reads an angle: <c>10°</c>, <c>7.5</c>, <c>7,5 deg</c>, <c>7°30'</c>, <c>7° 30' 15"</c>. A bare number is degrees.</summary>
    /// <param name="text">The text.</param>
    /// <param name="angle">The angle; 0 when the text cannot be read.</param>
    /// <param name="error">Null, or what is wrong and at which character.</param>
    public static bool TryParse(string? text, out Angle angle, [NotNullWhen(false)] out ParseError? error)
    {
        angle = default;
        string written = text ?? "";
        var scanner = new MeasureScanner(written);
        scanner.SkipSpace();
        bool read = scanner.Number("7.5°", out decimal degrees);
        bool negative = written.AsSpan().TrimStart() is ['-', ..] or ['−', ..];
        scanner.SkipSpace();
        bool marked = read && (scanner.Take("°") || scanner.Take("degrees") || scanner.Take("deg"));
        scanner.SkipSpace();
        decimal parts = 0;
        if (marked && scanner.AtDigit) read = Minutes(ref scanner, out parts);
        scanner.SkipSpace();
        read = read && (scanner.AtEnd || scanner.Fail("angles are written like 7.5° or 7° 30'"));
        if (read && Math.Abs(degrees) > 360) read = scanner.Fail("an angle of at most 360° is needed");
        if (!read)
        {
            error = scanner.Error!;
            return false;
        }

        error = null;
        angle = new(double.DegreesToRadians(MeasureScanner.Nearest(negative ? degrees - parts : degrees + parts)), written.Trim());
        return true;
    }

    private static bool Minutes(ref MeasureScanner scanner, out decimal degrees)
    {
        degrees = 0;
        if (!scanner.Number("30'", out decimal minutes)) return false;
        if (!scanner.Take("'") && !scanner.Take("′") && !scanner.Take("’")) return scanner.Fail("minutes end with ', as in 7° 30'");
        if (minutes >= 60) return scanner.Fail("minutes run from 0 to less than 60");
        degrees = minutes / 60;
        scanner.SkipSpace();
        if (!scanner.AtDigit) return true;
        if (!scanner.Number("15\"", out decimal seconds)) return false;
        if (!scanner.Take("\"") && !scanner.Take("″") && !scanner.Take("''")) return scanner.Fail("seconds end with \", as in 7° 30' 15\"");
        if (seconds >= 60) return scanner.Fail("seconds run from 0 to less than 60");
        degrees += seconds / 3600;
        return true;
    }

    /// <inheritdoc/>
    public bool Equals(Angle other) => Radians.Equals(other.Radians);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Angle other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Radians.GetHashCode();

    /// <summary>The text as written.</summary>
    public override string ToString() => Written;

    /// <summary>Equal in radians.</summary>
    public static bool operator ==(Angle left, Angle right) => left.Equals(right);

    /// <summary>Not equal in radians.</summary>
    public static bool operator !=(Angle left, Angle right) => !left.Equals(right);
}
