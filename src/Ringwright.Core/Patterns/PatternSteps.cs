using System.Collections.Immutable;
using System.Globalization;
using Ringwright.Core.Patterns.Combinators;
using Ringwright.Core.Patterns.Generators;

namespace Ringwright.Core.Patterns;

/// <summary>
/// Patterns in words, one step after the other: <c>spiral maple,walnut 1</c>, then <c>mirror 2</c>, then
/// <c>band 3-8 checker oak,wenge 1 1</c>. Woods are separated by commas, numbers by spaces.
/// </summary>
public static class PatternSteps
{
    /// <summary>What a step may say.</summary>
    public static ImmutableArray<string> Grammar { get; } =
    [
        "repeat WOODS", "layers WOODS", "checker A,B [WIDE HIGH]", "spiral WOODS STEP", "diamonds FILL,GROUND[,BORDER] WIDE HIGH", "zigzag WOODS RISE PERIOD [HEIGHT]",
        "rotate SEGMENTS", "turn DEGREES", "raise RINGS", "mirror TIMES", "reverse", "upside-down", "band FROM-TO STEP",
    ];

    /// <summary>The pattern that the steps make, on top of <paramref name="begun"/>.</summary>
    /// <exception cref="BadInputException">A step cannot be read, with its number.</exception>
    public static Pattern Read(IReadOnlyList<string> steps, Pattern? begun = null)
    {
        ArgumentNullException.ThrowIfNull(steps);
        Pattern? pattern = begun;
        for (int i = 0; i < steps.Count; i++) pattern = new Step($"pattern, step {i + 1}", steps[i]).On(pattern);
        return pattern ?? throw new BadInputException("pattern", "it has no step", "begin with one such as repeat maple,walnut");
    }

    private sealed class Step(string where, string text)
    {
        private readonly string[] _words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

        public Pattern On(Pattern? inner) => Word switch
        {
            "rotate" => new Rotated(Before(inner, 1), Whole(1)),
            "turn" => new Turned(Before(inner, 1), Number(1)),
            "raise" => new Raised(Before(inner, 1), Whole(1)),
            "mirror" => new Mirrored(Before(inner, 1), Whole(1)),
            "reverse" => new Reversed(Before(inner, 0)),
            "upside-down" => new UpsideDown(Before(inner, 0)),
            "band" => Band(inner),
            _ => Generator(),
        };

        private string Word => _words.Length == 0 ? throw Wrong("it is empty") : _words[0];

        private Pattern Generator() => (Word, _words.Length) switch
        {
            ("repeat", 2) => new Repeat(Woods()),
            ("layers", 2) => new Layers(Woods()),
            ("checker", 2) when Woods() is [var a, var b] => new Checker(a, b),
            ("checker", 4) when Woods() is [var a, var b] => new Checker(a, b, Whole(2), Whole(3)),
            ("spiral", 3) => new Spiral(Woods(), Number(2)),
            ("diamonds", 4) when Woods() is [var fill, var ground] => new Diamonds(Whole(2), Whole(3), fill, ground),
            ("diamonds", 4) when Woods() is [var fill, var ground, var border] => new Diamonds(Whole(2), Whole(3), fill, ground, border),
            ("zigzag", 4) => new Zigzag(Woods(), Number(2), Number(3)),
            ("zigzag", 5) => new Zigzag(Woods(), Number(2), Number(3), Number(4)),
            _ => throw Wrong($"“{text}” is no step"),
        };

        private Pattern Before(Pattern? inner, int numbers) => _words.Length == numbers + 1
            ? inner ?? throw new BadInputException(where, $"“{_words[0]}” changes a pattern, and there is none yet", "begin with one such as repeat maple,walnut")
            : throw Wrong($"“{text}” is no step");

        private Banded Band(Pattern? inner)
        {
            if (_words.Length < 3) throw Wrong($"“{text}” is no step");
            string[] ends = _words[1].Split('-', 2);
            int from = Whole(ends[0]), to = ends.Length == 2 ? Whole(ends[1]) : from;
            Pattern ground = inner ?? throw new BadInputException(where, "a band lies on a pattern, and there is none yet", "begin with one such as repeat maple,walnut");
            return new(ground, new Step(where, string.Join(' ', _words[2..])).Generator(), from, to);
        }

        private ImmutableArray<string> Woods() => [.. _words[1].Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];

        private double Number(int word) => double.TryParse(_words[word], NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value)
            ? value
            : throw new BadInputException(where, $"“{_words[word]}” is no number", "a number such as 2 or 0.5 is needed");

        private int Whole(int word) => Whole(_words[word]);

        private int Whole(string text) => int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int value)
            ? value
            : throw new BadInputException(where, $"“{text}” is no whole number", "a number such as 2 is needed");

        private BadInputException Wrong(string problem) => new(where, problem, $"one of these is needed: {string.Join("; ", Grammar)}");
    }
}
