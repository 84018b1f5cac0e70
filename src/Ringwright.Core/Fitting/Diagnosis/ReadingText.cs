using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Fitting;

/// <summary>
/// Reads what was seen on a dry ring: <c>gathered rim 0.4 mm</c>, <c>joint 3 centre top 0.1 mm</c>, <c>half rim closed</c>,
/// <c>wedge 14.9°</c>, each with <c>± 0.02 mm</c> (or <c>+-</c>) behind it where it is known better or worse than usual.
/// </summary>
public sealed class ReadingText
{
    /// <summary>What a protractor tells a wedge angle to, degrees (common practice, no source).</summary>
    public const double ProtractorSd = 0.05;

    /// <summary>The grammar in a line.</summary>
    public const string Grammar = "“gathered rim 0.4 mm”, “joint 3 centre top 0.1 mm”, “half rim closed” or “wedge 14.9°” is needed";

    private readonly string _where;
    private readonly LengthUnit _unit;
    private readonly string? _sd;
    private readonly Queue<string> _words;

    private ReadingText(string text, string where, LengthUnit unit)
    {
        (_where, _unit) = (where, unit);
        string[] parts = text.Replace("+-", "±", StringComparison.Ordinal).Split('±', StringSplitOptions.TrimEntries);
        if (parts.Length > 2) throw Bad($"“{text}” has more than one ±", "one uncertainty at the end is needed, such as ± 0.02 mm");
        _sd = parts.Length == 2 ? parts[1] : null;
        _words = new(parts[0].Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }

    /// <summary>Reads one.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="where">Where it was typed, for what is told when it is wrong.</param>
    /// <param name="unit">Unit of lengths that have none.</param>
    /// <exception cref="BadInputException">With the reading and the word that is wrong.</exception>
    public static FitObservation Read(string text, string where, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(text);
        return new ReadingText(text, where, unit).Observation();
    }

    private FitObservation Observation()
    {
        string kind = Word("what was read");
        switch (kind)
        {
            case "gathered":
                return new GatheredGap(End(), Level(), Gap(), GapSd());
            case "joint":
                return new BandedGap(Joint(), End(), Level(), Gap(), GapSd());
            case "half":
                return new HalfRingGap(End(), Gap(), GapSd());
            case "wedge":
                return new WedgeAngleReading(Angle(Rest(), Grammar).Radians, _sd is null ? double.DegreesToRadians(ProtractorSd) : Angle(_sd, "an uncertainty such as ± 0.05° is needed").Radians);
            default:
                throw Bad($"“{kind}” is no reading", Grammar);
        }
    }

    private string Word(string what) => _words.TryDequeue(out string? word) ? word.ToLowerInvariant() : throw Bad($"{what} is missing", Grammar);

    private int Joint()
    {
        string word = Word("the joint's number");
        return int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out int joint) && joint > 0
            ? joint - 1
            : throw Bad($"“{word}” is no joint", "the number of a joint, counted from 1, is needed: joint 3 lies between the wedges 3 and 4");
    }

    private OpenAt End()
    {
        string word = Word("the end of the joint");
        return word switch
        {
            "rim" => OpenAt.Rim,
            "centre" or "center" => OpenAt.Centre,
            _ => throw Bad($"“{word}” is no end of a joint", "rim or centre is needed"),
        };
    }

    private JointLevel Level()
    {
        string next = _words.TryPeek(out string? word) ? word.ToLowerInvariant() : "";
        if (next is not ("top" or "bottom")) return JointLevel.Middle;
        _words.Dequeue();
        return next == "top" ? JointLevel.Top : JointLevel.Bottom;
    }

    private double Gap()
    {
        string gap = Rest();
        return string.Equals(gap, "closed", StringComparison.OrdinalIgnoreCase) ? 0 : Length(gap, "an opening such as 0.4 mm, or “closed”, is needed").Millimetres;
    }

    private string Rest()
    {
        string rest = string.Join(' ', _words);
        return rest.Length > 0 ? rest : throw Bad("its value is missing", Grammar);
    }

    private double GapSd() => _sd is null ? FitObservation.FeelerSd : Length(_sd, "an uncertainty such as ± 0.02 mm is needed").Millimetres;

    private Length Length(string text, string right) =>
        Measures.Length.TryParse(text, _unit, out Length length, out ParseError? error) ? length : throw Bad(error.Sentence, right);

    private Angle Angle(string text, string right) =>
        Measures.Angle.TryParse(text, out Angle angle, out ParseError? error) ? angle : throw Bad(error.Sentence, right);

    private BadInputException Bad(string problem, string right) => new(_where, problem, right);
}
