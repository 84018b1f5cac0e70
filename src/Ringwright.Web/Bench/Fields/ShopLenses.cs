using Ringwright.Core.Pieces;

namespace Ringwright.Web.Bench.Fields;

/// <summary>
/// The fields of saw, boards, hands, joints and air; those of glue, planer, lathe and money have lists of their own. Keys are the
/// paths by which the library names them.
/// </summary>
public static class ShopLenses
{
    private static readonly ShopLens AtTimber = new(Station.Timber), AtSaw = new(Station.Saw), AtFit = new(Station.Fit), AtLathe = new(Station.Lathe);

    /// <summary>Its name.</summary>
    public static Lens Name { get; } = new ShopLens(Station.Saw, Library.ShopPage.Address).Of(new("shop.name", "Name of the shop", FieldKind.Words, ""), Codecs.Name, s => s.Name, (s, v) => s with { Name = v });

    /// <summary>Saw and boards, what changes from job to job.</summary>
    public static ImmutableArray<Lens> Saw { get; } =
    [
        AtSaw.Length("saw.kerf", "Kerf", "Width of the cut", s => s.Saw.Kerf, (s, v) => s with { Saw = s.Saw with { Kerf = v } }),
        AtSaw.Length("sanding.perFace", "Sanded off each face", "Burr and saw marks", s => s.Sanding.PerFace, (s, v) => s with { Sanding = s.Sanding with { PerFace = v } }),
        AtSaw.Length("boards.length", "Board length", "One strip", s => s.Boards.Length, (s, v) => s with { Boards = s.Boards with { Length = v } }),
        AtSaw.Length("saw.holdingLength", "Rest to hold", "Never sawn", s => s.Saw.HoldingLength, (s, v) => s with { Saw = s.Saw with { HoldingLength = v } }),
        AtSaw.Share("hands.loss", "Wedges lost", "Flung, chipped, burnt, in %", s => s.Hands.Loss, (s, v) => s with { Hands = s.Hands with { Loss = v } }),
        AtSaw.Share("wanted.confidence", "Sure to have enough", "In %", s => s.Wanted.Confidence, (s, v) => s with { Wanted = s.Wanted with { Confidence = v } }),
        AtSaw.Length("wanted.jointGap", "Joint gap allowed", "What glue still closes", s => s.Wanted.JointGap, (s, v) => s with { Wanted = s.Wanted with { JointGap = v } }),
    ];

    /// <summary>What is set once.</summary>
    public static ImmutableArray<Lens> Once { get; } =
    [
        AtSaw.Length("saw.endTrim", "End trim", "To square the board’s end", s => s.Saw.EndTrim, (s, v) => s with { Saw = s.Saw with { EndTrim = v } }),
        AtSaw.Length("sanding.flattening", "Flattened, each side", "After gluing", s => s.Sanding.Flattening, (s, v) => s with { Sanding = s.Sanding with { Flattening = v } }),
        AtSaw.Length("sled.ruleDistance", "Rule at", "From the fence’s pivot", s => s.Sled.RuleDistance, (s, v) => s with { Sled = s.Sled with { RuleDistance = v } }),
        AtSaw.Length("sled.sineBar", "Sine bar", "Its length", s => s.Sled.SineBar, (s, v) => s with { Sled = s.Sled with { SineBar = v } }),
        AtSaw.Length("wanted.allowance", "Usually left for turning", "On the radius", s => s.Wanted.Allowance, (s, v) => s with { Wanted = s.Wanted with { Allowance = v } }),
        AtSaw.Length("wanted.leastRimEdge", "Least rim edge", "That these hands can hold", s => s.Wanted.LeastRimEdge, (s, v) => s with { Wanted = s.Wanted with { LeastRimEdge = v } }),
        AtSaw.Length("wanted.boreWander", "Bore may wander", "From the centre", s => s.Wanted.BoreWander, (s, v) => s with { Wanted = s.Wanted with { BoreWander = v } }),
        AtSaw.Length("boards.width", "Board width", "Planed true at its edges", "any width", s => s.Boards.Width, (s, v) => s with { Boards = s.Boards with { Width = v } }),
        AtSaw.Length("saw.narrowBlade", "Narrow blade", "For cuts inside a ring", "2 mm", s => s.Saw.NarrowBlade, (s, v) => s with { Saw = s.Saw with { NarrowBlade = v } }),
        AtSaw.Number("hands.lossWorth", "Loss is known from", "Wedges that were counted", "wedges", "not counted", s => s.Hands.LossWorth, (s, v) => s with { Hands = s.Hands with { LossWorth = v } }),
    ];

