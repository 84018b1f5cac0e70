using Ringwright.Core.Measures;

namespace Ringwright.Web.Bench.Fields;

/// <summary>A value that cannot be used.</summary>
/// <param name="Address">Where it is, as the library names the place; null when no single field is at fault.</param>
/// <param name="Sentence">What is wrong and what would be right.</param>
/// <param name="Place">The character at fault when the text cannot be read.</param>
public sealed record FieldProblem(string? Address, string Sentence, ParseError? Place = null)
{
    /// <summary>A text that cannot be read.</summary>
    public static FieldProblem Of(string address, ParseError error)
    {
        ArgumentNullException.ThrowIfNull(error);
        return new(address, Capital(error.Sentence) + ".", error);
    }

    internal static string Capital(string sentence) => sentence.Length == 0 ? sentence : char.ToUpperInvariant(sentence[0]) + sentence[1..];
}
