using Ringwright.Core;
using Ringwright.Core.Measures;

namespace Ringwright.Cli.Output;

/// <summary>Reads what was typed after an option or into a list.</summary>
internal static class TypedText
{
    /// <summary>A length; without a unit it is in <paramref name="unit"/>.</summary>
    /// <exception cref="BadInputException">With <paramref name="where"/>, the character, and <paramref name="right"/>.</exception>
    public static Length Length(string where, string text, LengthUnit unit, string right) =>
        Core.Measures.Length.TryParse(text, unit, out Length length, out ParseError? error)
            ? length
            : throw new BadInputException(where, error.Sentence, right);

    /// <summary>Woods separated by commas.</summary>
    public static string[] Woods(string text) => text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
}
