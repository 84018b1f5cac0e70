using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Documents;

/// <summary>Turns the JSON reader's exceptions into one sentence with field and line.</summary>
internal static partial class JsonSentence
{
    public static BadInputException From(JsonException e, string json)
    {
        string place = Place(e);
        string message = e.Message;
        if (message.Contains("missing required properties", StringComparison.Ordinal))
            return new(place, $"the field {string.Join(" and ", Quoted().Matches(message).Skip(1).Select(m => m.Groups[1].Value))} is missing", "it cannot be left out");
        if (message.Contains("polymorphic", StringComparison.OrdinalIgnoreCase) || message.Contains("type discriminator", StringComparison.Ordinal))
            return message.Contains(nameof(Inside), StringComparison.Ordinal)
                ? new(place, "what is hollow is missing or unknown", "\"hollow\" is \"wall\", \"bore\" or \"drawn\"")
                : new(place, "the ring's construction is missing or unknown", $"\"construction\" is {Constructions}");
        if (message.Contains("Duplicate property", StringComparison.OrdinalIgnoreCase))
            return new(place, "a field stands there twice", "each field may stand once");
        if (message.Contains(';', StringComparison.Ordinal) && !message.Contains("LineNumber", StringComparison.Ordinal))
        {
            int cut = message.LastIndexOf("; ", StringComparison.Ordinal);
            return new(place, message[..cut], message[(cut + 2)..]);
        }

        if (e.Path is null || e.Path == "$" || IsSyntax(message))
            return new(place, EndsEarly(json) ? "the file ends too early" : "this is not JSON", "the file must be complete JSON");
        return new(place, "the value is of the wrong kind", Needed(message));
    }

    // The reader names the type that it could not make.
    private static string Needed(string message) => MessageType().Match(message).Groups[1].Value switch
    {
        "System.Boolean" => "true or false is needed",
        var type when type.StartsWith("System.Collections", StringComparison.Ordinal) => "a list in [ ] is needed",
        var type when type.StartsWith("Ringwright", StringComparison.Ordinal) => "a group of fields in { } is needed",
        _ => "see the schema in docs/schema",
    };

    private static readonly string Constructions = Listed(
        WedgeDisc.ConstructionName, SegmentRing.ConstructionName, OpenRing.ConstructionName, MixedRing.ConstructionName,
        StaveRing.ConstructionName, LaminatedRing.ConstructionName, BoardRing.ConstructionName, SolidLayer.ConstructionName);

    private static string Listed(params string[] names) =>
        string.Join(", ", names[..^1].Select(n => $"\"{n}\"")) + $" or \"{names[^1]}\"";

    private static bool IsSyntax(string message) =>
        message.Contains("invalid", StringComparison.OrdinalIgnoreCase) || message.Contains("expected", StringComparison.OrdinalIgnoreCase);

    // A cut-off text has nothing wrong in it; it only lacks its end.
    private static bool EndsEarly(string json)
    {
        var reader = new Utf8JsonReader(Encoding.UTF8.GetBytes(json), isFinalBlock: false, new JsonReaderState(new JsonReaderOptions { MaxDepth = 32 }));
        try
        {
            while (reader.Read())
            {
            }
        }
        catch (JsonException)
        {
            return false;
        }

        return true;
    }

    private static string Place(JsonException e)
    {
        string line = e.LineNumber is long n ? string.Create(CultureInfo.InvariantCulture, $"line {n + 1}") : "";
        string path = (e.Path ?? PathIn(e.Message)).TrimStart('$').TrimStart('.');
        path = Index().Replace(path, m => string.Create(CultureInfo.InvariantCulture, $" {int.Parse(m.Groups[1].ValueSpan, CultureInfo.InvariantCulture) + 1}"));
        return (path, line) switch
        {
            ("", "") => "file",
            ("", _) => line,
            (_, "") => path,
            _ => $"{path} ({line})",
        };
    }

    private static string PathIn(string message) => MessagePath().Match(message).Groups[1].Value;

    [GeneratedRegex(@"could not be converted to (?:System\.Nullable`1\[)?([^\s\[`]+)")]
    private static partial Regex MessageType();

    [GeneratedRegex(@"Path: (\S+) \|")]
    private static partial Regex MessagePath();

    [GeneratedRegex(@"\[(\d{1,9})\]")]
    private static partial Regex Index();

    [GeneratedRegex(@"'([^']*)'")]
    private static partial Regex Quoted();
}
