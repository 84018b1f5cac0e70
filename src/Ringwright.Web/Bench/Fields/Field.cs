namespace Ringwright.Web.Bench.Fields;

/// <summary>What a field's text is read as.</summary>
public enum FieldKind
{
    /// <summary>A length with its unit, or without one in the chosen unit.</summary>
    Length,

    /// <summary>A whole number.</summary>
    WholeNumber,

    /// <summary>A number, with its unit or without.</summary>
    Number,

    /// <summary>A share, written in percent.</summary>
    Percent,

    /// <summary>An angle.</summary>
    Angle,

    /// <summary>A temperature with its unit.</summary>
    Temperature,

    /// <summary>A time with its unit.</summary>
    Time,

    /// <summary>Several values with commas between.</summary>
    List,

    /// <summary>Any words.</summary>
    Words,

    /// <summary>Words over several lines.</summary>
    Text,

    /// <summary>The name of a wood.</summary>
    Wood,
}

/// <summary>One kind of value that a person types.</summary>
/// <param name="Key">Its name in the file, such as <c>tip</c> or <c>saw.kerf</c>.</param>
/// <param name="Label">Its name for people.</param>
/// <param name="Kind">What its text is read as.</param>
/// <param name="Hint">One short line of help.</param>
/// <param name="WhenBlank">What an empty field means; null when it may not be empty.</param>
public sealed record Field(string Key, string Label, FieldKind Kind, string Hint, string? WhenBlank = null);
