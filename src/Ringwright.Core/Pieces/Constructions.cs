using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Ringwright.Core.Measures;

namespace Ringwright.Core.Pieces;

/// <summary>A solid disc of wedges that are sawn to a point, or to a small flat tip.</summary>
public sealed record WedgeDisc : SegmentedRing
{
    /// <summary>Value of the <c>construction</c> field.</summary>
    public const string ConstructionName = "wedge disc";

    /// <summary>Flat left at the tip of each finished wedge; absent means a point. Not together with <see cref="BoardWidth"/>.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull), JsonPropertyOrder(1)]
    public Length? Tip { get; init; }

    /// <summary>Width of a board that is already ripped; the tip then follows from it.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull), JsonPropertyOrder(2)]
    public Length? BoardWidth { get; init; }

    /// <summary>Diameter of a hole bored through the centre later (pen tube, arbor); absent when not bored, or when the shape has one.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull), JsonPropertyOrder(3)]
    public Length? Bore { get; init; }
}

/// <summary>A closed ring of equal segments around an open middle.</summary>
public sealed record SegmentRing : SegmentedRing, IHollowRing
{
    /// <summary>Value of the <c>construction</c> field.</summary>
    public const string ConstructionName = "segment ring";

    /// <inheritdoc/>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull), JsonPropertyOrder(4)]
    public Length? InnerDiameter { get; init; }

    /// <summary>Width of a board that is ripped already, or ripped for several rings; as narrow as the ring allows when absent.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull), JsonPropertyOrder(5)]
    public Length? BoardWidth { get; init; }
}

/// <summary>A ring of equal segments that stand apart: they touch only the rings above and below.</summary>
public sealed record OpenRing : SegmentedRing, IHollowRing
{
    /// <summary>Value of the <c>construction</c> field.</summary>
    public const string ConstructionName = "open ring";

    /// <inheritdoc/>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull), JsonPropertyOrder(4)]
    public Length? InnerDiameter { get; init; }

    /// <summary>Angle left open between two segments, seen from the axis.</summary>
    [JsonPropertyOrder(5)]
    public required Angle Gap { get; init; }
}

/// <summary>A ring of staves: their grain runs up the piece, upright or leaning.</summary>
public sealed record StaveRing : SegmentedRing, IHollowRing
{
    /// <summary>Value of the <c>construction</c> field.</summary>
    public const string ConstructionName = "stave ring";

    /// <inheritdoc/>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull), JsonPropertyOrder(4)]
    public Length? InnerDiameter { get; init; }

    /// <summary>Lean of the staves from the axis; above 0 the ring is wider at the top. Absent: it follows the shape.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull), JsonPropertyOrder(5)]
    public Angle? Lean { get; init; }
}

/// <summary>A closed ring of segments sawn from a board that was laminated of strips and sawn again at an angle: a motif band.</summary>
public sealed record LaminatedRing : Ring, IHollowRing
{
    /// <summary>Value of the <c>construction</c> field.</summary>
    public const string ConstructionName = "laminated ring";

    /// <summary>Number of equal segments around, 3 to 360.</summary>
    [JsonPropertyOrder(-8)]
    public required int Segments { get; init; }

    /// <inheritdoc/>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull), JsonPropertyOrder(4)]
    public Length? InnerDiameter { get; init; }

    /// <summary>The strips of the laminated board in order; they repeat.</summary>
    [JsonPropertyOrder(5)]
    public required ImmutableArray<Strip> Strips { get; init; }

    /// <summary>Angle of the glue lines from upright as they show on the ring's outside; 0 makes upright stripes.</summary>
    [JsonPropertyOrder(6)]
    public Angle Recut { get; init; }

    /// <summary>True when every second segment is turned over, so that the lines meet in peaks.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault), JsonPropertyOrder(7)]
    public bool Mirrored { get; init; }

    /// <inheritdoc/>
    [JsonIgnore]
    public override int Around => Segments;

    /// <inheritdoc/>
    [JsonIgnore]
    public override ImmutableArray<string> Cycle => [.. Strips.Select(s => s.Wood)];
}

/// <summary>One strip of a laminated board.</summary>
/// <param name="Wood">Its wood.</param>
/// <param name="Thickness">Its thickness between the glue lines.</param>
public sealed record Strip(string Wood, Length Thickness);

/// <summary>A closed ring of unequal segments, with spacers or veneers of even thickness between them where wanted.</summary>
public sealed record MixedRing : Ring, IHollowRing
{
    /// <summary>Value of the <c>construction</c> field.</summary>
    public const string ConstructionName = "mixed ring";

    /// <inheritdoc/>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull), JsonPropertyOrder(4)]
    public Length? InnerDiameter { get; init; }

    /// <summary>The parts in order, counter-clockwise; the first is a segment.</summary>
    [JsonPropertyOrder(5)]
    public required ImmutableArray<RingPart> Parts { get; init; }

    /// <summary>How often the parts go around.</summary>
    [JsonPropertyOrder(6)]
    public int Repeats { get; init; } = 1;

    /// <inheritdoc/>
    [JsonIgnore]
    public override int Around => Repeats * Parts.Count(p => !p.IsSpacer);

    /// <inheritdoc/>
    [JsonIgnore]
    public override ImmutableArray<string> Cycle => [.. Parts.Where(p => !p.IsSpacer).Select(p => p.Wood)];
}

/// <summary>One part of a mixed ring: a segment with its share of the full turn, or a spacer with its thickness.</summary>
public sealed record RingPart
{
    /// <summary>Its wood.</summary>
    public required string Wood { get; init; }

    /// <summary>A segment's share of the turn, against the other segments' shares; 1 when neither is given.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public double? Share { get; init; }

    /// <summary>A spacer's thickness; its two faces are parallel. Not together with <see cref="Share"/>.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public Length? Thickness { get; init; }

    /// <summary>Whether it is a spacer.</summary>
    [JsonIgnore]
    public bool IsSpacer => Thickness is not null;

    /// <summary>Its share of the turn; 0 for a spacer.</summary>
    [JsonIgnore]
    public double Weight => IsSpacer ? 0 : Share ?? 1;
}

/// <summary>A ring sawn out of a flat board with a tilted blade, to be stacked on its neighbours from the same board.</summary>
public sealed record BoardRing : SegmentedRing, IHollowRing
{
    /// <summary>Value of the <c>construction</c> field.</summary>
    public const string ConstructionName = "board ring";

    /// <summary>Name of the flat board it comes from; rings of the same name are sawn from one board.</summary>
    [JsonPropertyOrder(4)]
    public required string Board { get; init; }

    /// <inheritdoc/>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull), JsonPropertyOrder(5)]
    public Length? InnerDiameter { get; init; }
}

/// <summary>A layer of one piece of wood: a plain disc, or a veneer.</summary>
public sealed record SolidLayer : Ring
{
    /// <summary>Value of the <c>construction</c> field.</summary>
    public const string ConstructionName = "solid layer";

    /// <summary>Thinner than this it is a veneer, mm: it is cut with a knife and follows what it is glued to. Common practice, no source.</summary>
    public const double VeneerBelow = 3;

    /// <summary>Its wood.</summary>
    public required string Wood { get; init; }

    /// <summary>Whether it is a veneer.</summary>
    [JsonIgnore]
    public bool IsVeneer => Thickness.Millimetres < VeneerBelow;

    /// <inheritdoc/>
    [JsonIgnore]
    public override int Around => 1;

    /// <inheritdoc/>
    [JsonIgnore]
    public override ImmutableArray<string> Cycle => [Wood];
}
