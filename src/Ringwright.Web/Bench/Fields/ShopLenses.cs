using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Web.Bench.Fields;

/// <summary>The fields of the shop, station by station. Keys are the paths by which the library names them.</summary>
public static class ShopLenses
{
    /// <summary>Its name.</summary>
    public static Lens Name { get; } = Of("shop.name", "Name of the shop", FieldKind.Words, "", null, Codecs.Name, s => s.Name, (s, v) => s with { Name = v }, Station.Saw);

    /// <summary>Saw and boards, what changes from job to job.</summary>
    public static ImmutableArray<Lens> Saw { get; } =
    [
        Length("saw.kerf", "Kerf", "Width of the cut", s => s.Saw.Kerf, (s, v) => s with { Saw = s.Saw with { Kerf = v } }),
        Length("sanding.perFace", "Sanded off each face", "Burr and saw marks", s => s.Sanding.PerFace, (s, v) => s with { Sanding = s.Sanding with { PerFace = v } }),
        Length("boards.length", "Board length", "One strip", s => s.Boards.Length, (s, v) => s with { Boards = s.Boards with { Length = v } }),
        Length("saw.holdingLength", "Rest to hold", "Never sawn", s => s.Saw.HoldingLength, (s, v) => s with { Saw = s.Saw with { HoldingLength = v } }),
        Share("hands.loss", "Wedges lost", "Flung, chipped, burnt, in %", s => s.Hands.Loss, (s, v) => s with { Hands = s.Hands with { Loss = v } }),
        Share("wanted.confidence", "Sure to have enough", "In %", s => s.Wanted.Confidence, (s, v) => s with { Wanted = s.Wanted with { Confidence = v } }),
        Length("wanted.jointGap", "Joint gap allowed", "What glue still closes", s => s.Wanted.JointGap, (s, v) => s with { Wanted = s.Wanted with { JointGap = v } }),
    ];

    /// <summary>What is set once.</summary>
    public static ImmutableArray<Lens> Once { get; } =
    [
        Length("saw.endTrim", "End trim", "To square the board’s end", s => s.Saw.EndTrim, (s, v) => s with { Saw = s.Saw with { EndTrim = v } }),
        Length("sanding.flattening", "Flattened, each side", "After gluing", s => s.Sanding.Flattening, (s, v) => s with { Sanding = s.Sanding with { Flattening = v } }),
        Length("sled.ruleDistance", "Rule at", "From the fence’s pivot", s => s.Sled.RuleDistance, (s, v) => s with { Sled = s.Sled with { RuleDistance = v } }),
        Length("sled.sineBar", "Sine bar", "Its length", s => s.Sled.SineBar, (s, v) => s with { Sled = s.Sled with { SineBar = v } }),
        Length("wanted.allowance", "Usually left for turning", "On the radius", s => s.Wanted.Allowance, (s, v) => s with { Wanted = s.Wanted with { Allowance = v } }),
        Length("wanted.leastRimEdge", "Least rim edge", "That these hands can hold", s => s.Wanted.LeastRimEdge, (s, v) => s with { Wanted = s.Wanted with { LeastRimEdge = v } }),
        Length("wanted.boreWander", "Bore may wander", "From the centre", s => s.Wanted.BoreWander, (s, v) => s with { Wanted = s.Wanted with { BoreWander = v } }),
        Blank("boards.width", "Board width", "Planed true at its edges", "any width", s => s.Boards.Width, (s, v) => s with { Boards = s.Boards with { Width = v } }),
        Blank("saw.narrowBlade", "Narrow blade", "For cuts inside a ring", "2 mm", s => s.Saw.NarrowBlade, (s, v) => s with { Saw = s.Saw with { NarrowBlade = v } }),
    ];

    /// <summary>How exactly saw and hands work.</summary>
    public static ImmutableArray<Lens> Hands { get; } =
    [
        Angle("hands.angleSd", "Angle, cut to cut", "Standard deviation", s => s.Hands.AngleSd, (s, v) => s with { Hands = s.Hands with { AngleSd = v } }),
        Angle("hands.settingSd", "Setting a fence", "Standard deviation", s => s.Hands.SettingSd, (s, v) => s with { Hands = s.Hands with { SettingSd = v } }),
        Angle("hands.angleBias", "Constant error of the angle", "Above 0: wedges too wide", s => s.Hands.AngleBias, (s, v) => s with { Hands = s.Hands with { AngleBias = v } }),
        Length("hands.stopSd", "Length by the stop", "Standard deviation", s => s.Hands.StopSd, (s, v) => s with { Hands = s.Hands with { StopSd = v } }),
        Angle("saw.lean", "Blade leans", "From square to the table", s => s.Saw.Lean, (s, v) => s with { Saw = s.Saw with { Lean = v } }),
        Length("saw.kerfSd", "Kerf varies", "Standard deviation", s => s.Saw.KerfSd, (s, v) => s with { Saw = s.Saw with { KerfSd = v } }),
        Length("sanding.unevenness", "Sanding is uneven", "Rim against tip of a face", s => s.Sanding.Unevenness, (s, v) => s with { Sanding = s.Sanding with { Unevenness = v } }),
        Number("hands.minutesPerCut", "Time for a cut", "Minutes", "min", s => s.Hands.MinutesPerCut, (s, v) => s with { Hands = s.Hands with { MinutesPerCut = v } }),
        Number("hands.minutesPerFace", "Time to sand a face", "Minutes", "min", s => s.Hands.MinutesPerFace, (s, v) => s with { Hands = s.Hands with { MinutesPerFace = v } }),
    ];

