using System.Text.Json.Nodes;

namespace Ringwright.Cli.Reference;

/// <summary>A field as the page tells it.</summary>
internal sealed record SchemaField(string Name, bool Needed, string Kind, string Means);

/// <summary>A group of fields with its place in the file.</summary>
internal sealed record SchemaGroup(string Title, IReadOnlyList<string> Path, string Means, IReadOnlyList<SchemaField> Fields);

/// <summary>Reads as much of JSON Schema as our own schemas use: properties, $ref, allOf, oneOf, arrays, enum and const.</summary>
internal sealed class SchemaTree(JsonObject root)
{
    /// <summary>The outermost group.</summary>
    public JsonObject Root => root;

    /// <summary>What the schema calls <paramref name="name"/>; null when it has no such definition.</summary>
    public JsonObject? Definition(string name) => name == "temperature"
        ? Definition("air")?["properties"]?["temperature"]?.AsObject()
        : root["$defs"]?[name]?.AsObject();

    /// <summary>The outermost group and all that lie in it, each once and before what lies in it.</summary>
    public IEnumerable<SchemaGroup> Groups() => Groups("", [], root, []);

    private IEnumerable<SchemaGroup> Groups(string title, string[] path, JsonObject group, HashSet<JsonObject> met)
    {
        if (!met.Add(group)) yield break;
        IReadOnlyDictionary<string, JsonObject> fields = Fields(group);
        string[] needed = [.. All(group).SelectMany(g => g["required"]?.AsArray() ?? []).Select(n => n!.GetValue<string>())];
        yield return new(title, path, title.Length > 0 ? group["description"]?.GetValue<string>() ?? "" : "",
            [.. fields.Select(f => new SchemaField(f.Key, needed.Contains(f.Key), Kind(f.Value), Means(f.Value)))]);
        foreach ((string name, JsonObject field) in fields)
            foreach ((string which, JsonObject inner) in Inner(field))
                foreach (SchemaGroup below in Groups($"{(title.Length > 0 ? title + ", " : "")}`{name}`{which}", [.. path, name], inner, met)) yield return below;
    }

    /// <summary>The fields of a group with those it takes over.</summary>
    public IReadOnlyDictionary<string, JsonObject> Fields(JsonObject group)
    {
        var fields = new Dictionary<string, JsonObject>(StringComparer.Ordinal);
        // What tells the kind comes first, then what all kinds have in common.
        foreach (JsonObject part in All(group).Reverse())
            foreach ((string name, JsonNode? field) in part["properties"]?.AsObject() ?? []) fields[name] = field!.AsObject();
        return fields.OrderBy(f => f.Value["const"] is null).ToDictionary(f => f.Key, f => f.Value, StringComparer.Ordinal);
    }

    /// <summary>What a field means: its own words, or those of what it refers to.</summary>
    public string Means(JsonObject field)
    {
        string means = (field["description"] ?? Resolved(field)["description"])?.GetValue<string>() ?? throw new InvalidOperationException($"The schema does not say what this means: {field.ToJsonString()}");
        return field["default"] is JsonNode otherwise ? $"{means} Otherwise {otherwise.ToJsonString()}." : means;
    }

    /// <summary>What a reference leads to; the field itself without one.</summary>
    public JsonObject Resolved(JsonObject field) => field["$ref"] is JsonNode reference ? Resolved(root["$defs"]![reference.GetValue<string>()["#/$defs/".Length..]]!.AsObject()) : field;

    /// <summary>What stands in a list; null when the field is none.</summary>
    public JsonObject? Item(JsonObject field) => Resolved(field)["items"]?.AsObject();

    /// <summary>Of several kinds of group the one that <paramref name="value"/> is.</summary>
    public JsonObject Fitting(JsonObject definition, JsonObject value)
    {
        JsonObject group = Resolved(definition);
        if (group["oneOf"] is not JsonArray kinds) return group;
        return kinds.Select(k => Resolved(k!.AsObject())).First(kind => Fields(kind).Where(f => f.Value["const"] is not null)
            .All(f => JsonNode.DeepEquals(f.Value["const"], value[f.Key])));
    }

    private IEnumerable<JsonObject> All(JsonObject group) => (group["allOf"]?.AsArray() ?? []).SelectMany(part => All(Resolved(part!.AsObject()))).Prepend(group);

    // The groups in a field, with what tells several kinds apart.
    private IEnumerable<(string Which, JsonObject Group)> Inner(JsonObject field)
    {
        JsonObject group = Resolved(field);
        while (group["items"] is JsonObject item) group = Resolved(item);
        if (group["oneOf"] is JsonArray kinds)
        {
            foreach (JsonNode? kind in kinds)
                yield return ($": {Fields(Resolved(kind!.AsObject())).Select(f => f.Value["const"]?.GetValue<string>()).First(c => c is not null)}", Resolved(kind!.AsObject()));
        }
        else if (group["properties"] is not null || group["allOf"] is not null) yield return ("", group);
    }

    private string Kind(JsonObject field)
    {
        if (field["const"] is JsonNode only) return $"`{only.ToJsonString()}`";
        if (field["enum"] is JsonArray words) return string.Join(", ", words.Select(w => $"`{w!.GetValue<string>()}`"));
        JsonObject resolved = Resolved(field);
        if (resolved["enum"] is not null) return Kind(resolved);
        string name = field["$ref"]?.GetValue<string>()["#/$defs/".Length..] ?? "";
        if (name is "length" or "angle" or "time") return name;
        if (name == "place") return "length";
        if (ReferenceEquals(field, Definition("temperature"))) return "temperature";
        if (Item(field) is JsonObject item) return $"list of {Several(Kind(item))}";
        if (resolved["oneOf"] is not null || resolved["properties"] is not null || resolved["allOf"] is not null) return "group";
        return resolved["type"]?.GetValue<string>() switch
        {
            "integer" => "whole number" + Range(resolved),
            "number" => "number" + Range(resolved),
            "boolean" => "true or false",
            "string" => "text",
            string other => other,
            null => throw new InvalidOperationException($"The schema does not say what this is: {field.ToJsonString()}"),
        };
    }

    private static string Several(string kind) => kind.StartsWith("list of", StringComparison.Ordinal) ? "lists" + kind["list".Length..] : kind.StartsWith('`') ? kind : kind.Replace("number", "numbers", StringComparison.Ordinal) switch
    {
        "length" or "angle" or "group" or "text" => kind + "s",
        string other => other,
    };

    private static string Range(JsonObject field)
    {
        string? least = field["minimum"]?.ToJsonString(), most = field["maximum"]?.ToJsonString(), above = field["exclusiveMinimum"]?.ToJsonString();
        return (least ?? above, most) switch
        {
            (string from, string to) => above is null ? $", {from} to {to}" : $", above {from} to {to}",
            (string from, null) => above is null ? $", {from} or more" : $", above {from}",
            (null, string to) => $", at most {to}",
            _ => "",
        };
    }
}
