using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Pieces;

/// <summary>The record of real runs at saw and sander, in the order they were made: the document learning works from. Immutable.</summary>
public sealed record RunLog
{
    /// <summary>The value of the file's <c>format</c> field.</summary>
    public const string FormatName = "ringwright/record";

    /// <summary>The version this library writes and the newest it reads.</summary>
    public const int CurrentVersion = 1;

    /// <summary>Whose record it is.</summary>
    public required string Name { get; init; }

    /// <summary>The runs.</summary>
    public required ImmutableArray<LoggedRun> Runs { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}

/// <summary>What was measured in one run with the fences set once. Everything but the sled is optional.</summary>
public sealed record LoggedRun
{
    /// <summary>How the board was held.</summary>
    public required SledKind Sled { get; init; }

    /// <summary>Free text: date, wood, blade.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Note { get; init; }

    /// <summary>The wedge angle wanted, needed for <see cref="Measured"/>.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Angle? WedgeAngle { get; init; }

    /// <summary>Measured wedge angles; each list is a row of wedges in the order they were sawn, a missing wedge starts a new list.</summary>
    public ImmutableArray<ImmutableArray<Angle>> Measured { get; init; } = [];

    /// <summary>Rings laid dry and read.</summary>
    public ImmutableArray<LoggedClosure> Closures { get; init; } = [];

    /// <summary>Wedges sawn, lost ones included.</summary>
    public int Sawn { get; init; }

    /// <summary>Wedges of these that were lost.</summary>
    public int Lost { get; init; }

    /// <summary>Cuts that were timed.</summary>
    public int Cuts { get; init; }

    /// <summary>Minutes for the timed cuts.</summary>
    public double CuttingMinutes { get; init; }

    /// <summary>Sanded faces that were timed.</summary>
    public int FacesSanded { get; init; }

    /// <summary>Minutes for the timed faces.</summary>
    public double SandingMinutes { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}

/// <summary>Where a ring stands open.</summary>
public enum OpenAt
{
    /// <summary>At the rim: the wedges are too narrow in angle.</summary>
    [JsonStringEnumMemberName("rim")]
    Rim,

    /// <summary>At the centre: the wedges are too wide in angle.</summary>
    [JsonStringEnumMemberName("centre")]
    Centre,
}

/// <summary>A ring laid dry, all other joints pressed shut, and the last joint read.</summary>
public sealed record LoggedClosure
{
    /// <summary>Wedges in the ring.</summary>
    public required int Wedges { get; init; }

    /// <summary>Boards they came from.</summary>
    public int Boards { get; init; } = 1;

    /// <summary>The gap of the last joint.</summary>
    public required Length Gap { get; init; }

    /// <summary>Where it stands open.</summary>
    public required OpenAt At { get; init; }

    /// <summary>
    /// Where the gap was read. Open at the rim: the distance from the ring's centre. Open at the centre: the distance from the rim
    /// along the joint, whose rim ends touch.
    /// </summary>
    public required Length Reach { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}
