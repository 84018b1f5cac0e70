using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Ringwright.Core.Documents;

/// <summary>Turns the JSON reader's exceptions into one sentence with field and line.</summary>
internal static partial class JsonSentence
{
    public static BadInputException From(JsonException e, string json)
    {
        string place = Place(e);
        string message = e.Message;
        if (message.Contains("missing required properties", StringComparison.Ordinal))
            return new(place, $"the field {string.Join(" and ", Quoted().Matches(message).Skip(1).Select(m => m.Groups[1].Value))} is missing", "every piece needs it");
        if (message.Contains("polymorphic", StringComparison.OrdinalIgnoreCase) || message.Contains("type discriminator", StringComparison.Ordinal))
            return new(place, "the ring's construction is missing or unknown", "\"construction\" is \"wedge disc\" or \"segment ring\"");
        if (message.Contains("Duplicate property", StringComparison.OrdinalIgnoreCase))
            return new(place, "a field stands there twice", "each field may stand once");
        if (message.Contains(';', StringComparison.Ordinal) && !message.Contains("LineNumber", StringComparison.Ordinal))
        {
            int cut = message.LastIndexOf("; ", StringComparison.Ordinal);
            return new(place, message[..cut], message[(cut + 2)..]);
        }

        if (e.Path is null || e.Path == "$" || IsSyntax(message))
            return new(place, EndsEarly(e, json) ? "the file ends too early" : "this is not JSON", "the file must be complete JSON");
        return new(place, "the value is of the wrong kind", "see the schema in docs/schema");
    }

    private static bool IsSyntax(string message) =>
        message.Contains("invalid", StringComparison.OrdinalIgnoreCase) || message.Contains("expected", StringComparison.OrdinalIgnoreCase);

    private static bool EndsEarly(JsonException e, string json) =>
        e.LineNumber >= json.AsSpan().TrimEnd().Count('\n') && json.AsSpan().TrimEnd() is not [.., '}'];

    private static string Place(JsonException e)
    {
        string line = e.LineNumber is long n ? string.Create(CultureInfo.InvariantCulture, $"line {n + 1}") : "";
        string path = e.Path is null ? "" : e.Path.TrimStart('$').TrimStart('.');
        path = Index().Replace(path, m => string.Create(CultureInfo.InvariantCulture, $" {int.Parse(m.Groups[1].ValueSpan, CultureInfo.InvariantCulture) + 1}"));
        return (path, line) switch
        {
            ("", "") => "file",
            ("", _) => line,
            (_, "") => path,
            _ => $"{path} ({line})",
        };
    }

    [GeneratedRegex(@"\[(\d{1,9})\]")]
    private static partial Regex Index();

    [GeneratedRegex(@"'([^']*)'")]
    private static partial Regex Quoted();
}
