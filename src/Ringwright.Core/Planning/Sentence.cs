using System.Collections.Immutable;
using System.Globalization;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Planning;

/// <summary>A value inside a sentence.</summary>
/// <param name="Value">In mm, radians, mm² or as a plain number.</param>
/// <param name="Quantity">What it measures.</param>
public readonly record struct Measured(double Value, Quantity Quantity)
{
    /// <summary>A length in mm.</summary>
    public static Measured Length(double millimetres) => new(millimetres, Quantity.Length);

    /// <summary>A length in mm too small for a rule.</summary>
    public static Measured Fine(double millimetres) => new(millimetres, Quantity.FineLength);

    /// <summary>An angle in radians.</summary>
    public static Measured Angle(double radians) => new(radians, Quantity.Angle);

    /// <summary>A small angle in radians.</summary>
    public static Measured FineAngle(double radians) => new(radians, Quantity.FineAngle);

    /// <summary>A time in minutes.</summary>
    public static Measured Time(double minutes) => new(minutes, Quantity.Time);

    /// <summary>A whole number.</summary>
    public static Measured Count(int count) => new(count, Quantity.Count);

    /// <summary>A share from 0 to 1.</summary>
    public static Measured Share(double share) => new(share, Quantity.Share);
}

/// <summary>A sentence with values that are printed in the reader's units only when it is read.</summary>
/// <param name="Template">The words, with {0}, {1} … where the values go.</param>
/// <param name="Values">The values.</param>
public sealed record Sentence(string Template, ImmutableArray<Measured> Values)
{
    /// <summary>A sentence from its words and values.</summary>
    public static Sentence Of(string template, params ReadOnlySpan<Measured> values) => new(template, [.. values]);

    /// <summary>Text of the user's made safe for a template: its braces stand for themselves.</summary>
    public static string Escape(string text) => text.Replace("{", "{{", StringComparison.Ordinal).Replace("}", "}}", StringComparison.Ordinal);

    /// <summary>The sentence in the reader's units.</summary>
    public string In(MeasureStyle style)
    {
        object[] printed = [.. Values.Select(v => style.Print(v.Value, v.Quantity))];
        return string.Format(CultureInfo.InvariantCulture, Template, printed);
    }
}
