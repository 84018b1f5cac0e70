using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Bench;

/// <summary>
/// Texts of forms that are not part of the work yet: how rings are to be found, the steps of a pattern. Saved and undone with
/// the rest, so that nothing typed is lost. Immutable.
/// </summary>
/// <param name="All">The texts by name.</param>
public sealed record DeskTexts(ImmutableSortedDictionary<string, string> All)
{
    /// <summary>An empty desk.</summary>
    public static DeskTexts Empty { get; } = new(ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal));

    /// <summary>The text of a name; empty when there is none.</summary>
    public string this[string name] => All.GetValueOrDefault(name, "");

    /// <summary>With another text; an empty one is taken away.</summary>
    public DeskTexts With(string name, string text) => new(string.IsNullOrEmpty(text) ? All.Remove(name) : All.SetItem(name, text));

    /// <summary>Without the texts whose names begin so.</summary>
    public DeskTexts Without(string beginning) => new(All.RemoveRange(All.Keys.Where(k => k.StartsWith(beginning, StringComparison.Ordinal))));

    /// <summary>The parts between commas.</summary>
    public ImmutableArray<string> List(string name) => [.. this[name].Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];

    /// <summary>A length; null when the text is blank.</summary>
    /// <exception cref="BadInputException">It cannot be read.</exception>
    public Length? Length(string name, LengthUnit unit) => string.IsNullOrWhiteSpace(this[name]) ? null : Length(name, this[name], unit);

    /// <summary>A length from a text.</summary>
    /// <exception cref="BadInputException">It cannot be read.</exception>
    public static Length Length(string where, string text, LengthUnit unit) => Core.Measures.Length.TryParse(text, unit, out Length length, out ParseError? error)
        ? length
        : throw new BadInputException(where, error.Sentence, "lengths are written like 18 mm or 3/4 in");

    /// <summary>A whole number; null when the text is blank.</summary>
    /// <exception cref="BadInputException">It cannot be read.</exception>
    public int? Whole(string name) => string.IsNullOrWhiteSpace(this[name]) ? null
        : FieldText.TryWhole(this[name], out int value, out ParseError? error) ? value : throw new BadInputException(name, error.Sentence, "a number such as 24 is needed");

    /// <summary>A number; null when the text is blank.</summary>
    /// <exception cref="BadInputException">It cannot be read.</exception>
    public double? Number(string name) => string.IsNullOrWhiteSpace(this[name]) ? null
        : FieldText.TryNumber(this[name], "", out double value, out ParseError? error) ? value : throw new BadInputException(name, error.Sentence, "a number such as 0.5 is needed");
}
