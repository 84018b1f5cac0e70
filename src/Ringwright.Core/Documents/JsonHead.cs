using System.Text.Json;
using System.Text.RegularExpressions;

namespace Ringwright.Core.Documents;

/// <summary>Checks a file's <c>format</c> and <c>version</c> before anything else is read, so that a newer file gets the right sentence.</summary>
internal static partial class JsonHead
{
    public static void Check(string json, string format, int newest)
    {
        if (!OneLine.IsWhole(json)) throw Halved("file");
        using JsonDocument document = JsonDocument.Parse(json, new JsonDocumentOptions { MaxDepth = 32 });
        JsonElement root = document.RootElement;
        if (Surrogate().IsMatch(json)) CheckTexts(root, "file");
        string right = $"a file starting with \"format\": \"{format}\", \"version\": {newest} is needed";
        if (root.ValueKind != JsonValueKind.Object) throw new BadInputException("file", "it is not a group of fields in { }", right);
        if (!root.TryGetProperty("format", out JsonElement name)) throw new BadInputException("format", "the field is missing", right);
        if (name.ValueKind != JsonValueKind.String || name.GetString() != format)
            throw new BadInputException("format", $"it says {Found.Shorten(name.GetRawText())}", right);
        if (!root.TryGetProperty("version", out JsonElement version)) throw new BadInputException("version", "the field is missing", right);
        if (version.ValueKind != JsonValueKind.Number || !version.TryGetInt32(out int number) || number < 1)
            throw new BadInputException("version", $"it says {Found.Shorten(version.GetRawText())}", right);
        if (number > newest)
            throw new BadInputException("version", $"the file is of version {number} and this Ringwright reads up to {newest}", "a newer Ringwright is needed; the file was left as it is");
    }

    // Half a character can be written as \ud800; nothing can be done with it, not even writing it again.
    private static void CheckTexts(JsonElement element, string place)
    {
        try
        {
            if (element.ValueKind == JsonValueKind.String) element.GetString();
            else if (element.ValueKind == JsonValueKind.Array)
                foreach (JsonElement child in element.EnumerateArray()) CheckTexts(child, place);
            else if (element.ValueKind == JsonValueKind.Object)
                foreach (JsonProperty field in element.EnumerateObject()) CheckTexts(field.Value, field.Name);
        }
        catch (InvalidOperationException)
        {
            throw Halved(place);
        }
    }

    private static BadInputException Halved(string place) => new(place, "a text holds half of a character (an unpaired surrogate)", "remove or retype the character");

    [GeneratedRegex(@"\\u[dD][89a-fA-F]")]
    private static partial Regex Surrogate();
}
