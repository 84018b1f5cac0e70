namespace Ringwright.Core.Measures;

/// <summary>Why a text is not a measure, and at which character.</summary>
/// <param name="Text">The text as it was written.</param>
/// <param name="Position">Zero-based index of the character where reading failed; may be the text's length (its end).</param>
/// <param name="Expected">What would be right there, as the end of a sentence.</param>
public sealed record ParseError(string Text, int Position, string Expected)
{
    /// <summary>One sentence: the text, the character, and what would be right.</summary>
    public string Sentence => Text.Length == 0
        ? $"nothing is written; {Expected}"
        : Position >= Text.Length
            ? $"“{Shown}” ends too early; {Expected}"
            : $"“{Shown}” cannot be read from character {Position + 1} (“{OneLine.At(Text, Position)}”); {Expected}";

    /// <summary>The text with a caret below the character, on two lines, for fixed-width output.</summary>
    public string CaretLines => $"{Shown}\n{new string(' ', Math.Min(Position, Shown.Length))}^";

    // Long or multi-line input would drown the sentence.
    private string Shown => OneLine.Start(Text, OneLine.Longest);
}
