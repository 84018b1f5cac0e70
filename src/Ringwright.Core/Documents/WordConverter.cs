using System.Reflection;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Ringwright.Core.Documents;

/// <summary>Reads and writes a choice by its words (<see cref="JsonStringEnumMemberNameAttribute"/>), and lists them when another stands there.</summary>
internal sealed class WordConverter<T> : JsonConverter<T>
    where T : struct, Enum
{
    private static readonly Dictionary<T, string> Words = Enum.GetValues<T>().ToDictionary(value => value, WordOf);

    public override T Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        string? text = reader.TokenType == JsonTokenType.String ? reader.GetString() : null;
        foreach ((T value, string word) in Words)
            if (word == text) return value;
        throw new JsonException(Found.Instead(ref reader, string.Join(" or ", Words.Values.Select(w => $"\"{w}\""))));
    }

    public override void Write(Utf8JsonWriter writer, T value, JsonSerializerOptions options) => writer.WriteStringValue(Words[value]);

    private static string WordOf(T value) =>
        typeof(T).GetField(value.ToString())!.GetCustomAttribute<JsonStringEnumMemberNameAttribute>()!.Name;
}