    /// <summary>What the glued joints hold.</summary>
    public static ImmutableArray<Lens> Joint { get; } =
    [
        Number("joint.tension", "A joint holds", "Tension, nearly end grain", "MPa", s => s.Joint.Tension, (s, v) => s with { Joint = s.Joint with { Tension = v } }, Station.Timber),
        Share("joint.stressKept", "Stress that stays", "Slow moves are half forgotten", s => s.Joint.StressKept, (s, v) => s with { Joint = s.Joint with { StressKept = v } }, Station.Timber),
        Number("joint.speedSafety", "Safety of speed", "Times the pull of rotation", "", s => s.Joint.SpeedSafety, (s, v) => s with { Joint = s.Joint with { SpeedSafety = v } }, Station.Lathe),
    ];

    /// <summary>The air of shop and home.</summary>
    public static ImmutableArray<Lens> Climate { get; } =
    [
        .. Season("shop.winter", "Shop, winter", c => c.Shop.Winter, (c, v) => c with { Shop = c.Shop with { Winter = v } }),
        .. Season("shop.summer", "Shop, summer", c => c.Shop.Summer, (c, v) => c with { Shop = c.Shop with { Summer = v } }),
        .. Season("home.winter", "Home, winter", c => c.Home.Winter, (c, v) => c with { Home = c.Home with { Winter = v } }),
        .. Season("home.summer", "Home, summer", c => c.Home.Summer, (c, v) => c with { Home = c.Home with { Summer = v } }),
    ];

    /// <summary>Moisture measured in the wood.</summary>
    public static Lens WoodMoisture { get; } = Of("climate.woodMoisture", "Moisture when glued", FieldKind.Number, "By the meter, in %", "as the shop’s air", Codecs.Number("%").OrBlank(),
        s => s.Climate.WoodMoisture, (s, v) => s with { Climate = s.Climate with { WoodMoisture = v } }, Station.Timber);

    /// <summary>All of them.</summary>
    public static ImmutableArray<Lens> All { get; } = [Name, .. Saw, .. Once, .. Hands, .. Joint, .. Climate, WoodMoisture];

    private static IEnumerable<Lens> Season(string path, string label, Func<Climate, Air> get, Func<Climate, Air, Climate> set)
    {
        yield return Of($"climate.{path}.temperature", label, FieldKind.Temperature, "", null, Codecs.Temperature,
            s => get(s.Climate).Temperature, (s, v) => s with { Climate = set(s.Climate, get(s.Climate) with { Temperature = v }) }, Station.Timber);
        yield return Of($"climate.{path}.humidity", label + ", humidity", FieldKind.Number, "", null, Codecs.Number("%"),
            s => get(s.Climate).Humidity, (s, v) => s with { Climate = set(s.Climate, get(s.Climate) with { Humidity = v }) }, Station.Timber);
    }

    private static Lens Length(string key, string label, string hint, Func<Shop, Length> get, Func<Shop, Length, Shop> set) =>
        Of(key, label, FieldKind.Length, hint, null, Codecs.Length, get, set, Station.Saw);

    private static Lens Blank(string key, string label, string hint, string blank, Func<Shop, Length?> get, Func<Shop, Length?, Shop> set) =>
        Of(key, label, FieldKind.Length, hint, blank, Codecs.Length.OrBlank(), get, set, Station.Saw);

    private static Lens Angle(string key, string label, string hint, Func<Shop, Angle> get, Func<Shop, Angle, Shop> set) =>
        Of(key, label, FieldKind.Angle, hint, null, Codecs.Angle, get, set, Station.Saw);

    private static Lens Share(string key, string label, string hint, Func<Shop, double> get, Func<Shop, double, Shop> set, Station station = Station.Saw) =>
        Of(key, label, FieldKind.Percent, hint, null, Codecs.Share, get, set, station);

    private static Lens Number(string key, string label, string hint, string unit, Func<Shop, double> get, Func<Shop, double, Shop> set, Station station = Station.Saw) =>
        Of(key, label, FieldKind.Number, hint, null, Codecs.Number(unit), get, set, station);

    private static Lens Of<T>(string key, string label, FieldKind kind, string hint, string? blank, Codec<T> codec, Func<Shop, T> get, Func<Shop, T, Shop> set, Station station) =>
        Lens.Of(new Place(station, _ => ""), new Field(key, label, kind, hint, blank), codec, w => get(w.Shop), (w, v) => w.WithShop(s => set(s, v)));
}
