using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Ringwright.Core.Measures;

namespace Ringwright.Web.Bench.Fields;

/// <summary>Reads a text; false with the character at fault when it cannot be read.</summary>
/// <typeparam name="T">The kind of value.</typeparam>
/// <param name="text">The text as typed.</param>
/// <param name="unit">The unit of lengths typed without one.</param>
/// <param name="value">The value.</param>
/// <param name="error">What is wrong and where.</param>
public delegate bool TextReader<T>(string text, LengthUnit unit, [MaybeNull] out T value, [NotNullWhen(false)] out ParseError? error);

/// <summary>How a value is written for a person and read from one.</summary>
/// <typeparam name="T">The kind of value.</typeparam>
/// <param name="Print">The text a person would type.</param>
/// <param name="Read">Reads it.</param>
public sealed record Codec<T>(Func<T, string> Print, TextReader<T> Read);

/// <summary>The kinds of values there are.</summary>
public static class Codecs
{
    /// <summary>Lengths, as they were written.</summary>
    public static Codec<Length> Length { get; } = new(v => v.Written, (string t, LengthUnit unit, out Length v, [NotNullWhen(false)] out ParseError? e) => Core.Measures.Length.TryParse(t, unit, out v, out e));

    /// <summary>Angles, as they were written.</summary>
    public static Codec<Angle> Angle { get; } = new(v => v.Written, (string t, LengthUnit _, out Angle v, [NotNullWhen(false)] out ParseError? e) => Core.Measures.Angle.TryParse(t, out v, out e));

    /// <summary>Temperatures, as they were written.</summary>
    public static Codec<Temperature> Temperature { get; } = new(v => v.Written, (string t, LengthUnit _, out Temperature v, [NotNullWhen(false)] out ParseError? e) => Core.Measures.Temperature.TryParse(t, out v, out e));

    /// <summary>Times, as they were written.</summary>
    public static Codec<Duration> Duration { get; } = new(v => v.Written, (string t, LengthUnit _, out Duration v, [NotNullWhen(false)] out ParseError? e) => Core.Measures.Duration.TryParse(t, out v, out e));

    /// <summary>Whole numbers.</summary>
    public static Codec<int> Whole { get; } = new(v => v.ToString(CultureInfo.InvariantCulture), (string t, LengthUnit _, out int v, [NotNullWhen(false)] out ParseError? e) => FieldText.TryWhole(t, out v, out e));

    /// <summary>Shares from 0 to 1, written in percent.</summary>
    public static Codec<double> Share { get; } = new(FieldText.Percent, (string t, LengthUnit _, out double v, [NotNullWhen(false)] out ParseError? e) => FieldText.TryPercent(t, out v, out e));

    /// <summary>Any text.</summary>
    public static Codec<string> Words { get; } = new(v => v, (string t, LengthUnit _, [MaybeNull] out string v, [NotNullWhen(false)] out ParseError? e) =>
    {
        (v, e) = (t, null);
        return true;
    });

    /// <summary>Any text; none when it is blank.</summary>
    public static Codec<string?> WordsOrBlank { get; } = new(v => v ?? "", (string t, LengthUnit _, out string? v, [NotNullWhen(false)] out ParseError? e) =>
    {
        (v, e) = (string.IsNullOrWhiteSpace(t) ? null : t, null);
        return true;
    });

    /// <summary>A name: any text that is not blank.</summary>
    public static Codec<string> Name { get; } = new(v => v, (string t, LengthUnit _, [MaybeNull] out string v, [NotNullWhen(false)] out ParseError? e) =>
    {
        (v, e) = (t, string.IsNullOrWhiteSpace(t) ? new ParseError("", 0, "a name is needed") : null);
        return e is null;
    });

    /// <summary>Numbers with a unit that may be left away, such as <c>650 kg/m³</c>.</summary>
    public static Codec<double> Number(string unit) => new(
        v => FieldText.Number(v, unit),
        (string t, LengthUnit _, out double v, [NotNullWhen(false)] out ParseError? e) => FieldText.TryNumber(t, unit, out v, out e));

    /// <summary>Several of them with commas between; none when the text is blank. A comma between two figures is a decimal one.</summary>
    /// <param name="codec">One of them.</param>
    /// <param name="example">What would be right, such as <c>such as 27 mm, 34 mm</c>.</param>
    public static Codec<ImmutableArray<T>> List<T>(this Codec<T> codec, string example)
    {
        ArgumentNullException.ThrowIfNull(codec);
        return new(
            v => v.IsDefault ? "" : string.Join(", ", v.Select(codec.Print)),
            (string t, LengthUnit unit, out ImmutableArray<T> v, [NotNullWhen(false)] out ParseError? e) =>
            {
                (v, e) = ([], null);
                if (string.IsNullOrWhiteSpace(t)) return true;
                var read = ImmutableArray.CreateBuilder<T>();
                foreach ((int from, string part) in FieldText.Parts(t))
                {
                    if (string.IsNullOrWhiteSpace(part)) e = new(t, from, $"something is needed between the commas, {example}");
                    else if (codec.Read(part, unit, out T? one, out ParseError? fault)) read.Add(one!);
                    else e = new(t, from + fault.Position, fault.Expected);
                    if (e is not null) return false;
                }

                v = read.ToImmutable();
                return true;
            });
    }

    /// <summary>The same, where an empty field means that there is no value.</summary>
    public static Codec<T?> OrBlank<T>(this Codec<T> codec)
        where T : struct
    {
        ArgumentNullException.ThrowIfNull(codec);
        return new(
            v => v is T given ? codec.Print(given) : "",
            (string t, LengthUnit unit, out T? v, [NotNullWhen(false)] out ParseError? e) =>
            {
                (v, e) = (null, null);
                if (string.IsNullOrWhiteSpace(t)) return true;
                if (!codec.Read(t, unit, out T read, out e)) return false;
                v = read;
                return true;
            });
    }
}
