using System.Text;

namespace Ringwright.Fuzz.Running;

/// <summary>What a refusal must be like: one clear sentence for a person.</summary>
public static class Sentences
{
    /// <summary>Most characters: a person reads it at one glance, or nearly.</summary>
    public const int Longest = 700;

    private static readonly string[] NotForPeople = ["NaN", "Infinity", "∞", "Exception", "System.", "Ringwright.Core", "   at ", "LineNumber", "BytePosition", "Object reference", "JsonElement"];

    /// <summary>What is wrong with the sentence; null when it is well.</summary>
    /// <param name="sentence">The sentence.</param>
    /// <param name="input">The input it is about, whose words it may repeat.</param>
    /// <param name="longest">Most characters it may have.</param>
    public static string? Fault(string sentence, string input, int longest = Longest)
    {
        if (string.IsNullOrWhiteSpace(sentence)) return "it is empty";
        if (sentence.Length > longest) return "it is too long";
        if (sentence.Any(char.IsControl)) return "it has control characters or several lines";
        if (!IsWellFormed(sentence)) return "it has half a character";
        if (sentence[^1] != '.') return "it does not end with a full stop";
        foreach (string word in NotForPeople)
            if (sentence.Contains(word, StringComparison.Ordinal) && !input.Contains(word, StringComparison.Ordinal)) return $"it says “{word}”";
        return null;
    }

    /// <summary>Whether a text has no half of a pair of surrogates.</summary>
    public static bool IsWellFormed(string text)
    {
        for (int i = 0; i < text.Length; i += Rune.TryGetRuneAt(text, i, out Rune rune) ? rune.Utf16SequenceLength : 0)
            if (!Rune.TryGetRuneAt(text, i, out _)) return false;
        return true;
    }
}
