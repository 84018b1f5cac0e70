using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Spectre.Console;

namespace Ringwright.Cli.Output;

/// <summary>Prints an answer as JSON, in the same shape everywhere: indented, one object.</summary>
internal static class JsonOut
{
    public static void Write(IAnsiConsole console, Action<Utf8JsonWriter> body)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            body(json);
            json.WriteEndObject();
        }

        // Straight to the writer: JSON must not be wrapped or styled.
        console.Profile.Out.Writer.WriteLine(Encoding.UTF8.GetString(stream.ToArray()));
    }
}
