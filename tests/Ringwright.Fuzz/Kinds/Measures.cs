using System.Globalization;
using System.Numerics;
using System.Text.RegularExpressions;
using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Fuzz.Making;
using Ringwright.Fuzz.Running;

namespace Ringwright.Fuzz.Kinds;

/// <summary>What a person types into a field.</summary>
public abstract class Typed : Kind
{
    public override string Make(Dice dice)
    {
        string text = Rightly(dice);
        return dice.Below(3) == 0 ? OddText.Mutate(dice, text) : text;
    }

    /// <summary>A text as people write it, or nearly.</summary>
    protected abstract string Rightly(Dice dice);

    /// <summary>What must hold for the complaint about a text.</summary>
    protected static BadInputException Complaint(string input, ParseError? error)
    {
        Promise.That(error is not null, "what is not read is explained", $"no error");
        Promise.That(error!.Position >= 0 && error.Position <= input.Length, "the place of an error lies in the text", $"character {error.Position} of {input.Length}");
        string? fault = Sentences.Fault(error.Sentence + ".", input);
        Promise.That(fault is null, "the complaint is a sentence", $"{fault}: {error.Sentence}");
        return new("typed", error.Sentence, "see the grammar");
    }
}

/// <summary>Lengths, in both units and without, against a reader of our own by exact fractions.</summary>
public sealed partial class Lengths : Typed
{
    private static readonly MeasureStyle[] Styles = [MeasureStyle.Millimetres, MeasureStyle.InchFractions, MeasureStyle.InchDecimals];

    public override string Name => "lengths";

    public override void Check(string input)
    {
        BadInputException? refused = null;
        foreach (LengthUnit? unit in (LengthUnit?[])[null, LengthUnit.Millimetre, LengthUnit.Inch])
        {
            bool read = Length.TryParse(input, unit, out Length length, out ParseError? error);
            if (Exactly(input, unit) is double right)
            {
                Promise.That(read, "a length of the grammar is read", $"{error?.Sentence}");
                Promise.That(Math.Abs(length.Millimetres - right) <= 4e-16 * Math.Abs(right) + 1e-25, "the length is the one that is written", $"{length.Millimetres:R} instead of {right:R}");
            }

            if (!read)
            {
                Promise.That(length.Millimetres == 0, "what is not read is no length", $"{length}");
                refused = Complaint(input, error);
                continue;
            }

            refused = null;
            Holds(length);
        }

        if (refused is not null) throw refused;
    }

    protected override string Rightly(Dice dice) => NumberText.Length(dice);

    private static void Holds(Length length)
    {
        Promise.Finite(length.Millimetres, "a length");
        Promise.That(Math.Abs(length.Millimetres) <= 1e7, "no length is beyond 10 km", $"{length.Millimetres}");
        Promise.That(Length.TryParse(length.Written, null, out Length again, out ParseError? error), "what is written can be read", $"{length.Written}: {error?.Sentence}");
        Promise.Same(length, again, "what is written reads back as the same");
        var computed = Length.FromMillimetres(length.Millimetres);
        Promise.That(Length.TryParse(computed.Written, null, out again, out error), "what is written can be read", $"{computed.Written}: {error?.Sentence}");
        Promise.Same(computed, again, "what is written reads back as the same");
        foreach (MeasureStyle style in Styles)
        {
            string printed = style.Length(length.Millimetres);
            Promise.That(Sentences.Fault(printed + ".", "") is null, "a printed length can be read by a person", $"{printed}");
        }
    }

