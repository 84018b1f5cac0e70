using System.Text;
using Ringwright.Core.Planning;

namespace Ringwright.Docs;

/// <summary>The page on the science: what every figure is computed from, and where the formula is published.</summary>
public static class SciencePage
{
    /// <summary>The page as Markdown.</summary>
    /// <param name="plans">Plans that together show every figure.</param>
    /// <exception cref="InvalidOperationException">A figure has no place on the page.</exception>
    public static string Write(IEnumerable<Plan> plans)
    {
        List<Entry> left = [.. Entry.Of(plans.SelectMany(ExamplePlans.Figures))];
        var text = new StringBuilder(Chapters.Opening);
        foreach (Chapter chapter in Chapters.All)
        {
            text.Append("\n## ").Append(chapter.Title).Append('\n').Append(chapter.Text).Append('\n');
            foreach (string name in chapter.Figures)
            {
                Entry entry = left.Find(e => e.Name == name) ?? throw new InvalidOperationException($"No example has the figure {name} of the chapter {chapter.Title}.");
                left.Remove(entry);
                Append(text, entry);
            }
        }

        return left.Count == 0 ? text.ToString() : throw new InvalidOperationException($"No chapter has {string.Join(", ", left.Select(e => e.Name))}.");
    }

    private static void Append(StringBuilder text, Entry entry)
    {
        text.Append($"\n**{entry.Label}** (`{entry.Name}`). {entry.Ways[0].Reason}\n");
        for (int i = 0; i < entry.Ways.Count; i++)
        {
            Why way = entry.Ways[i];
            text.Append(way.Evaluates ? $"\n    {way.Formula}\n\n" : $"\n{Sentence(way.Formula)} ");
            text.Append(string.Join("; ", way.Inputs.Select(input => $"*{input.Symbol}* {input.Meaning}"))).Append(way.Inputs.IsEmpty ? "" : ".");
            // A source that holds for the next way too is told there.
            text.Append(i + 1 < entry.Ways.Count && entry.Ways[i + 1].Source == way.Source ? "\n" : $" Source: {way.Source}.\n");
        }
    }

    // A method in words gets a capital; one that begins with a letter of a formula keeps it.
    private static string Sentence(string words) => (char.IsAscii(words[0]) && words.Length > 1 && char.IsAsciiLetter(words[1]) ? char.ToUpperInvariant(words[0]) : words[0]) + words[1..] + ".";
}
