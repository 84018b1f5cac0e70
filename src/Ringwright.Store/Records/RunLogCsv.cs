using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using CsvHelper;
using CsvHelper.Configuration;
using Ringwright.Core;
using Ringwright.Core.Documents;
using Ringwright.Core.Pieces;

namespace Ringwright.Store;

/// <summary>
/// The record as comma-separated values (RFC 4180), a line for each run, values written as in the JSON. Fields that this
/// version does not know go only with the JSON.
/// </summary>
public static partial class RunLogCsv
{
    private static readonly string[] Texts = ["sled", "note", "wedgeAngle"];
    private static readonly string[] Numbers = ["sawn", "lost", "cuts", "cuttingMinutes", "facesSanded", "sandingMinutes"];
    private static readonly string[] Heading = [.. Texts, "measured", "closures", .. Numbers];
    private static readonly string Right = $"a heading {string.Join(',', Heading)} and a line for each run are needed";

    /// <summary>The record as text; lines end with CR LF as RFC 4180 says.</summary>
    public static string Write(RunLog log)
    {
        using JsonDocument json = JsonDocument.Parse(DocumentJson.Write(log));
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using (var csv = new CsvWriter(text, new CsvConfiguration(CultureInfo.InvariantCulture) { NewLine = "\r\n" }))
        {
            foreach (string name in Heading) csv.WriteField(name);
            csv.NextRecord();
            foreach (JsonElement run in json.RootElement.GetProperty("runs").EnumerateArray())
            {
                foreach (string name in Heading) csv.WriteField(Cell(run, name));
                csv.NextRecord();
            }
        }

        return text.ToString();
    }

    /// <summary>Reads what <see cref="Write"/> writes; a spreadsheet's semicolons between the values will do too.</summary>
    /// <param name="text">The text.</param>
    /// <param name="name">The record's name.</param>
    /// <exception cref="BadInputException">With line, field and what would be right.</exception>
    public static RunLog Read(string text, string name)
    {
        ArgumentNullException.ThrowIfNull(text);
        using var lines = new StringReader(text);
        string first = new StringReader(text).ReadLine() ?? "";
        using var csv = new CsvReader(lines, new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = first.Contains(';', StringComparison.Ordinal) ? ";" : ",",
            PrepareHeaderForMatch = h => h.Header.Trim(),
            MissingFieldFound = null,
            BadDataFound = bad => throw new BadInputException($"line {bad.Context.Parser?.RawRow}", "a quotation mark stands where none can", Right),
        });
        string[] columns = csv.Read() && csv.ReadHeader() ? [.. csv.HeaderRecord!.Select(h => h.Trim())] : [];
        if (!columns.Contains("sled")) throw new BadInputException("line 1", "the heading is missing", Right);
        if (columns.Except(Heading).FirstOrDefault() is string unknown) throw new BadInputException("line 1", $"there is no column “{unknown}”", Right);
        var runs = new List<LoggedRun>();
        while (csv.Read()) runs.Add(Run(csv));
        return new() { Name = name, Runs = [.. runs] };
    }

    private static LoggedRun Run(CsvReader csv)
    {
        string place = string.Create(CultureInfo.InvariantCulture, $"line {csv.Parser.RawRow}");
        string json = JsonText.Write(w =>
        {
            w.WriteString("format", RunLog.FormatName);
            w.WriteNumber("version", RunLog.CurrentVersion);
            w.WriteString("name", "");
            w.WriteStartArray("runs");
            w.WriteStartObject();
            foreach (string name in Heading)
                if (csv.TryGetField(name, out string? cell) && cell is { Length: > 0 }) Field(w, name, cell, $"{place}, {name}");
            w.WriteEndObject();
            w.WriteEndArray();
        });
        try
        {
            return DocumentJson.ReadRunLog(json).Runs[0];
        }
        catch (BadInputException e)
        {
            throw new BadInputException($"{place}, {Inner().Replace(e.Where, "")}", e.Problem, e.Right);
        }
    }

    private static void Field(Utf8JsonWriter json, string name, string cell, string place)
    {
        switch (name)
        {
            case "measured":
                json.WriteStartArray(name);
                foreach (string row in cell.Split('/', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
                {
                    json.WriteStartArray();
                    foreach (string angle in row.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)) json.WriteStringValue(angle);
                    json.WriteEndArray();
                }

                json.WriteEndArray();
                break;
            case "closures":
                json.WriteStartArray(name);
                foreach (string closure in cell.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)) WriteClosure(json, closure, place);
                json.WriteEndArray();
                break;
            case var _ when Texts.Contains(name):
                json.WriteString(name, Guarded(cell) && cell[0] == '\'' ? cell[1..] : cell);
                break;
            default:
                if (!double.TryParse(cell.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out double number) || !double.IsFinite(number))
                    throw new BadInputException(place, $"“{cell}” is no number", "a number is needed, or nothing");
                json.WritePropertyName(name);
                json.WriteRawValue(number.ToString("R", CultureInfo.InvariantCulture));
                break;
        }
    }

    private static void WriteClosure(Utf8JsonWriter json, string text, string place)
    {
        Match match = Closure().Match(text);
        if (!match.Success) throw new BadInputException(place, $"“{text}” is no closure", "one is written like: 16 wedges, 2 boards, 0.4 mm at rim, read at 71 mm");
        json.WriteStartObject();
        json.WriteNumber("wedges", int.Parse(match.Groups[1].ValueSpan, CultureInfo.InvariantCulture));
        json.WriteNumber("boards", int.Parse(match.Groups[2].ValueSpan, CultureInfo.InvariantCulture));
        json.WriteString("gap", match.Groups[3].Value);
        json.WriteString("at", match.Groups[4].Value);
        json.WriteString("reach", match.Groups[5].Value);
        json.WriteEndObject();
    }

    private static string Cell(JsonElement run, string name)
    {
        if (!run.TryGetProperty(name, out JsonElement value)) return "";
        return name switch
        {
            "measured" => string.Join(" / ", value.EnumerateArray().Select(row => string.Join("; ", row.EnumerateArray().Select(a => a.GetString())))),
            "closures" => string.Join("; ", value.EnumerateArray().Select(c => $"{c.GetProperty("wedges").GetRawText()} wedges, {c.GetProperty("boards").GetRawText()} boards, {c.GetProperty("gap").GetString()} at {c.GetProperty("at").GetString()}, read at {c.GetProperty("reach").GetString()}")),
            _ when value.ValueKind == JsonValueKind.String => Guarded(value.GetString()!) ? "'" + value.GetString() : value.GetString()!,
            _ => value.GetRawText(),
        };
    }

    // What starts like a formula must not become one in a spreadsheet; apostrophes before it count, so that reading takes off just the one.
    private static bool Guarded(string text) => text.TrimStart('\'') is { Length: > 0 } rest && rest[0] is '=' or '@' or '+' or '-' or '\t' or '\r';

    [GeneratedRegex(@"^(\d{1,6}) wedges?, (\d{1,6}) boards?, (.+) at (rim|centre), read at (.+)$")]
    private static partial Regex Closure();

    // The place within the one-run record that a line was made into.
    [GeneratedRegex(@"^run 1, |^runs 1\.?|\s*\(line \d+\)$|^line \d+$")]
    private static partial Regex Inner();
}
