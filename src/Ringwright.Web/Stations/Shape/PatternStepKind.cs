using Ringwright.Core;
using Ringwright.Core.Patterns;
using Ringwright.Core.Patterns.Combinators;
using Ringwright.Core.Patterns.Generators;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Stations;

/// <summary>One number or list that a step of a pattern asks for.</summary>
/// <param name="Key">Its name on the desk, behind the step's.</param>
/// <param name="Label">Its label.</param>
/// <param name="Usual">What it is when left blank.</param>
internal sealed record StepField(string Key, string Label, string Usual);

/// <summary>What a step reads its fields from: texts on the desk, with what is usual where they are blank.</summary>
/// <param name="Desk">The desk.</param>
/// <param name="Number">Number of the step, from 1.</param>
/// <param name="Fields">Its fields.</param>
internal sealed record StepTexts(DeskTexts Desk, int Number, ImmutableArray<StepField> Fields)
{
    public string NameOf(string key) => PatternStepKind.NameOf(Number, key);

    public ImmutableArray<string> Woods => [.. Text("woods").Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];

    public double Decimal(string key) => Filled(key).Number(NameOf(key)) ?? 0;

    public int Whole(string key) => (int)Math.Round(Decimal(key));

    /// <summary>Woods, of which the step needs from <paramref name="least"/> to <paramref name="most"/>.</summary>
    public ImmutableArray<string> WoodsOf(int least, int most) => Woods.Length >= least && Woods.Length <= most
        ? Woods
        : throw new BadInputException($"step {Number}, woods", $"{Woods.Length} are named", least == most ? $"this step takes {least}" : $"this step takes {least} to {most}");

    private string Text(string key) => Desk[NameOf(key)] is { Length: > 0 } text ? text : Fields.First(f => f.Key == key).Usual;

    private DeskTexts Filled(string key) => Desk.With(NameOf(key), Text(key));
}

/// <summary>A kind of step that a pattern can be made of.</summary>
/// <param name="Key">Its name on the desk.</param>
/// <param name="Label">Its label.</param>
/// <param name="Begins">Whether it makes a pattern by itself; otherwise it changes the one before.</param>
/// <param name="Fields">What it asks for.</param>
/// <param name="Make">The pattern, from the one before (null at the first step) and the step's texts.</param>
internal sealed record PatternStepKind(string Key, string Label, bool Begins, ImmutableArray<StepField> Fields, Func<Pattern?, StepTexts, Pattern> Make)
{
    private static readonly StepField TwoWoods = new("woods", "Woods", "maple, walnut");

    public static ImmutableArray<PatternStepKind> All { get; } =
    [
        new("repeat", "Woods in turn around", true, [TwoWoods], (_, t) => new Repeat(t.WoodsOf(1, 360))),
        new("layers", "A wood for each ring", true, [TwoWoods], (_, t) => new Layers(t.WoodsOf(1, 360))),
        new("checker", "Checker", true, [TwoWoods, new("wide", "Segments wide", "1"), new("high", "Rings high", "1")], (_, t) => t.WoodsOf(2, 2) is [var a, var b] ? new Checker(a, b, t.Whole("wide"), t.Whole("high")) : throw new InvalidOperationException()),
        new("spiral", "Spiral", true, [TwoWoods, new("step", "Segments per ring", "1")], (_, t) => new Spiral(t.WoodsOf(1, 360), t.Decimal("step"))),
        new("diamonds", "Diamonds", true, [new("woods", "Inside, ground, edge", "maple, walnut"), new("wide", "Segments wide", "6"), new("high", "Rings high", "5")], (_, t) => t.WoodsOf(2, 3) switch
        {
            [var fill, var ground] => new Diamonds(t.Whole("wide"), t.Whole("high"), fill, ground),
            [var fill, var ground, var edge] => new Diamonds(t.Whole("wide"), t.Whole("high"), fill, ground, edge),
            _ => throw new InvalidOperationException(),
        }),
        new("zigzag", "Zigzag", true, [TwoWoods, new("rise", "Rings up", "3"), new("period", "Segments from peak to peak", "6"), new("height", "Height of a band", "1")], (_, t) => new Zigzag(t.WoodsOf(1, 360), t.Decimal("rise"), t.Decimal("period"), t.Decimal("height"))),
        new("mirror", "Mirror", false, [new("times", "Mirrors around", "2")], (before, t) => new Mirrored(Before(before, t), t.Whole("times"))),
        new("rotate", "Turn it all", false, [new("segments", "Segments", "1")], (before, t) => new Rotated(Before(before, t), t.Whole("segments"))),
        new("shift", "Turn each ring further", false, [new("segments", "Segments per ring", "0.5")], (before, t) => new Shifted(Before(before, t), t.Decimal("segments"))),
        new("raise", "Raise", false, [new("rings", "Rings", "1")], (before, t) => new Raised(Before(before, t), t.Whole("rings"))),
        new("reverse", "The other way around", false, [], (before, t) => new Reversed(Before(before, t))),
        new("upside-down", "Upside down", false, [], (before, t) => new UpsideDown(Before(before, t))),
        new("band", "A band of other woods", false, [TwoWoods, new("from", "From ring", "1"), new("to", "To ring", "1")], (before, t) => new Banded(Before(before, t), new Repeat(t.WoodsOf(1, 360)), t.Whole("from"), t.Whole("to"))),
    ];

    public static PatternStepKind Of(string key) => All.FirstOrDefault(k => k.Key == key) ?? All[0];

    public static string NameOf(int number, string key) => $"pattern.{number}.{key}";

    /// <summary>The pattern that the steps on the desk make.</summary>
    /// <exception cref="BadInputException">A step's texts cannot be read or do not fit.</exception>
    public static Pattern Read(DeskTexts desk)
    {
        Pattern? pattern = null;
        for (int i = 1; i <= CountOn(desk); i++)
        {
            PatternStepKind kind = Of(desk[NameOf(i, "kind")]);
            pattern = kind.Make(pattern, new(desk, i, kind.Fields));
        }

        return pattern ?? throw new BadInputException("pattern", "it has no step", "add one");
    }

    public static int CountOn(DeskTexts desk) => Math.Clamp(desk.Whole("pattern.count") ?? 1, 1, 12);

    private static Pattern Before(Pattern? before, StepTexts texts) =>
        before ?? throw new BadInputException($"step {texts.Number}", "it changes a pattern, and there is none yet", "begin with one such as Spiral");
}
