namespace Ringwright.Web.Bench.Fields;

/// <summary>The fields of the glue, and of what there is to glue with.</summary>
public static class GlueLenses
{
    private static readonly ShopLens Glue = new(Station.Glue, prefix: "adhesive."), With = new(Station.Glue, prefix: "gluing.");

    /// <summary>The glue, as its own sheet says.</summary>
    public static ImmutableArray<Lens> Adhesive { get; } =
    [
        Glue.Of(new("name", "Glue", FieldKind.Words, "What it is called"), Codecs.Name, s => s.Adhesive.Name, (s, v) => s with { Adhesive = s.Adhesive with { Name = v } }),
        Glue.Time("openTime", "Open time", "From the first spread until closed", s => s.Adhesive.OpenTime, (s, v) => s with { Adhesive = s.Adhesive with { OpenTime = v } }),
        Glue.Time("clampTime", "Clamp time", "Until the next joint may follow", s => s.Adhesive.ClampTime, (s, v) => s with { Adhesive = s.Adhesive with { ClampTime = v } }),
        Glue.Time("cureTime", "Cure time", "Until it may be flattened or turned", s => s.Adhesive.CureTime, (s, v) => s with { Adhesive = s.Adhesive with { CureTime = v } }),
        Glue.Text("note", "Note", "Anything else worth knowing", "nothing", s => s.Adhesive.Note, (s, v) => s with { Adhesive = s.Adhesive with { Note = v } }),
    ];

    /// <summary>Clamps, hands and hours.</summary>
    public static ImmutableArray<Lens> Gluing { get; } =
    [
        With.Whole("bandClamps", "Band clamps", "On at one time", s => s.Gluing.BandClamps, (s, v) => s with { Gluing = s.Gluing with { BandClamps = v } }),
        With.Whole("presses", "Presses", "Or flat plates with weights", s => s.Gluing.Presses, (s, v) => s with { Gluing = s.Gluing with { Presses = v } }),
        With.Number("minutesPerJoint", "To spread a joint", "And put it together", "min", s => s.Gluing.MinutesPerJoint, (s, v) => s with { Gluing = s.Gluing with { MinutesPerJoint = v } }),
        With.Number("minutesPerGlueUp", "To close a clamp", "And check it", "min", s => s.Gluing.MinutesPerGlueUp, (s, v) => s with { Gluing = s.Gluing with { MinutesPerGlueUp = v } }),
        With.Number("minutesPerTruing", "To true two halves", "Both their faces", "min", s => s.Gluing.MinutesPerTruing, (s, v) => s with { Gluing = s.Gluing with { MinutesPerTruing = v } }),
        With.Number("minutesPerFlattening", "To flatten a ring", "Both its faces", "min", s => s.Gluing.MinutesPerFlattening, (s, v) => s with { Gluing = s.Gluing with { MinutesPerFlattening = v } }),
        With.Time("session", "In the shop on one day", "Such as 3 h", "days are not counted", s => s.Gluing.Session, (s, v) => s with { Gluing = s.Gluing with { Session = v } }),
        With.Length("hollowingReach", "Deepest hollow from one end", "That the tools turn", s => s.Gluing.HollowingReach, (s, v) => s with { Gluing = s.Gluing with { HollowingReach = v } }),
    ];

    /// <summary>All of them.</summary>
    public static ImmutableArray<Lens> All { get; } = [.. Adhesive, .. Gluing];
}
