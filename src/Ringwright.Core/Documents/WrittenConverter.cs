using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using System.Text.Json.Serialization;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Documents;

/// <summary>Reads a size from text with its unit, and writes it back as it was written.</summary>
internal sealed class WrittenConverter<T>(string needed, WrittenConverter<T>.Parser parse) : JsonConverter<T>
    where T : struct
{
    internal delegate bool Parser(string? text, out T value, [NotNullWhen(false)] out ParseError? error);

    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.String) throw new JsonException(Found.Instead(ref reader, needed));
        return parse(reader.GetString(), out T value, out ParseError? error) ? value : throw new JsonException(error.Sentence);
    }

    // Each of these sizes prints as it was written.
    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(value.ToString());
}
