using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Ringwright.Fuzz.Making;

/// <summary>Changes a JSON document where it is likely to hurt: values, fields, elements, kinds; and now and then its text.</summary>
public static partial class JsonMutator
{
    private static readonly string[] OddValues =
    [
        "null", "true", "false", "0", "-0", "-1", "1", "2", "3", "360", "361", "2147483647", "2147483648", "-2147483648", "1e308", "-1e308", "1e-320", "1e999", "0.5", "1.0000000000000002", "12345678901234567890", "1.5e1", "[]", "{}", "[null]", "[[]]", "[{}]", "{\"a\":1}",
        "\"\"", "\" \"", "\"0 mm\"", "\"-5 mm\"", "\"NaN mm\"", "\"∞ mm\"", "\"1e9 mm\"", "\"0.0000001 mm\"", "\"10000 m\"", "\"3000 mm\"", "\"3001 mm\"", "\"0.5 mm\"", "\"0.499 mm\"", "\"1/0 in\"", "\"1/64 in\"", "\"99999999 in\"", "\"0°\"", "\"90°\"", "\"180°\"", "\"360°\"", "\"-10°\"", "\"0.0001°\"",
        "\"-300 °C\"", "\"1 h 1 h\"", "\"0 min\"", "\"4000 days\"", "\"\\u0000\"", "\"\\ud800\"", "\"\\udc00\\ud800\"", "\"\\u202e\"", "\"{0}\"", "\"<&>\"", "\"😀\"", "\"wall\"", "\"bore\"", "\"drawn\"", "\"wedge disc\"", "\"segment ring\"", "\"open ring\"", "\"mixed ring\"", "\"stave ring\"", "\"laminated ring\"", "\"board ring\"", "\"solid layer\"", "\"in\"", "\"maple\"",
    ];

