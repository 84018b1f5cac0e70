using System.Globalization;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Paper.Lettering;
using Ringwright.Paper.Pictures;

namespace Ringwright.Paper.JobSheets;

/// <summary>What is said about a ring in words.</summary>
internal static class RingWords
{
    private const int MostRuns = 40;

    /// <summary>
    /// The letters around the ring with runs drawn together: "6 × (A B)" or "2 A, B, 3 C". Spacers stand in brackets; where wedges
    /// are not all alike, the number of the wedge follows its letter.
    /// </summary>
    public static string Order(RingPlan plan, WoodKey key)
    {
        if (plan.Ring is LaminatedRing laminated) return $"strips {string.Join(' ', laminated.Strips.Take(MostRuns).Select(s => key[s.Wood].Letter))}, again and again in the board";
        string[] letters = [.. Letters(plan, key)];
        int period = Period(letters);
        if (period == 1) return Runs(letters);
        string once = Runs(letters[..period]);
        int times = letters.Length / period, rest = letters.Length % period;
        string repeated = times == 1 ? once : $"{times} × ({once})";
        return rest == 0 ? repeated : $"{repeated}, then {Runs(letters[..rest])}";
    }

    /// <summary>A name cut so that it stays inside a field of the title block.</summary>
    public static string ForTitle(string name) => Shortened.To(name, FitsTitle);

    /// <summary>Whether a name stays inside a field of the title block, in small print if it must.</summary>
    public static bool FitsTitle(string name)
    {
        const double Field = 66; // mm: the narrowest of the papers, less its padding
        return Wrapping.Lines(name, TypeScale.Heading with { Height = TypeScale.Note.Height }, Field).Count <= 2;
    }

    /// <summary>The units of the sheets in words.</summary>
    public static string Units(MeasureStyle style) => style.Unit == LengthUnit.Millimetre
        ? "millimetres"
        : style.Fractions ? "inches, fractions to 1/64" : "inches, decimals";

    private static IEnumerable<string> Letters(RingPlan plan, WoodKey key)
    {
        if (plan.Batches.Length == 1 && plan.Spacers.IsEmpty) return Enumerable.Range(0, plan.Ring.Around).Select(i => key[plan.Ring.WoodOf(i)].Letter);
        Dictionary<int, int> batchAt = plan.Batches.SelectMany((b, i) => b.Places.Select(p => (p, i + 1))).ToDictionary();
        return plan.Layout.Select((laid, place) => (key[laid.Wood].Letter, Batch: batchAt.GetValueOrDefault(place)) switch
        {
            (var letter, 0) => $"({letter})",
            (var letter, _) when plan.Batches.Length == 1 => letter,
            (var letter, var batch) => string.Create(CultureInfo.InvariantCulture, $"{letter}{batch}"),
        });
    }

    // The shortest pattern that repeats all around, the last time perhaps in part.
    private static int Period(string[] letters) =>
        Enumerable.Range(1, letters.Length).First(p => Enumerable.Range(p, letters.Length - p).All(i => letters[i] == letters[i - p]));

    private static string Runs(string[] letters)
    {
        List<(string Letter, int Count)> runs = [];
        foreach (string letter in letters)
        {
            if (runs.Count > 0 && runs[^1].Letter == letter) runs[^1] = (letter, runs[^1].Count + 1);
            else runs.Add((letter, 1));
        }

        string shown = string.Join(' ', runs.Take(MostRuns).Select(r => r.Count == 1 ? r.Letter : string.Create(CultureInfo.InvariantCulture, $"{r.Count}{(r.Letter.Length > 1 ? "×" : "")}{r.Letter}")));
        return runs.Count <= MostRuns ? shown : $"{shown} … ({runs.Count - MostRuns} more changes; see the plan file)";
    }
}
