using System.Text.Json;

namespace Ringwright.Core.Documents;

/// <summary>Lists as fields of the JSON object that is open.</summary>
public static class JsonLists
{
    /// <summary>Writes an object for each item; <paramref name="fields"/> writes what stands in it.</summary>
    public static void WriteObjects<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> fields)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(items);
        ArgumentNullException.ThrowIfNull(fields);
        json.WriteStartArray(name);
        foreach (T item in items)
        {
            json.WriteStartObject();
            fields(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Writes texts.</summary>
    public static void WriteTexts(this Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(texts);
        json.WriteStartArray(name);
        foreach (string text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }
}
