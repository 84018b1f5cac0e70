using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Ringwright.Core.Documents;

/// <summary>JSON as this project writes it everywhere: one object, indented by two, lines ending with a line feed, no needless escapes.</summary>
public static class JsonText
{
    /// <summary>Degree signs, quotes and umlauts stay readable; the text is never put into a page unescaped.</summary>
    internal static JavaScriptEncoder Encoder => JavaScriptEncoder.UnsafeRelaxedJsonEscaping;

    /// <summary>The text of an object whose fields <paramref name="fields"/> writes, ending with a line feed.</summary>
    public static string Write(Action<Utf8JsonWriter> fields)
    {
        ArgumentNullException.ThrowIfNull(fields);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, IndentSize = 2, NewLine = "\n", Encoder = Encoder }))
        {
            json.WriteStartObject();
            fields(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }
}
