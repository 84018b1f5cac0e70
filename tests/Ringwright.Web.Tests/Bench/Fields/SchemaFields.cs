using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Ringwright.Web.Tests.Bench.Fields;

/// <summary>
/// The fields that a published schema names, and those in which two documents differ, as paths: <c>lathe.jaws.tenonFrom</c>,
/// <c>rings[](wedge disc).woods[]</c>. What stands in round brackets is the kind that the object says it is of.
/// </summary>
internal static partial class SchemaFields
{
    private static readonly string[] Kinds = ["construction", "hollow"];

    /// <summary>All fields of a schema that hold a value; those with one possible value only are left out.</summary>
    public static IEnumerable<string> Of(string schemaFile)
    {
        JsonNode root = JsonNode.Parse(File.ReadAllText(Path.Combine(SolutionFolder.Path, "docs/schema", schemaFile)))!;
        return Leaves(root, root, "").Distinct(StringComparer.Ordinal);
    }

    /// <summary>The fields that are new or other in <paramref name="after"/>.</summary>
    public static IEnumerable<string> Changed(string before, string after)
    {
        Dictionary<string, string> old = Values(JsonNode.Parse(before), "").ToDictionary();
        return Values(JsonNode.Parse(after), "").Where(v => !old.TryGetValue(v.Key, out string? was) || was != v.Value).Select(v => Index().Replace(v.Key, "[]"));
    }

    private static IEnumerable<string> Leaves(JsonNode schema, JsonNode root, string path)
    {
        if (schema["$ref"] is JsonNode reference) schema = root["$defs"]![reference.GetValue<string>()["#/$defs/".Length..]]!;
        if (schema["const"] is not null) return [];
        if (schema["oneOf"] is JsonArray kinds) return kinds.SelectMany(k => Leaves(k!, root, path));
        if (schema["items"] is JsonNode items) return Leaves(items, root, path + "[]");
        KeyValuePair<string, JsonNode?>[] fields = [.. Properties(schema, root)];
        if (fields.Length == 0) return [path];
        string? kind = fields.Where(f => Kinds.Contains(f.Key)).Select(f => f.Value!["const"]?.GetValue<string>()).FirstOrDefault();
        string start = (kind is null ? path : $"{path}({kind})") is { Length: > 0 } inner ? inner + "." : "";
        return fields.SelectMany(f => Leaves(f.Value!, root, start + f.Key));
    }

    private static IEnumerable<KeyValuePair<string, JsonNode?>> Properties(JsonNode schema, JsonNode root) =>
    [
        .. schema["allOf"] is JsonArray all ? all.SelectMany(a => Properties(root["$defs"]![a!["$ref"]!.GetValue<string>()["#/$defs/".Length..]]!, root)) : [],
        .. schema["properties"] is JsonObject own ? own : [],
    ];

    private static IEnumerable<KeyValuePair<string, string>> Values(JsonNode? node, string path)
    {
        switch (node)
        {
            case JsonObject fields:
                string? kind = Kinds.Select(k => fields[k]?.GetValue<string>()).FirstOrDefault(k => k is not null);
                string start = (kind is null ? path : $"{path}({kind})") is { Length: > 0 } inner ? inner + "." : "";
                return fields.SelectMany(f => Values(f.Value, start + f.Key));
            case JsonArray list:
                return list.SelectMany((item, i) => Values(item, $"{path}[{i}]"));
            default:
                return [KeyValuePair.Create(path, node?.ToJsonString() ?? "null")];
        }
    }

    [GeneratedRegex(@"\[\d+\]")]
    private static partial Regex Index();
}
