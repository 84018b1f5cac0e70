using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Ringwright.Core.Boards;
using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Core.Tests.Documents;

public class SchemaTests
{
    private static readonly string Root = SolutionFolder.Path;
    private static readonly JsonSchema PieceSchema = JsonSchema.FromText(File.ReadAllText(Path.Combine(Root, "docs/schema/piece-1.schema.json")));
    private static readonly JsonSchema ShopSchema = JsonSchema.FromText(File.ReadAllText(Path.Combine(Root, "docs/schema/shop-1.schema.json")));

    private static readonly JsonSchema RecordSchema = JsonSchema.FromText(File.ReadAllText(Path.Combine(Root, "docs/schema/record-1.schema.json")));

    private static readonly JsonSchema RackSchema = JsonSchema.FromText(File.ReadAllText(Path.Combine(Root, "docs/schema/rack-1.schema.json")));

    private static readonly JsonSchema PlanSchema = JsonSchema.FromText(File.ReadAllText(Path.Combine(Root, "docs/schema/plan-1.schema.json")));

    public static TheoryData<string> Examples => [.. Directory.GetFiles(Path.Combine(Root, "examples"), "*.json").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void Examples_follow_the_published_schema_and_round_trip(string file)
    {
        string text = File.ReadAllText(Path.Combine(Root, "examples", file));
        (JsonSchema schema, Func<string, string> rewrite) = ByFormat(text);
        Assert.True(IsValid(schema, text));
        string written = rewrite(text);
        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(text), JsonNode.Parse(written)), written);
    }

    public static TheoryData<string> Pieces => [.. Examples.Select(e => e.Data).Where(f => File.ReadAllText(Path.Combine(Root, "examples", f)).Contains(Piece.FormatName, StringComparison.Ordinal))];

    // It allows no other fields, so the page that is made from it tells of all that is written.
    [Theory]
    [MemberData(nameof(Pieces))]
    public void Plans_follow_the_published_schema(string file)
    {
        Piece piece = DocumentJson.ReadPiece(File.ReadAllText(Path.Combine(Root, "examples", file)));
        EvaluationResults results = PlanSchema.Evaluate(JsonDocument.Parse(PlanJson.Write(Planner.Plan(piece, Shop.Starting), MeasureStyle.Millimetres)).RootElement, new() { OutputFormat = OutputFormat.List });
        Assert.Equal([], (results.Details ?? []).Where(d => !d.IsValid && d.Errors is not null).Select(d => $"{d.InstanceLocation}: {string.Join(", ", d.Errors!.Values)}"));
        Assert.True(results.IsValid);
    }

    [Fact]
    public void Every_field_of_every_schema_says_what_it_means()
    {
        foreach (string file in Directory.GetFiles(Path.Combine(Root, "docs", "schema"))) Fields(JsonNode.Parse(File.ReadAllText(file))!, Path.GetFileName(file));

        static void Fields(JsonNode? node, string place)
        {
            if (node is JsonArray list) foreach (JsonNode? item in list) Fields(item, place);
            if (node is not JsonObject group) return;
            foreach ((string name, JsonNode? inner) in group)
            {
                if (name == "properties" && !place.EndsWith("/then", StringComparison.Ordinal))
                    foreach ((string field, JsonNode? means) in inner!.AsObject()) Assert.False(string.IsNullOrWhiteSpace(means!["description"]?.GetValue<string>()), $"{place}: {field}");
                Fields(inner, $"{place}/{name}");
            }
        }
    }

    [Theory]
    [InlineData("\"segments\": 24", "\"segments\": 2")]
    [InlineData("\"19 mm\"", "19")]
    [InlineData("\"wedge disc\"", "\"star\"")]
    [InlineData("\"bore\"", "\"tip\": \"1 mm\", \"boardWidth\"")]
    public void The_schema_refuses_what_the_reader_refuses(string good, string bad)
    {
        string text = File.ReadAllText(Path.Combine(Root, "examples/two-wood-disc.json"));
        Assert.Contains(good, text, StringComparison.Ordinal);
        Assert.False(IsValid(PieceSchema, text.Replace(good, bad, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("\"620 mm\"", "\"0 mm\"")]
    [InlineData("\"620 mm\"", "620")]
    [InlineData("\"moisture\": 8.2", "\"moisture\": 0")]
    [InlineData("\"wood\": \"maple\", ", "")]
    public void The_schema_of_racks_refuses_what_the_reader_refuses(string good, string bad)
    {
        string text = File.ReadAllText(Path.Combine(Root, "examples/small-rack.json"));
        Assert.Contains(good, text, StringComparison.Ordinal);
        string changed = text.Replace(good, bad, StringComparison.Ordinal);
        Assert.False(IsValid(RackSchema, changed));
        Assert.Throws<BadInputException>(() => DocumentJson.ReadRack(changed));
    }

    [Fact]
    public void The_schema_names_every_field_that_is_written()
    {
        JsonObject shop = JsonNode.Parse(DocumentJson.Write(Shop.Starting))!.AsObject();
        JsonNode schema = JsonNode.Parse(File.ReadAllText(Path.Combine(Root, "docs/schema/shop-1.schema.json")))!;
        foreach ((string group, JsonNode? fields) in shop)
        {
            JsonNode? known = schema["properties"]![group];
            Assert.NotNull(known);
            if (fields is JsonObject inner)
                foreach ((string field, _) in inner) Assert.NotNull(known["properties"]![field]);
        }
    }

    private static (JsonSchema Schema, Func<string, string> Rewrite) ByFormat(string text) => JsonNode.Parse(text)!["format"]!.GetValue<string>() switch
    {
        Piece.FormatName => (PieceSchema, t => DocumentJson.Write(DocumentJson.ReadPiece(t))),
        Shop.FormatName => (ShopSchema, t => DocumentJson.Write(DocumentJson.ReadShop(t))),
        RunLog.FormatName => (RecordSchema, t => DocumentJson.Write(DocumentJson.ReadRunLog(t))),
        Rack.FormatName => (RackSchema, t => DocumentJson.Write(DocumentJson.ReadRack(t))),
        string other => throw new InvalidOperationException($"No schema for {other}."),
    };

    private static bool IsValid(JsonSchema schema, string text)
    {
        using JsonDocument json = JsonDocument.Parse(text);
        return schema.Evaluate(json.RootElement).IsValid;
    }
}