    private static readonly JsonSerializerOptions Plain = new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping, WriteIndented = false, MaxDepth = 1000 };

    /// <summary>The document with one to several changes.</summary>
    public static string Mutate(Dice dice, string json)
    {
        JsonNode? root = JsonNode.Parse(json);
        for (int changes = 1 + dice.Below(4); changes > 0 && root is not null; changes--) Change(dice, root);
        string text = root?.ToJsonString(Plain) ?? "null";
        text = Markers().Replace(text, m => Replacement(dice, m.Groups[1].Value));
        return dice.Chance(0.12) ? OddText.Mutate(dice, text) : text;
    }

    /// <summary>Every document that lacks one field or element of this one; empty when it is not JSON.</summary>
    public static IEnumerable<string> Without(string json)
    {
        int count = Places(json).Count;
        for (int i = 0; i < count; i++)
        {
            if (Lacking(json, i) is string simpler) yield return simpler;
        }
    }

    // Null when what is left cannot be written: it holds half a character.
    private static string? Lacking(string json, int place)
    {
        JsonNode root = JsonNode.Parse(json)!;
        (JsonNode parent, object key) = PlacesIn(root)[place];
        if (parent is JsonObject fields) fields.Remove((string)key);
        else ((JsonArray)parent).RemoveAt((int)key);
        try
        {
            return root.ToJsonString(Plain);
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }

    private static List<(JsonNode Parent, object Key)> Places(string json)
    {
        try
        {
            return JsonNode.Parse(json) is JsonNode root ? PlacesIn(root) : [];
        }
        catch (Exception e) when (e is JsonException or ArgumentException or InvalidOperationException)
        {
            return [];
        }
    }

    private static List<(JsonNode Parent, object Key)> PlacesIn(JsonNode root)
    {
        var found = new List<(JsonNode, object)>();
        Collect(root);
        return found;

        void Collect(JsonNode? node)
        {
            if (node is JsonObject fields)
                foreach ((string name, JsonNode? value) in fields)
                {
                    found.Add((fields, name));
                    Collect(value);
                }
            else if (node is JsonArray list)
                for (int i = 0; i < list.Count; i++)
                {
                    found.Add((list, i));
                    Collect(list[i]);
                }
        }
    }

    private static void Change(Dice dice, JsonNode root)
    {
        List<(JsonNode Parent, object Key)> places = PlacesIn(root);
        if (places.Count == 0) return;
        (JsonNode parent, object key) = dice.One(places);
        JsonNode? value = parent is JsonObject o ? o[(string)key] : ((JsonArray)parent)[(int)key];
        switch (dice.Below(12))
        {
            case 0 when parent is JsonObject fields: fields.Remove((string)key); break;
            case 0 or 1 when parent is JsonArray list: list.RemoveAt((int)key); break;
            case 1 when parent is JsonObject fields: fields[OddText.Name(dice, "added")] = value?.DeepClone(); break;
            case 2 when parent is JsonArray list: Repeat(dice, list, value); break;
            case 2 when parent is JsonObject fields: Set(parent, key, Marker($"twice {key}", fields)); break;
            case 3: Set(parent, key, dice.One(places) is (JsonObject from, string name) ? from[name]?.DeepClone() : null); break;
            case 4: Set(parent, key, Marker("odd")); break;
            case 5: Set(parent, key, Marker("deep")); break;
            case 6: Set(parent, key, JsonValue.Create(OddText.Name(dice, new string('w', dice.Chance(0.02) ? 200_000 : dice.From(1, 200))))); break;
            default: Set(parent, key, Near(dice, value)); break;
        }
    }

    private static void Set(JsonNode parent, object key, JsonNode? value)
    {
        if (parent is JsonObject fields) fields[(string)key] = value;
        else ((JsonArray)parent)[(int)key] = value;
    }

    private static void Repeat(Dice dice, JsonArray list, JsonNode? value)
    {
        int times = dice.Chance(0.05) ? dice.From(50, 600) : dice.From(1, 5);
        for (int i = 0; i < times; i++)
        {
            JsonNode? copy = value?.DeepClone();
            if (copy is JsonObject fields && fields.ContainsKey("name") && dice.Chance(0.9)) fields["name"] = string.Create(CultureInfo.InvariantCulture, $"R{list.Count}");
            list.Add(copy);
        }
    }

    // What JsonNode cannot hold is put into the text afterwards.
    private static JsonValue Marker(string what, JsonObject? _ = null) => JsonValue.Create($"\u0001{what}\u0001");

    private static string Replacement(Dice dice, string marker) => marker switch
    {
        "odd" => dice.One(OddValues),
        "deep" => Deep(dice.Chance(0.1) ? dice.From(60, 5000) : dice.From(2, 40), dice.Chance(0.5)),
        _ when !marker.StartsWith("twice ", StringComparison.Ordinal) => "1",
        _ => $"1,\"{marker["twice ".Length..]}\":{dice.One(OddValues)}",
    };

    private static string Deep(int depth, bool lists) => lists
        ? new string('[', depth) + new string(']', depth)
        : string.Concat(Enumerable.Repeat("{\"a\":", depth)) + "1" + new string('}', depth);

    // A value of the same kind, somewhat or much larger or smaller.
    private static JsonNode? Near(Dice dice, JsonNode? value)
    {
        if (value is not JsonValue leaf) return value?.DeepClone();
        double factor = dice.Below(4) switch { 0 => dice.Scale(1e-9, 1e9), 1 => -dice.Scale(0.1, 10), _ => dice.Scale(0.05, 20) };
        if (leaf.TryGetValue(out bool flag)) return JsonValue.Create(!flag);
        if (leaf.TryGetValue(out int whole)) return JsonValue.Create((int)Math.Clamp(dice.Chance(0.5) ? whole + dice.From(-3, 3) : whole * factor, int.MinValue, int.MaxValue));
        if (leaf.TryGetValue(out double number)) return JsonValue.Create(number * factor);
        if (!leaf.TryGetValue(out string? text)) return leaf.DeepClone();
        Match measure = Measure().Match(text);
        if (!measure.Success || !double.TryParse(measure.Groups[1].ValueSpan, NumberStyles.Float, CultureInfo.InvariantCulture, out double size)) return JsonValue.Create(dice.Chance(0.5) ? OddText.Mutate(dice, text) : dice.One(["maple", "walnut", "wall", "rim", "tenon", "x"]));
        string scaled = dice.Chance(0.5) ? (size * factor).ToString("0.####", CultureInfo.InvariantCulture) : (size * factor).ToString("0.##############", CultureInfo.InvariantCulture);
        return JsonValue.Create(dice.Chance(0.1) ? NumberText.Length(dice) : scaled + measure.Groups[2].Value);
    }

    [GeneratedRegex(@"^(-?[\d.]+)( ?(?:mm|in|°|°C|min|h))$")]
    private static partial Regex Measure();

    [GeneratedRegex("\"\\\\u0001([^\"]*?)\\\\u0001\"")]
    private static partial Regex Markers();
}