    /// <summary>How exactly saw and hands work: what decides whether a ring closes.</summary>
    public static ImmutableArray<Lens> Hands { get; } =
    [
        AtFit.Angle("hands.angleSd", "Angle, cut to cut", "Standard deviation", s => s.Hands.AngleSd, (s, v) => s with { Hands = s.Hands with { AngleSd = v } }),
        AtFit.Angle("hands.settingSd", "Setting a fence", "Standard deviation", s => s.Hands.SettingSd, (s, v) => s with { Hands = s.Hands with { SettingSd = v } }),
        AtFit.Angle("hands.angleBias", "Constant error of the angle", "Above 0: wedges too wide", s => s.Hands.AngleBias, (s, v) => s with { Hands = s.Hands with { AngleBias = v } }),
        AtFit.Length("hands.stopSd", "Length by the stop", "Standard deviation", s => s.Hands.StopSd, (s, v) => s with { Hands = s.Hands with { StopSd = v } }),
        AtFit.Angle("saw.lean", "Blade leans", "From square to the table", s => s.Saw.Lean, (s, v) => s with { Saw = s.Saw with { Lean = v } }),
        AtFit.Length("saw.kerfSd", "Kerf varies", "Standard deviation", s => s.Saw.KerfSd, (s, v) => s with { Saw = s.Saw with { KerfSd = v } }),
        AtFit.Length("sanding.unevenness", "Sanding is uneven", "Rim against tip of a face", s => s.Sanding.Unevenness, (s, v) => s with { Sanding = s.Sanding with { Unevenness = v } }),
        AtFit.Text("hands.basis", "What these values rest on", "One sentence", "starting values", s => s.Hands.Basis, (s, v) => s with { Hands = s.Hands with { Basis = v } }),
    ];

    /// <summary>What the glued joints hold while the wood moves.</summary>
    public static ImmutableArray<Lens> Joint { get; } =
    [
        AtTimber.Number("joint.tension", "A joint holds", "Tension, nearly end grain", "MPa", s => s.Joint.Tension, (s, v) => s with { Joint = s.Joint with { Tension = v } }),
        AtTimber.Share("joint.stressKept", "Stress that stays", "Slow moves are half forgotten", s => s.Joint.StressKept, (s, v) => s with { Joint = s.Joint with { StressKept = v } }),
    ];

    /// <summary>How many times stronger than its pull a turning joint must be.</summary>
    public static Lens SpeedSafety { get; } = AtLathe.Number("joint.speedSafety", "Safety of speed", "Times the pull of rotation", "", s => s.Joint.SpeedSafety, (s, v) => s with { Joint = s.Joint with { SpeedSafety = v } });

    /// <summary>The air of shop and home.</summary>
    public static ImmutableArray<Lens> Climate { get; } =
    [
        .. Season("shop.winter", "Shop, winter", c => c.Shop.Winter, (c, v) => c with { Shop = c.Shop with { Winter = v } }),
        .. Season("shop.summer", "Shop, summer", c => c.Shop.Summer, (c, v) => c with { Shop = c.Shop with { Summer = v } }),
        .. Season("home.winter", "Home, winter", c => c.Home.Winter, (c, v) => c with { Home = c.Home with { Winter = v } }),
        .. Season("home.summer", "Home, summer", c => c.Home.Summer, (c, v) => c with { Home = c.Home with { Summer = v } }),
    ];

    /// <summary>Moisture measured in the wood.</summary>
    public static Lens WoodMoisture { get; } = AtTimber.Number("climate.woodMoisture", "Moisture when glued", "By the meter, in %", "%", "as the shop’s air", s => s.Climate.WoodMoisture, (s, v) => s with { Climate = s.Climate with { WoodMoisture = v } });

    /// <summary>All fields that every shop has.</summary>
    public static ImmutableArray<Lens> All { get; } = [Name, .. Saw, .. Once, .. Hands, .. Joint, SpeedSafety, .. Climate, WoodMoisture, .. MillingLenses.All, .. GlueLenses.All, .. LatheLenses.All, .. CostLenses.All];

    /// <summary>All fields of a shop for a piece: what its jaws grip, and the price of each wood, too.</summary>
    public static IEnumerable<Lens> Of(Work work)
    {
        ArgumentNullException.ThrowIfNull(work);
        return [.. All, .. LatheLenses.Jaws(work.Shop), .. CostLenses.Prices(work)];
    }

    private static IEnumerable<Lens> Season(string path, string label, Func<Climate, Air> get, Func<Climate, Air, Climate> set)
    {
        yield return AtTimber.Of(new($"climate.{path}.temperature", label, FieldKind.Temperature, ""), Codecs.Temperature, s => get(s.Climate).Temperature, (s, v) => s with { Climate = set(s.Climate, get(s.Climate) with { Temperature = v }) });
        yield return AtTimber.Of(new($"climate.{path}.humidity", label + ", humidity", FieldKind.Number, ""), Codecs.Number("%"), s => get(s.Climate).Humidity, (s, v) => s with { Climate = set(s.Climate, get(s.Climate) with { Humidity = v }) });
    }
}
