using System.Text.Json;
using System.Text.Json.Serialization;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Documents;

/// <summary>Reads a whole number, with a sentence when it is none.</summary>
internal sealed class WholeNumberConverter : JsonConverter<int>
{
    public override int Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.Number && reader.TryGetInt32(out int value)
            ? value
            : throw new JsonException(Found.Instead(ref reader, "a whole number, such as 24"));

    public override void Write(Utf8JsonWriter writer, int value, JsonSerializerOptions options) => writer.WriteNumberValue(value);
}

/// <summary>Reads a number, with a sentence when it is none.</summary>
internal sealed class NumberConverter : JsonConverter<double>
{
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.Number && reader.TryGetDouble(out double value) && double.IsFinite(value)
            ? value
            : throw new JsonException(Found.Instead(ref reader, "a number, such as 0.95"));

    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) => writer.WriteNumberValue(value);
}

/// <summary>Reads text, with a sentence when it is none.</summary>
internal sealed class TextConverter : JsonConverter<string>
{
    public override string Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.TokenType == JsonTokenType.String
            ? reader.GetString()!
            : throw new JsonException(Found.Instead(ref reader, "text in quotes"));

    public override void Write(Utf8JsonWriter writer, string value, JsonSerializerOptions options) => writer.WriteStringValue(value);
}

/// <summary>Reads a unit: <c>mm</c> or <c>in</c>.</summary>
internal sealed class UnitConverter : JsonConverter<LengthUnit>
{
    public override LengthUnit Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        (reader.TokenType == JsonTokenType.String ? reader.GetString() : null) switch
        {
            "mm" => LengthUnit.Millimetre,
            "in" => LengthUnit.Inch,
            _ => throw new JsonException(Found.Instead(ref reader, "\"mm\" or \"in\"")),
        };

    public override void Write(Utf8JsonWriter writer, LengthUnit value, JsonSerializerOptions options) =>
        writer.WriteStringValue(value == LengthUnit.Inch ? "in" : "mm");
}

/// <summary>Says what stands in the file where something else is needed.</summary>
internal static class Found
{
    public static string Instead(ref Utf8JsonReader reader, string needed)
    {
        string found = reader.TokenType switch
        {
            JsonTokenType.String => $"the text “{Shorten(reader.GetString()!)}”",
            JsonTokenType.Number => $"the number {Shorten(System.Text.Encoding.UTF8.GetString(reader.ValueSpan))}",
            JsonTokenType.True or JsonTokenType.False => "true or false",
            JsonTokenType.Null => "nothing (null)",
            JsonTokenType.StartArray => "a list",
            _ => "a group of fields",
        };
        return $"{found} stands here; {needed} is needed";
    }

    /// <summary>The beginning of a long text.</summary>
    public static string Shorten(string text) => text.Length <= 40 ? text : OneLine.Start(text, 40) + "…";
}
