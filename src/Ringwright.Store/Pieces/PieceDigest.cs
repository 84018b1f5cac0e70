using System.Text;
using System.Text.Json;

namespace Ringwright.Store.Pieces;

/// <summary>What is found in a piece's document for the library: its kind, its woods, and the words it is searched by.</summary>
/// <param name="Kind">The document's kind; null when absent.</param>
/// <param name="Woods">Its woods, each once, separated by line feeds.</param>
/// <param name="Words">Names, notes, kinds of construction and woods.</param>
internal sealed record PieceDigest(string? Kind, string Woods, string Words)
{
    public static PieceDigest Of(string document)
    {
        using JsonDocument json = JsonDocument.Parse(document);
        var woods = new List<string>();
        var words = new List<string>();
        Gather(json.RootElement, "", woods, words);
        string? kind = json.RootElement.TryGetProperty("kind", out JsonElement k) ? k.GetString() : null;
        return new(kind, string.Join('\n', woods.Distinct()), string.Join(' ', words.Distinct()));
    }

    /// <summary>Search text as a question to the full-text index: every word, or its beginning, must stand in the piece. Null when there is no word.</summary>
    public static string? Query(string search)
    {
        var word = new StringBuilder();
        foreach (Rune rune in search.EnumerateRunes())
        {
            if (Rune.IsLetterOrDigit(rune)) word.Append(rune.ToString());
            else word.Append(' ');
        }

        string[] words = word.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words.Length == 0 ? null : string.Join(' ', words.Select(w => $"\"{w}\"*"));
    }

    private static void Gather(JsonElement element, string field, List<string> woods, List<string> words)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object:
                foreach (JsonProperty property in element.EnumerateObject()) Gather(property.Value, property.Name, woods, words);
                break;
            case JsonValueKind.Array:
                foreach (JsonElement item in element.EnumerateArray()) Gather(item, field, woods, words);
                break;
            case JsonValueKind.String when field is "wood" or "woods":
                woods.Add(element.GetString()!);
                words.Add(element.GetString()!);
                break;
            case JsonValueKind.String when field is "name" or "kind" or "construction" or "notes":
                words.Add(element.GetString()!);
                break;
        }
    }
}
