using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Spectre.Console;

namespace Ringwright.Cli.Output;

/// <summary>Text in aligned columns without lines around it.</summary>
internal static class AlignedText
{
    /// <summary>Writes <paramref name="rows"/>; the columns in <paramref name="rightAligned"/> are numbers.</summary>
    public static void Write(IAnsiConsole console, IEnumerable<string[]> rows, params int[] rightAligned)
    {
        string[][] all = [.. rows];
        if (all.Length == 0) return;
        int columns = all.Max(r => r.Length);
        int[] widths = [.. Enumerable.Range(0, columns).Select(c => all.Max(r => c < r.Length ? r[c].Length : 0))];
        foreach (string[] row in all)
        {
            IEnumerable<string> cells = row.Select((cell, c) => rightAligned.Contains(c) ? cell.PadLeft(widths[c]) : cell.PadRight(widths[c]));
            console.WriteLine(("  " + string.Join("  ", cells)).TrimEnd());
        }
    }

    /// <summary>Writes the cautions that go with work at a sled of <paramref name="kind"/>.</summary>
    public static void Mind(IAnsiConsole console, SledKind kind) => Mind(console, Cautions.For(kind));

    /// <summary>Writes cautions.</summary>
    public static void Mind(IAnsiConsole console, IEnumerable<string> cautions)
    {
        Heading(console, "Mind");
        foreach (string caution in cautions) console.WriteLine("  " + caution);
    }

    /// <summary>Writes a heading with an empty line before it.</summary>
    public static void Heading(IAnsiConsole console, string text)
    {
        console.WriteLine();
        console.Write(new Text(text, new Style(decoration: Decoration.Bold)));
        console.WriteLine();
    }
}
