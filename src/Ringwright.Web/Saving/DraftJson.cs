using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Saving;

/// <summary>A sheet as JSON text: the last good piece and shop, and every field as typed.</summary>
internal static class DraftJson
{
    private const string FormatName = "ringwright/draft";
    private const int CurrentVersion = 1;

    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.General)
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        Converters = { new JsonStringEnumConverter(namingPolicy: null, allowIntegerValues: false) },
    };

    public static string Write(Sheet sheet) => JsonSerializer.Serialize(
        new Saved(FormatName, CurrentVersion, DocumentJson.Write(sheet.Good.Piece), DocumentJson.Write(sheet.Good.Shop), sheet.Draft), Options) + "\n";

    /// <summary>Reads what <see cref="Write"/> wrote.</summary>
    /// <exception cref="BadInputException">It is no such text, or does not fit together.</exception>
    public static Sheet Read(string json)
    {
        Saved saved = Parse(json);
        if (saved.Format != FormatName || saved.Version != CurrentVersion)
            throw new BadInputException("draft", "it is of another format or version", "the draft of this Ringwright is needed");
        Piece piece = DocumentJson.ReadPiece(saved.Piece);
        Sheet sheet = Sheet.Of(piece, DocumentJson.ReadShop(saved.Shop));
        Draft draft = saved.Draft;
        bool fits = !draft.Rings.IsDefault && draft.Rings.Length == piece.Rings.Length && draft.Selected >= 0 && draft.Selected < draft.Rings.Length
            && draft.Rings.All(r => !r.Woods.IsDefault);
        return fits ? sheet.With(draft) : throw new BadInputException("draft", "it does not fit its piece", "the fields of each of its rings are needed");
    }

    private static Saved Parse(string json)
    {
        try
        {
            return JsonSerializer.Deserialize<Saved>(json, Options) ?? throw new BadInputException("draft", "it holds only null", "a draft is needed");
        }
        catch (JsonException)
        {
            throw new BadInputException("draft", "it cannot be read", "it is written by Ringwright itself");
        }
    }

    private sealed record Saved(string Format, int Version, string Piece, string Shop, Draft Draft);
}
