using System.Text.RegularExpressions;
using Ringwright.Core.Planning;

namespace Ringwright.Docs;

/// <summary>A figure as the page tells it: every way it is computed in, each once.</summary>
/// <param name="Name">Its name without a wood, a batch or a strip's number.</param>
/// <param name="Label">Its name for people.</param>
/// <param name="Ways">The reasons behind it that differ in formula or source.</param>
internal sealed partial record Entry(string Name, string Label, IReadOnlyList<Why> Ways)
{
    /// <summary>One entry for each figure, in the order of first appearance.</summary>
    public static IReadOnlyList<Entry> Of(IEnumerable<Figure> figures) =>
        [.. figures.GroupBy(f => General(f.Name)).Select(g => new Entry(g.Key, LabelOf(g.First()), [.. g.Select(Said).DistinctBy(w => (General(w.Formula), w.Source))]))];

    // walnut/to-saw, board-width-2 and strip-3-length are one figure each time.
    private static string General(string name)
    {
        string plain = Numbers().Replace(name, "");
        return Wood().Match(plain) is { Success: true, Length: var length } ? plain[length..] : plain;
    }

    // What is said of one wood or of a shop without a record holds for all.
    private static Why Said(Figure figure) => figure.Why with
    {
        Inputs = [.. figure.Why.Inputs.Select(i => i with { Meaning = InAnyWood(figure, i.Meaning).Replace(" (starting value)", "", StringComparison.Ordinal) })],
    };

    private static string InAnyWood(Figure figure, string words) =>
        figure.Name.IndexOf('/', StringComparison.Ordinal) is > 0 and var at ? words.Replace(figure.Name[..at], "each wood", StringComparison.Ordinal) : words;

    private static string LabelOf(Figure figure)
    {
        string label = InAnyWood(figure, figure.Label);
        int bracket = label.LastIndexOf(" (", StringComparison.Ordinal);
        return figure.Batch > 0 && bracket > 0 ? label[..bracket] : label;
    }

    [GeneratedRegex("(?<=[a-z])-[0-9]+(?=-|$)")]
    private static partial Regex Numbers();

    [GeneratedRegex("^[a-z ]+/(?=[a-z-]+$)")]
    private static partial Regex Wood();
}