    // Another way to the same number: the plain grammar by a regular expression, the value by whole numbers; null when it is not plain.
    private static double? Exactly(string text, LengthUnit? unitWhenNone)
    {
        Match m = Plain().Match(text);
        if (!m.Success) return null;
        (BigInteger over, BigInteger under) = (Whole(m.Groups["whole"].Value), BigInteger.One);
        if (m.Groups["over"].Success)
        {
            BigInteger below = Whole(m.Groups["under"].Value);
            if (below.IsZero || (m.Groups["whole"].Success && Whole(m.Groups["over"].Value) >= below)) return null;
            (over, under) = ((over * below) + Whole(m.Groups["over"].Value), below);
        }
        else if (m.Groups["decimals"].Success)
        {
            // A comma before three digits is never guessed at.
            if (m.Groups["comma"].Success && m.Groups["decimals"].Length == 3 && !over.IsZero) return null;
            under = BigInteger.Pow(10, m.Groups["decimals"].Length);
            over = (over * under) + Whole(m.Groups["decimals"].Value);
        }

        (int scaleOver, int scaleUnder) = m.Groups["unit"].Value switch
        {
            "mm" => (1, 1),
            "cm" => (10, 1),
            "m" => (1000, 1),
            "in" or "\"" or "inch" => (127, 5),
            _ => unitWhenNone switch { LengthUnit.Millimetre => (1, 1), LengthUnit.Inch => (127, 5), _ => (0, 1) },
        };
        if (scaleOver == 0) return null;
        (over, under) = (over * scaleOver, under * scaleUnder);
        if (over > 10_000_000 * under) return null;
        double value = double.Parse(((decimal)over / (decimal)under).ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return m.Groups["minus"].Success ? -value : value;
    }

    private static BigInteger Whole(string digits) => digits.Length == 0 ? BigInteger.Zero : BigInteger.Parse(digits, CultureInfo.InvariantCulture);

    // Short enough for the exact division of decimals.
    [GeneratedRegex("""^ {0,3}(?<minus>-)?(?:(?<whole>[0-9]{1,9})(?:(?:\.|(?<comma>,))(?<decimals>[0-9]{1,9}))?|(?:(?<whole>[0-9]{1,6})[ -])?(?<over>[0-9]{1,4})/(?<under>[0-9]{1,4})) ?(?<unit>mm|cm|m|in|inch|")?$""")]
    private static partial Regex Plain();
}

/// <summary>Angles in degrees, minutes and seconds.</summary>
public sealed class Angles : Typed
{
    public override string Name => "angles";

    public override void Check(string input)
    {
        if (!Angle.TryParse(input, out Angle angle, out ParseError? error))
        {
            throw Complaint(input, error);
        }

        Promise.Finite(angle.Radians, "an angle");
        Promise.That(Math.Abs(angle.Degrees) <= 361, "no angle is beyond a turn", $"{angle.Degrees}");
        Promise.That(Angle.TryParse(angle.Written, out Angle again, out error), "what is written can be read", $"{angle.Written}: {error?.Sentence}");
        Promise.Same(angle, again, "what is written reads back as the same");
        var computed = Angle.FromRadians(angle.Radians);
        Promise.That(Angle.TryParse(computed.Written, out again, out error), "what is written can be read", $"{computed.Written}: {error?.Sentence}");
        Promise.That(Math.Abs(computed.Radians - again.Radians) <= 1e-15, "what is written reads back as the same", $"{computed.Radians:R} became {again.Radians:R}");
    }

    protected override string Rightly(Dice dice) => NumberText.Angle(dice);
}

/// <summary>Times.</summary>
public sealed class Times : Typed
{
    public override string Name => "times";

    public override void Check(string input)
    {
        if (!Duration.TryParse(input, out Duration duration, out ParseError? error))
        {
            throw Complaint(input, error);
        }

        Promise.That(double.IsFinite(duration.Minutes) && duration.Minutes >= 0, "a time is a number and not negative", $"{duration.Minutes}");
        Promise.That(Duration.TryParse(duration.Written, out Duration again, out error), "what is written can be read", $"{duration.Written}: {error?.Sentence}");
        Promise.Same(duration, again, "what is written reads back as the same");
        string printed = Duration.Print(duration.Minutes);
        Promise.That(Duration.TryParse(printed, out again, out error), "a printed time can be read", $"{printed}: {error?.Sentence}");
    }

    protected override string Rightly(Dice dice) => NumberText.Time(dice);
}

/// <summary>Temperatures.</summary>
public sealed class Temperatures : Typed
{
    public override string Name => "temperatures";

    public override void Check(string input)
    {
        if (!Temperature.TryParse(input, out Temperature temperature, out ParseError? error))
        {
            throw Complaint(input, error);
        }

        Promise.That(temperature.Celsius is >= -273.15 and <= 1000, "a temperature is one", $"{temperature.Celsius}");
        Promise.That(Temperature.TryParse(temperature.Written, out Temperature again, out error), "what is written can be read", $"{temperature.Written}: {error?.Sentence}");
        Promise.Same(temperature, again, "what is written reads back as the same");
        string computed = Temperature.FromCelsius(temperature.Celsius).Written;
        Promise.That(Temperature.TryParse(computed, out _, out error), "what is written can be read", $"{computed}: {error?.Sentence}");
    }

    protected override string Rightly(Dice dice) => NumberText.Temperature(dice);
}
