using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using Ringwright.Core;
using Ringwright.Store.Files;

namespace Ringwright.Web.Floor;

/// <summary>The file <c>floor.json</c> of the data folder: what was done on the shop floor.</summary>
internal static class FloorFile
{
    private const string Name = "floor.json";
    private const int Version = 2;

    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        WriteIndented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false) },
    };

    /// <summary>Where it is.</summary>
    public static string In(string folder) => Path.Combine(folder, Name);

    /// <summary>Reads it; what cannot be read is set aside and told in <paramref name="trouble"/>.</summary>
    public static FloorState Load(string folder, out string? trouble)
    {
        trouble = null;
        string path = In(folder);
        if (!File.Exists(path)) return FloorState.Empty;
        try
        {
            return Read(SafeFile.ReadText(path));
        }
        catch (Exception e) when (e is BadInputException or JsonException)
        {
            string kept = Enumerable.Range(1, int.MaxValue).Select(i => Path.Combine(folder, $"floor-unread-{i}.json")).First(k => !File.Exists(k));
            File.Move(path, kept);
            trouble = $"What was counted and ticked off cannot be read; it was kept as {Path.GetFileName(kept)}.";
            return FloorState.Empty;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            trouble = "What was counted and ticked off cannot be opened; it was left as it is.";
            return FloorState.Empty;
        }
    }

    /// <summary>Writes it whole or not at all.</summary>
    public static void Save(string folder, FloorState state)
    {
        Directory.CreateDirectory(folder);
        SafeFile.Write(In(folder), stream => Write(state, stream));
    }

    /// <summary>Writes it straight into the stream: it is written at every tap, and thousands of marks would be a large text each time.</summary>
    private static void Write(FloorState state, Stream stream)
    {
        JsonSerializer.Serialize(stream, new Saved("ringwright/floor", Version, state), Options);
        stream.WriteByte((byte)'\n');
    }

    /// <summary>Reads what <see cref="Save"/> wrote, now or in version 1, which kept things by the names of piece and ring: <see cref="FloorNames.Claimed"/>.</summary>
    /// <exception cref="BadInputException">It is no such text.</exception>
    /// <exception cref="JsonException">It is no JSON.</exception>
    public static FloorState Read(string json) => JsonSerializer.Deserialize<Saved>(json, Options) is { Format: "ringwright/floor", Version: >= 1 and <= Version } saved
        ? InOrder(saved.Floor)
        : throw new BadInputException("floor", "it is of another format or a newer version", "the file of this Ringwright is needed");

    // Read from a file, names would be compared as the language does.
    private static FloorState InOrder(FloorState read) => read with
    {
        Marks = read.Marks.WithComparers(StringComparer.Ordinal),
        Watches = read.Watches.WithComparers(StringComparer.Ordinal),
        Counts = read.Counts.WithComparers(StringComparer.Ordinal),
        Bases = read.Bases.WithComparers(StringComparer.Ordinal),
        Ticks = read.Ticks.WithComparer(StringComparer.Ordinal),
        Steps = read.Steps.IsDefault ? [] : read.Steps,
    };

    private sealed record Saved(string Format, int Version, FloorState Floor);
}
