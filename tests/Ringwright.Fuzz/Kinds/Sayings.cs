using System.Collections.Immutable;
using Ringwright.Core.Fitting;
using Ringwright.Core.Measures;
using Ringwright.Core.Patterns;
using Ringwright.Fuzz.Making;
using Ringwright.Fuzz.Running;

namespace Ringwright.Fuzz.Kinds;

/// <summary>What is read on a dry ring, in words.</summary>
public sealed class Readings : Typed
{
    public override string Name => "readings";

    public override void Check(string input) => ReadingText.Read(input, "reading", LengthUnit.Millimetre);

    protected override string Rightly(Dice dice)
    {
        string end = dice.One(["rim", "centre", "center"]), level = dice.One(["", "", "top ", "bottom "]), sd = dice.Chance(0.3) ? $" ± {NumberText.Length(dice)}" : "";
        string gap = dice.Chance(0.2) ? "closed" : NumberText.Length(dice);
        return dice.Below(4) switch
        {
            0 => $"gathered {end} {level}{gap}{sd}",
            1 => $"joint {dice.From(0, 30)} {end} {level}{gap}{sd}",
            2 => $"half {end} {gap}{sd}",
            _ => $"wedge {NumberText.Angle(dice)}{(sd.Length > 0 ? $" ± {NumberText.Angle(dice)}" : "")}",
        };
    }
}

/// <summary>Steps of a pattern, laid on rings of many kinds.</summary>
public sealed class Patterns : Typed
{
    private static readonly Lattice[] Lattices =
    [
        new([new(12, 0, 50, 20)]),
        new([new(12, 0, 50, 20), new(12, 0.5, 55, 20), new(24, 0.25, 60, 10), new(1, 0, 60, 3), new(7, -0.3, 40, 15)]),
        new(Enumerable.Range(0, 30).Select(i => new LatticeRing(36, i % 2 * 0.5, 60, 8))),
    ];

    public override string Name => "patterns";

    public override void Check(string input)
    {
        Pattern pattern = PatternSteps.Read(input.Split('\n'));
        foreach (Lattice lattice in Lattices)
        {
            ImmutableArray<ImmutableArray<string>> rows = pattern.On(lattice);
            Promise.Same(lattice.Rings.Length, rows.Length, "a pattern covers every ring");
            for (int r = 0; r < rows.Length; r++)
            {
                Promise.Same(lattice.Rings[r].Segments, rows[r].Length, "a pattern covers every segment");
                Promise.That(rows[r].All(w => !string.IsNullOrWhiteSpace(w)), "every segment has a wood", $"ring {r + 1}");
            }

            foreach (string doubt in pattern.Doubts(lattice)) Promise.That(Sentences.Fault(doubt, input) is null, "a doubt is a sentence", $"{doubt}");
        }

        // As long as its list of woods and steps.
        string? fault = Sentences.Fault(pattern.Describe() + ".", input, int.MaxValue);
        Promise.That(fault is null, "a pattern tells what it is", $"{fault}: {pattern.Describe()}");
    }

    protected override string Rightly(Dice dice)
    {
        var steps = new List<string> { Begin(dice) };
        for (int more = dice.Below(5); more > 0; more--) steps.Add(Further(dice));
        return string.Join('\n', steps);
    }

    private static string Begin(Dice dice) => dice.Below(6) switch
    {
        0 => $"repeat {Woods(dice)}",
        1 => $"layers {Woods(dice)}",
        2 => dice.Chance(0.5) ? "checker maple,walnut" : $"checker maple,walnut {Whole(dice)} {Whole(dice)}",
        3 => $"spiral {Woods(dice)} {Number(dice)}",
        4 => $"diamonds {Woods(dice)} {Whole(dice)} {Whole(dice)}",
        _ => $"zigzag {Woods(dice)} {Number(dice)} {Number(dice)}{(dice.Chance(0.5) ? " " + Number(dice) : "")}",
    };

    private static string Further(Dice dice) => dice.Below(8) switch
    {
        0 => $"rotate {Whole(dice)}",
        1 => $"turn {Number(dice)}",
        2 => $"raise {Whole(dice)}",
        3 => $"mirror {Whole(dice)}",
        4 => "reverse",
        5 => "upside-down",
        6 => $"band {dice.Below(4)}-{dice.Below(32)} {Begin(dice)}",
        _ => Begin(dice),
    };

    private static string Woods(Dice dice) => string.Join(',', Enumerable.Range(0, dice.From(1, 4)).Select(_ => dice.One(["maple", "walnut", "cherry"])));

    private static string Whole(Dice dice) => dice.Chance(0.1) ? dice.One(["0", "-1", "2147483647", "-2147483648", "1000000", "99999999999"]) : dice.From(-3, 20).ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static string Number(Dice dice) => dice.Chance(0.15) ? dice.One(["0", "-0", "1e-300", "1e300", "-1e300", "NaN", "Infinity", "1e10", "0.1", "2147483648"]) : dice.Between(-5, 20).ToString("0.###", System.Globalization.CultureInfo.InvariantCulture);
}
