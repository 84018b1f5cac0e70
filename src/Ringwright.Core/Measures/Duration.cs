using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Ringwright.Core.Measures;

/// <summary>
/// A length of time, in minutes inside, remembering how a person wrote it: 0 to ten years. Equal when their minutes are. The
/// default value is no time at all.
/// </summary>
public readonly struct Duration : IEquatable<Duration>
{
    private const double MinutesInHour = 60, MinutesInDay = 24 * MinutesInHour;
    private const double Most = 3650 * MinutesInDay;
    private const string Right = "write it like 10 min, 1 h 30 min or 2 days";

    private static readonly (string Word, double Minutes)[] Units =
    [
        ("days", MinutesInDay), ("day", MinutesInDay), ("d", MinutesInDay), ("hours", MinutesInHour), ("hour", MinutesInHour), ("hr", MinutesInHour), ("h", MinutesInHour),
        ("minutes", 1), ("minute", 1), ("min", 1), ("seconds", 1 / MinutesInHour), ("sec", 1 / MinutesInHour), ("s", 1 / MinutesInHour),
    ];

    private readonly string? _written;

    private Duration(double minutes, string? written)
    {
        Minutes = minutes;
        _written = written;
    }

    /// <summary>In minutes; finite, not negative.</summary>
    public double Minutes { get; }

    /// <summary>The text it was written as; otherwise minutes.</summary>
    public string Written => _written ?? MeasureScanner.Shortest(Minutes) + " min";

    /// <summary>A time in minutes.</summary>
    /// <exception cref="BadInputException">Not a number, negative, or more than ten years.</exception>
    public static Duration FromMinutes(double minutes) => minutes is >= 0 and <= Most
        ? new(minutes, null)
        : throw new BadInputException("time", $"{minutes.ToString(CultureInfo.InvariantCulture)} min cannot be", "0 to ten years can be read");

    /// <summary>Reads <paramref name="text"/>.</summary>
    /// <exception cref="BadInputException">It is not a time.</exception>
    public static Duration Parse(string text) => TryParse(text, out Duration duration, out ParseError? error)
        ? duration
        : throw new BadInputException("time", error.Sentence, Right);

    /// <summary>Reads a time with its units, the larger first: <c>10 min</c>, <c>1 h 30 min</c>, <c>1 1/2 h</c>, <c>2 days</c>.</summary>
    /// <param name="text">The text.</param>
    /// <param name="duration">The time; none when the text cannot be read.</param>
    /// <param name="error">Null, or what is wrong and at which character.</param>
    public static bool TryParse(string? text, out Duration duration, [NotNullWhen(false)] out ParseError? error)
    {
        duration = default;
        error = null;
        string written = text ?? "";
        var scanner = new MeasureScanner(written);
        scanner.SkipSpace();
        if (Read(ref scanner, out double minutes))
        {
            duration = new(minutes, written.Trim());
            return true;
        }

        error = scanner.Error!;
        return false;
    }

    /// <summary>A time in few letters: "45 min", "1 h 30 min", and beyond two days "3 d 4 h".</summary>
    /// <param name="minutes">In minutes.</param>
    public static string Print(double minutes)
    {
        if (minutes < MinutesInHour) return Number(Math.Round(minutes, 1)) + " min";
        bool days = minutes >= 2 * MinutesInDay;
        (double large, double small) = days ? (MinutesInDay, MinutesInHour) : (MinutesInHour, 1.0);
        double whole = Math.Round(minutes / small, MidpointRounding.AwayFromZero), per = large / small;
        double over = Math.Floor(whole / per), rest = whole - (over * per);
        string first = Number(over) + (days ? " d" : " h");
        return rest == 0 ? first : $"{first} {Number(rest)}{(days ? " h" : " min")}";
    }

    private static bool Read(ref MeasureScanner scanner, out double minutes)
    {
        minutes = 0;
        double last = double.PositiveInfinity;
        do
        {
            if (!scanner.Number("10 min", out decimal number)) return false;
            if (number < 0) return scanner.Fail("a time is not negative");
            scanner.SkipSpace();
            double unit = UnitAt(ref scanner);
            if (unit == 0) return scanner.Fail("a unit is needed: min, h or days");
            if (unit >= last) return scanner.Fail("the larger unit comes first, each once, such as 1 h 30 min");
            minutes += MeasureScanner.Nearest(number) * unit;
            last = unit;
            scanner.SkipSpace();
        }
        while (!scanner.AtEnd);
        return minutes <= Most || scanner.Fail("at most ten years can be read");
    }

    private static double UnitAt(ref MeasureScanner scanner)
    {
        foreach ((string word, double minutes) in Units)
            if (scanner.Take(word)) return minutes;
        return 0;
    }

    private static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);

    /// <inheritdoc/>
    public bool Equals(Duration other) => Minutes.Equals(other.Minutes);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Duration other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Minutes.GetHashCode();

    /// <summary>The text as written.</summary>
    public override string ToString() => Written;

    /// <summary>Equal in minutes.</summary>
    public static bool operator ==(Duration left, Duration right) => left.Equals(right);

    /// <summary>Not equal in minutes.</summary>
    public static bool operator !=(Duration left, Duration right) => !left.Equals(right);
}
