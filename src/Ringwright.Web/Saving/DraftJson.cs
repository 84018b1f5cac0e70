using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;
using Ringwright.Web.Bench;
using Ringwright.Web.Stations;

namespace Ringwright.Web.Saving;

/// <summary>A sheet as JSON text: the last good piece and shop, and every text that waits.</summary>
internal static class DraftJson
{
    private const string FormatName = "ringwright/draft";
    private const int CurrentVersion = 2;

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
        new Saved(FormatName, CurrentVersion, DocumentJson.Write(sheet.Good.Piece), DocumentJson.Write(sheet.Good.Shop))
        {
            Units = sheet.Units,
            Selected = [.. sheet.Selected],
            Texts = sheet.Texts,
            Desk = sheet.Desk.All,
            RingMarks = sheet.RingMarks,
        }, Options) + "\n";

    /// <summary>Reads what <see cref="Write"/> wrote, now or in version 1, whose texts were those of its piece.</summary>
    /// <exception cref="BadInputException">It is no such text.</exception>
    public static Sheet Read(string json)
    {
        Saved saved = Parse(json);
        if (saved.Format != FormatName || saved.Version is < 1 or > CurrentVersion)
            throw new BadInputException("draft", "it is of another format or a newer version", "the draft of this Ringwright is needed");
        Piece piece = DocumentJson.ReadPiece(saved.Piece);
        var sheet = Sheet.Of(piece, DocumentJson.ReadShop(saved.Shop), saved.Units);
        ImmutableSortedSet<int> selected = [.. (saved.Selected.IsDefault ? [] : saved.Selected).Where(i => i >= 0 && i < piece.Rings.Length)];
        if (!saved.RingMarks.IsDefault && saved.RingMarks.Length == piece.Rings.Length && saved.RingMarks.Distinct().Count() == piece.Rings.Length && !saved.RingMarks.Any(string.IsNullOrEmpty))
            sheet = sheet with { RingMarks = saved.RingMarks };
        return sheet.Waiting(saved.Texts ?? sheet.Texts) with
        {
            Selected = selected.IsEmpty ? sheet.Selected : selected,
            Desk = saved.Desk is null ? DeskTexts.Empty : ByMarks(new(saved.Desk.WithComparers(StringComparer.Ordinal)), sheet),
        };
    }

    // What was measured once hung on the names of piece and ring.
    private static DeskTexts ByMarks(DeskTexts desk, Sheet sheet)
    {
        foreach ((Ring ring, string mark) in sheet.Good.Piece.Rings.Zip(sheet.RingMarks))
        {
            string end = $".{sheet.Good.Piece.Name}.{ring.Name}";
            foreach ((string name, string text) in desk.All.Where(t => t.Key.StartsWith(FitDesk.DeskPrefix, StringComparison.Ordinal) && t.Key.EndsWith(end, StringComparison.Ordinal)))
                desk = desk.With(name, "").With(FitDesk.NameOf(name[FitDesk.DeskPrefix.Length..^end.Length], mark), text);
        }

        return desk;
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

    private sealed record Saved(string Format, int Version, string Piece, string Shop)
    {
        public UnitChoice? Units { get; init; }

        public ImmutableArray<int> Selected { get; init; }

        public ImmutableSortedDictionary<string, string>? Texts { get; init; }

        public ImmutableSortedDictionary<string, string>? Desk { get; init; }

        public ImmutableArray<string> RingMarks { get; init; }
    }
}
