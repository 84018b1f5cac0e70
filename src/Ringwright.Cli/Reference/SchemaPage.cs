using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;

namespace Ringwright.Cli.Reference;

/// <summary>The page about the files, as Markdown, from their published schemas and one of the examples.</summary>
internal static class SchemaPage
{
    private static readonly string[] Names = ["piece", "shop", "rack", "record", "plan"];

    // Texts that mean a size; they are told once.
    private static readonly string[] Sizes = ["length", "angle", "time", "temperature"];

    private static readonly JsonSerializerOptions Readable = new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The whole page, ending with a line feed.</summary>
    public static string Write()
    {
        var page = new StringBuilder("# The files\n\n<!-- Written by `dotnet run --project src/Ringwright.Cli -- reference file-format`; a test compares. Change the schemas or src/Ringwright.Cli/Reference. -->\n\n");
        SchemaTree[] schemas = [.. Names.Select(n => new SchemaTree(JsonNode.Parse(ReferenceText.Read($"schema/{n}.json")!)!.AsObject()))];
        page.Append(ReferenceText.Read("reference/files.md")).Append("\n| | written |\n|---|---|\n");
        foreach (string size in Sizes)
            page.Append(CultureInfo.InvariantCulture, $"| {size} | {ReferenceText.Cell(Told(schemas, size))} |\n");
        foreach ((string name, SchemaTree schema) in Names.Zip(schemas)) Section(page, name, schema);
        return page.ToString();
    }

    // The schema that tells most of it.
    private static string Told(IEnumerable<SchemaTree> schemas, string size) =>
        schemas.Select(s => s.Definition(size)?["description"]?.GetValue<string>()).OfType<string>().MaxBy(t => t.Length) ?? throw new InvalidOperationException($"No schema tells how a {size} is written.");

    private static void Section(StringBuilder page, string name, SchemaTree schema)
    {
        page.Append(CultureInfo.InvariantCulture, $"\n## The {name}\n\n{schema.Root["description"]!.GetValue<string>()} Schema: [{name}-1.schema.json](schema/{name}-1.schema.json).\n");
        JsonNode? starting = name == "shop" ? JsonNode.Parse(DocumentJson.Write(Shop.Starting)) : null;
        foreach (SchemaGroup group in schema.Groups()) Table(page, group, group.Path.Aggregate(starting, (node, field) => (node as JsonObject)?[field]) as JsonObject);
        if (name == "piece") Example(page, schema);
    }

    // With the values that a new file would have, where there are some.
    private static void Table(StringBuilder page, SchemaGroup group, JsonObject? starting)
    {
        if (group.Title.Length > 0) page.Append(CultureInfo.InvariantCulture, $"\n### {group.Title}\n");
        if (group.Means.Length > 0) page.Append(CultureInfo.InvariantCulture, $"\n{group.Means}\n");
        page.Append("\n| field | is | means |\n|---|---|---|\n");
        foreach (SchemaField field in group.Fields)
            page.Append(CultureInfo.InvariantCulture, $"| `{field.Name}`{(field.Needed ? " *" : "")} | {ReferenceText.Cell(field.Kind)} | {ReferenceText.Cell(field.Means)}{Starting(field, starting)} |\n");
        if (group.Fields.Any(f => f.Needed)) page.Append("\n\\* needed\n");
    }

    private static string Starting(SchemaField field, JsonObject? starting) => starting?[field.Name] switch
    {
        null or JsonObject => "",
        JsonArray list when list.All(n => n is JsonValue) => $" Without it {string.Join(", ", list.Select(n => n!.ToString()))}.",
        JsonArray => "",
        JsonNode value => field.Needed || field.Means.Contains("Otherwise", StringComparison.Ordinal) ? "" : $" Without it {value}.",
    };

    private static void Example(StringBuilder page, SchemaTree schema)
    {
        page.Append("\n### A piece, line by line\n\nThe file `examples/two-wood-disc.json`; comments are not part of it.\n\n```jsonc\n");
        JsonObject piece = JsonNode.Parse(ReferenceText.Read("example/piece.json")!)!.AsObject();
        page.Append("{\n");
        Lines(page, piece, schema, schema.Root, "  ");
        page.Append("}\n```\n");
    }

    private static void Lines(StringBuilder page, JsonObject group, SchemaTree schema, JsonObject definition, string indent)
    {
        (string Name, JsonNode? Value)[] fields = [.. group.Select(f => (f.Key, f.Value))];
        for (int i = 0; i < fields.Length; i++)
        {
            (string name, JsonNode? value) = fields[i];
            string comma = i + 1 < fields.Length ? "," : "";
            JsonObject? field = schema.Fields(schema.Fitting(definition, group)).GetValueOrDefault(name);
            string means = name == "$schema" ? "The schema, for editors." : field is null ? throw new InvalidOperationException($"The schema does not tell of {name}.") : schema.Means(field);
            page.Append(CultureInfo.InvariantCulture, $"{indent}// {means}\n{indent}{JsonSerializer.Serialize(name, Readable)}: ");
            switch (value)
            {
                case JsonObject inner:
                    page.Append("{\n");
                    Lines(page, inner, schema, schema.Resolved(field!), indent + "  ");
                    page.Append(CultureInfo.InvariantCulture, $"{indent}}}{comma}\n");
                    break;
                case JsonArray list when list.All(n => n is JsonObject):
                    page.Append("[\n");
                    Items(page, list, schema, schema.Item(field!)!, indent + "  ");
                    page.Append(CultureInfo.InvariantCulture, $"{indent}]{comma}\n");
                    break;
                case JsonArray list:
                    page.Append(CultureInfo.InvariantCulture, $"[{string.Join(", ", list.Select(n => n!.ToJsonString(Readable)))}]{comma}\n");
                    break;
                default:
                    page.Append(value!.ToJsonString(Readable)).Append(comma).Append('\n');
                    break;
            }
        }
    }

    private static void Items(StringBuilder page, JsonArray list, SchemaTree schema, JsonObject item, string indent)
    {
        for (int i = 0; i < list.Count; i++)
        {
            page.Append(CultureInfo.InvariantCulture, $"{indent}{{\n");
            Lines(page, list[i]!.AsObject(), schema, item, indent + "  ");
            page.Append(CultureInfo.InvariantCulture, $"{indent}}}{(i + 1 < list.Count ? "," : "")}\n");
        }
    }
}
