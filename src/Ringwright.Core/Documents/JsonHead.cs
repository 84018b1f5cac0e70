using System.Text.Json;

namespace Ringwright.Core.Documents;

/// <summary>Checks a file's <c>format</c> and <c>version</c> before anything else is read, so that a newer file gets the right sentence.</summary>
internal static class JsonHead
{
    public static void Check(string json, string format, int newest)
    {
        using JsonDocument document = JsonDocument.Parse(json, new JsonDocumentOptions { MaxDepth = 32 });
        JsonElement root = document.RootElement;
        string right = $"a file starting with \"format\": \"{format}\", \"version\": {newest} is needed";
        if (root.ValueKind != JsonValueKind.Object) throw new BadInputException("file", "it is not a group of fields in { }", right);
        if (!root.TryGetProperty("format", out JsonElement name)) throw new BadInputException("format", "the field is missing", right);
        if (name.ValueKind != JsonValueKind.String || name.GetString() != format)
            throw new BadInputException("format", $"it says {name.GetRawText()}", right);
        if (!root.TryGetProperty("version", out JsonElement version)) throw new BadInputException("version", "the field is missing", right);
        if (version.ValueKind != JsonValueKind.Number || !version.TryGetInt32(out int number) || number < 1)
            throw new BadInputException("version", $"it says {version.GetRawText()}", right);
        if (number > newest)
            throw new BadInputException("version", $"the file is of version {number} and this Ringwright reads up to {newest}", "a newer Ringwright is needed; the file was left as it is");
    }
}
