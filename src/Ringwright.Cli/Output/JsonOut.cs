using System.Text.Json;
using Ringwright.Core.Documents;
using Spectre.Console;

namespace Ringwright.Cli.Output;

/// <summary>Prints an answer as JSON.</summary>
internal static class JsonOut
{
    // Straight to the writer: JSON must not be wrapped or styled.
    public static void Write(IAnsiConsole console, Action<Utf8JsonWriter> body) => console.Profile.Out.Writer.Write(JsonText.Write(body));
}
