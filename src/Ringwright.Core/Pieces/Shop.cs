using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Pieces;

/// <summary>What the piece is made with: saw, sled, boards, abrasive, hands, and how good is good enough. Immutable.</summary>
public sealed record Shop
{
    /// <summary>The value of the file's <c>format</c> field.</summary>
    public const string FormatName = "ringwright/shop";

    /// <summary>The version this library writes and the newest it reads.</summary>
    public const int CurrentVersion = 1;

    /// <summary>The shop's name.</summary>
    public required string Name { get; init; }

    /// <summary>The unit the shop's rules are marked in.</summary>
    public LengthUnit Units { get; init; } = LengthUnit.Millimetre;

    /// <summary>The saw.</summary>
    public Saw Saw { get; init; } = new();

    /// <summary>What holds the board at its angle.</summary>
    public Sled Sled { get; init; } = new();

    /// <summary>The boards the strips are cut from.</summary>
    public BoardStock Boards { get; init; } = new();

    /// <summary>What sanding takes away.</summary>
    public Sanding Sanding { get; init; } = new();

    /// <summary>How exactly these hands saw.</summary>
    public Hands Hands { get; init; } = new();

    /// <summary>What is good enough.</summary>
    public Wanted Wanted { get; init; } = new();

    /// <summary>The air where pieces are glued and where they will live.</summary>
    public Climate Climate { get; init; } = new();

    /// <summary>What the glued joints hold.</summary>
    public GlueJoint Joint { get; init; } = new();

    /// <summary>The lathe and how it is used.</summary>
    public Lathe Lathe { get; init; } = new();

    /// <summary>The glue.</summary>
    public Adhesive Adhesive { get; init; } = new();

    /// <summary>What there is to glue with.</summary>
    public Gluing Gluing { get; init; } = new();

    /// <summary>From rough wood to strips.</summary>
    public Milling Milling { get; init; } = new();

    /// <summary>How quick these hands are at the rest of the work.</summary>
    public Pace Pace { get; init; } = new();

    /// <summary>What wood and time are worth; absent when not told.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Money? Money { get; init; }

    /// <summary>Woods of the shop's own, laid over the table; absent when there are none.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public ImmutableArray<OwnWood>? Species { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }

    /// <summary>A plausible small shop to start from; every value is to be replaced by one's own.</summary>
    public static Shop Starting { get; } = new() { Name = "Starting values" };

    /// <summary>The starting shop with values that are round in <paramref name="unit"/>, as its rules are marked.</summary>
    public static Shop StartingIn(LengthUnit unit) => unit == LengthUnit.Millimetre ? Starting : Starting with
    {
        Units = LengthUnit.Inch,
        Saw = new() { Kerf = Length.Parse("3/64 in"), EndTrim = Length.Parse("1/4 in"), HoldingLength = Length.Parse("3 in") },
        Sled = new() { RuleDistance = Length.Parse("12 in"), SineBar = Length.Parse("5 in") },
        Boards = new() { Length = Length.Parse("16 in") },
        Sanding = new() { PerFace = Length.Parse("0.002 in"), Unevenness = Length.Parse("0.0004 in"), Flattening = Length.Parse("0.01 in") },
        Wanted = new() { JointGap = Length.Parse("0.004 in"), Allowance = Length.Parse("1/16 in"), LeastRimEdge = Length.Parse("1/16 in"), BoreWander = Length.Parse("1/64 in") },
        Climate = Climate.InFahrenheit,
        Lathe = new() { RoughCut = Length.Parse("1/16 in"), FinishAllowance = Length.Parse("1/16 in") },
        Gluing = new() { HollowingReach = Length.Parse("8 in") },
        Milling = Milling.InInches,
    };
}

/// <summary>The saw.</summary>
public sealed record Saw
{
    /// <summary>Width of the cut, normal to the blade.</summary>
    public Length Kerf { get; init; } = Length.FromMillimetres(1.2);

    /// <summary>Lean of the blade from square to the table; positive leaves the falling wedge longer at the table.</summary>
    public Angle Lean { get; init; } = Angle.FromDegrees(0);

    /// <summary>Standard deviation of the kerf's width along the board.</summary>
    public Length KerfSd { get; init; } = Length.FromMillimetres(0.02);

    /// <summary>Wood lost when the board's end is sawn square.</summary>
    public Length EndTrim { get; init; } = Length.FromMillimetres(5);

    /// <summary>Shortest rest of the board that can still be held safely; never sawn.</summary>
    public Length HoldingLength { get; init; } = Length.FromMillimetres(75);

    /// <summary>Width, from teeth to back, of the blade that saws inside circles; <see cref="UsualNarrowBlade"/> when absent.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Length? NarrowBlade { get; init; }

    /// <summary>A plain scroll-saw blade for wood of 15 to 25 mm. Common practice, no source.</summary>
    public static Length UsualNarrowBlade { get; } = Length.FromMillimetres(2);

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}

