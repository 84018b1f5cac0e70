using Ringwright.Core.Measures;

namespace Ringwright.Web.Bench;

/// <summary>A value that cannot be used.</summary>
/// <param name="Ring">Index of the ring it belongs to; null for the shop or the whole piece.</param>
/// <param name="Key">Key of the field; null when no single field is at fault.</param>
/// <param name="Sentence">What is wrong and what would be right.</param>
/// <param name="Place">The character at fault when the text cannot be read.</param>
public sealed record FieldProblem(int? Ring, string? Key, string Sentence, ParseError? Place = null)
{
    /// <summary>Whether it concerns <paramref name="field"/> of the ring at <paramref name="ring"/> (null for the shop).</summary>
    public bool Concerns(Field field, int? ring) => Key == field.Key && Ring == ring;
}
