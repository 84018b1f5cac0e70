namespace Ringwright.Web.Bench;

/// <summary>The values typed for the shop. Keys are the file's field paths.</summary>
public static class ShopFields
{
    /// <summary>Those that change from job to job.</summary>
    public static ImmutableArray<ShopField> Main { get; } =
    [
        ShopField.OfLength("saw.kerf", "Kerf", "Width of the cut", s => s.Saw.Kerf, (s, v) => s with { Saw = s.Saw with { Kerf = v } }),
        ShopField.OfLength("sanding.perFace", "Sanded off each face", "Burr and saw marks", s => s.Sanding.PerFace, (s, v) => s with { Sanding = s.Sanding with { PerFace = v } }),
        ShopField.OfLength("boards.length", "Board length", "One strip", s => s.Boards.Length, (s, v) => s with { Boards = s.Boards with { Length = v } }),
        ShopField.OfLength("saw.holdingLength", "Rest to hold", "Never sawn", s => s.Saw.HoldingLength, (s, v) => s with { Saw = s.Saw with { HoldingLength = v } }),
        ShopField.OfLength("wanted.jointGap", "Joint gap allowed", "What glue still closes", s => s.Wanted.JointGap, (s, v) => s with { Wanted = s.Wanted with { JointGap = v } }),
        ShopField.OfPercent("hands.loss", "Wedges lost", "Flung, chipped, burnt, in %", s => s.Hands.Loss, (s, v) => s with { Hands = s.Hands with { Loss = v } }),
        ShopField.OfPercent("wanted.confidence", "Sure to have enough", "In %", s => s.Wanted.Confidence, (s, v) => s with { Wanted = s.Wanted with { Confidence = v } }),
    ];

    /// <summary>Those that are set once.</summary>
    public static ImmutableArray<ShopField> Further { get; } =
    [
        ShopField.OfLength("saw.endTrim", "End trim", "To square the board’s end", s => s.Saw.EndTrim, (s, v) => s with { Saw = s.Saw with { EndTrim = v } }),
        ShopField.OfLength("sanding.flattening", "Flattened, each side", "After gluing", s => s.Sanding.Flattening, (s, v) => s with { Sanding = s.Sanding with { Flattening = v } }),
        ShopField.OfLength("sled.ruleDistance", "Rule at", "From the fence’s pivot", s => s.Sled.RuleDistance, (s, v) => s with { Sled = s.Sled with { RuleDistance = v } }),
        ShopField.OfLength("sled.sineBar", "Sine bar", "Its length", s => s.Sled.SineBar, (s, v) => s with { Sled = s.Sled with { SineBar = v } }),
        ShopField.OfLength("wanted.allowance", "Usually left for turning", "On the radius", s => s.Wanted.Allowance, (s, v) => s with { Wanted = s.Wanted with { Allowance = v } }),
        ShopField.OfLength("wanted.boreWander", "Bore may wander", "From the centre", s => s.Wanted.BoreWander, (s, v) => s with { Wanted = s.Wanted with { BoreWander = v } }),
    ];

    /// <summary>All of them.</summary>
    public static ImmutableArray<ShopField> All { get; } = [.. Main, .. Further];
}
