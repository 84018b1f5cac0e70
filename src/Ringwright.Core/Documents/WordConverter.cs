using System.Collections.Immutable;
using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Ringwright.Core.Documents;

/// <summary>Reads and writes a choice by its words (<see cref="JsonStringEnumMemberNameAttribute"/>), and lists them when another stands there.</summary>
internal sealed class WordConverter<T> : JsonConverter<T>
    where T : struct, Enum
{
    private static readonly ImmutableArray<(T Value, string Word)> Words = [.. Enum.GetValues<T>().Select(value => (value, WordOf(value)))];

    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        string? text = reader.TokenType == JsonTokenType.String ? reader.GetString() : null;
        foreach ((T value, string word) in Words)
            if (word == text) return value;
        throw new JsonException(Found.Instead(ref reader, string.Join(" or ", Words.Select(w => $"\"{w.Word}\""))));
    }

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(Words.First(w => EqualityComparer<T>.Default.Equals(w.Value, value)).Word);

    private static string WordOf(T value) =>
        typeof(T).GetField(value.ToString())!.GetCustomAttribute<JsonStringEnumMemberNameAttribute>()!.Name;
}
