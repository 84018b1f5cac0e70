using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Ringwright.Core.Boards;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Documents;

/// <summary>
/// Reads and writes the JSON text of pieces, shops, records and racks. Reading is strict and answers with one sentence that names the
/// field and the line; fields of newer or other programs are kept. Writing what was read gives the same data back.
/// </summary>
public static class DocumentJson
{
    /// <summary>Largest text read, in characters: far above any piece, small enough never to fill the memory.</summary>
    public const int LargestText = 16 * 1024 * 1024;

    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.General)
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        Encoder = JsonText.Encoder,
        AllowOutOfOrderMetadataProperties = true,
        AllowDuplicateProperties = false,
        RespectNullableAnnotations = true,
        MaxDepth = 32,
        Converters =
        {
            new WrittenConverter<Length>("a length with its unit in quotes, such as \"35 mm\" or \"1 3/8 in\"", (string? text, out Length length, [NotNullWhen(false)] out ParseError? error) => Length.TryParse(text, null, out length, out error)),
            new WrittenConverter<Angle>("an angle in quotes, such as \"7.5°\"", Angle.TryParse),
            new WrittenConverter<Temperature>("a temperature with its unit in quotes, such as \"21 °C\" or \"70 °F\"", Temperature.TryParse),
            new WrittenConverter<Duration>("a time with its unit in quotes, such as \"10 min\" or \"1 h 30 min\"", Duration.TryParse),
            new WholeNumberConverter(),
            new NumberConverter(),
            new TextConverter(),
            new UnitConverter(),
            new WordConverter<SledKind>(),
            new WordConverter<OpenAt>(),
            new WordConverter<PieceKind>(),
            new WordConverter<HoldingKind>(),
            new WordConverter<WoodMeasure>(),
        },
    };

    /// <summary>Reads and checks a piece.</summary>
    /// <exception cref="BadInputException">Not JSON, another format, a newer version, a field that is missing or wrong.</exception>
    public static Piece ReadPiece(string json)
    {
        Piece piece = Read<Piece>(json, Piece.FormatName, Piece.CurrentVersion);
        PieceCheck.Check(piece);
        return piece;
    }

    /// <summary>Reads and checks a shop.</summary>
    /// <exception cref="BadInputException">Not JSON, another format, a newer version, a field that is missing or wrong.</exception>
    public static Shop ReadShop(string json)
    {
        Shop shop = Read<Shop>(json, Shop.FormatName, Shop.CurrentVersion);
        ShopCheck.Check(shop);
        return shop;
    }

    /// <summary>Reads and checks a record of runs.</summary>
    /// <exception cref="BadInputException">Not JSON, another format, a newer version, a field that is missing or wrong.</exception>
    public static RunLog ReadRunLog(string json)
    {
        RunLog log = Read<RunLog>(json, RunLog.FormatName, RunLog.CurrentVersion);
        RunLogCheck.Check(log);
        return log;
    }

    /// <summary>Reads and checks a rack.</summary>
    /// <exception cref="BadInputException">Not JSON, another format, a newer version, a field that is missing or wrong.</exception>
    public static Rack ReadRack(string json)
    {
        Rack rack = Read<Rack>(json, Rack.FormatName, Rack.CurrentVersion);
        RackCheck.Check(rack);
        return rack;
    }

    /// <summary>The rack as JSON text, ending with a line feed.</summary>
    public static string Write(Rack rack) => Write(rack, Rack.FormatName, Rack.CurrentVersion);

    /// <summary>The record as JSON text, ending with a line feed.</summary>
    public static string Write(RunLog log) => Write(log, RunLog.FormatName, RunLog.CurrentVersion);

    /// <summary>The piece as JSON text, ending with a line feed.</summary>
    public static string Write(Piece piece) => Write(piece, Piece.FormatName, Piece.CurrentVersion);

    /// <summary>The shop as JSON text, ending with a line feed.</summary>
    public static string Write(Shop shop) => Write(shop, Shop.FormatName, Shop.CurrentVersion);

    private static T Read<T>(string json, string format, int newest)
    {
        ArgumentNullException.ThrowIfNull(json);
        if (json.Length > LargestText)
            throw new BadInputException("file", $"it holds {json.Length / (1024 * 1024)} million characters", "a file of Ringwright's has at most 16 million");
        try
        {
            JsonHead.Check(json, format, newest);
            return JsonSerializer.Deserialize<T>(json, Options)
                ?? throw new BadInputException("file", "it holds only null", $"a file of the format {format} is needed");
        }
        catch (JsonException e)
        {
            throw JsonSentence.From(e, json);
        }
        catch (NotSupportedException e)
        {
            // The reader's word for a ring without its kind of construction.
            throw JsonSentence.From(new JsonException(e.Message, e), json);
        }
    }

    private static string Write<T>(T document, string format, int version) => JsonText.Write(json =>
    {
        json.WriteString("format", format);
        json.WriteNumber("version", version);
        using JsonDocument body = JsonSerializer.SerializeToDocument(document, Options);
        foreach (JsonProperty field in body.RootElement.EnumerateObject())
            if (field.Name is not ("format" or "version")) field.WriteTo(json);
    });
}