/// <summary>How the board is held at its angle.</summary>
public enum SledKind
{
    /// <summary>Two fences on one side of the blade; the board goes from one to the other and is never turned over.</summary>
    [JsonStringEnumMemberName("two fences")]
    TwoFences,

    /// <summary>One fence; the board is turned over between cuts.</summary>
    [JsonStringEnumMemberName("one fence")]
    OneFence,

    /// <summary>Wedges are rough-sawn, then each face is trued on a disc sander against an angled fence.</summary>
    [JsonStringEnumMemberName("disc sander")]
    DiscSander,
}

/// <summary>The sled, mitre fence or sander fence.</summary>
public sealed record Sled
{
    /// <summary>Which way of holding.</summary>
    public SledKind Kind { get; init; } = SledKind.TwoFences;

    /// <summary>Distance from the fence's pivot at which its offset is measured with a rule.</summary>
    public Length RuleDistance { get; init; } = Length.FromMillimetres(300);

    /// <summary>Length of the sine bar the fence is set with.</summary>
    public Length SineBar { get; init; } = Length.FromMillimetres(127);

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}

/// <summary>The boards at hand, before they are ripped.</summary>
public sealed record BoardStock
{
    /// <summary>Length of one board or strip.</summary>
    public Length Length { get; init; } = Length.FromMillimetres(400);

    /// <summary>Width of one board whose edges are planed true; absent when boards of any width can be had.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Length? Width { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}

/// <summary>What sanding takes away.</summary>
public sealed record Sanding
{
    /// <summary>Wood sanded off each joint face, normal to it.</summary>
    public Length PerFace { get; init; } = Length.FromMillimetres(0.05);

    /// <summary>
    /// Standard deviation of the difference between what is sanded off at the rim and at the tip of one face. It turns the
    /// face by this over its length: what limits how small a wedge can be.
    /// </summary>
    public Length Unevenness { get; init; } = Length.FromMillimetres(0.01);

    /// <summary>Wood taken off each flat side when the glued ring is flattened.</summary>
    public Length Flattening { get; init; } = Length.FromMillimetres(0.25);

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}

/// <summary>How exactly these hands work: priors until the record knows better.</summary>
public sealed record Hands
{
    /// <summary>Standard deviation of the angle from cut to cut.</summary>
    public Angle AngleSd { get; init; } = Angle.FromDegrees(0.05);

    /// <summary>Standard deviation of setting one fence to its angle, the same for all cuts of a ring.</summary>
    public Angle SettingSd { get; init; } = Angle.FromDegrees(0.02);

    /// <summary>Standard deviation of a wedge's length set by the stop.</summary>
    public Length StopSd { get; init; } = Length.FromMillimetres(0.05);

    /// <summary>Constant error of the angle of every cut; positive makes wedges too wide in angle.</summary>
    public Angle AngleBias { get; init; } = Angle.FromDegrees(0);

    /// <summary>Share of wedges that are lost (flung, chipped, burnt), 0 to less than 1.</summary>
    public double Loss { get; init; } = 0.05;

    /// <summary>Number of wedges that <see cref="Loss"/> is known from; absent when it is taken as it stands.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? LossWorth { get; init; }

    /// <summary>Minutes for one cut.</summary>
    public double MinutesPerCut { get; init; } = 0.5;

    /// <summary>Minutes to sand one joint face.</summary>
    public double MinutesPerFace { get; init; } = 0.5;

    /// <summary>Number of cuts that <see cref="MinutesPerCut"/> is known from; absent when it was never timed.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? CutsWorth { get; init; }

    /// <summary>Number of faces that <see cref="MinutesPerFace"/> is known from; absent when it was never timed.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? FacesWorth { get; init; }

    /// <summary>What these values rest on, one sentence; absent for starting values.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Basis { get; init; }

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}

/// <summary>What is good enough.</summary>
public sealed record Wanted
{
    /// <summary>Widest joint gap that hand pressure and glue still close.</summary>
    public Length JointGap { get; init; } = Length.FromMillimetres(0.1);

    /// <summary>Chance wanted that the wedges sawn are enough, 0.5 to 0.9999.</summary>
    public double Confidence { get; init; } = 0.95;

    /// <summary>Wood left on the radius for turning when a ring does not say.</summary>
    public Length Allowance { get; init; } = Length.FromMillimetres(1.5);

    /// <summary>Shortest rim edge these hands can still hold and sand.</summary>
    public Length LeastRimEdge { get; init; } = Length.FromMillimetres(1.5);

    /// <summary>How far the bore may wander from the disc's centre.</summary>
    public Length BoreWander { get; init; } = Length.FromMillimetres(0.5);

    /// <summary>Fields this version does not know, kept and written back.</summary>
    [JsonExtensionData]
    public IDictionary<string, JsonElement>? Unknown { get; init; }
}
