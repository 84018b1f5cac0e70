using Ringwright.Paper.Blocks;

namespace Ringwright.Paper.JobSheets;

/// <summary>Tables that may have no rows.</summary>
internal static class SheetTables
{
    /// <summary>A table of the rows under a heading; nothing where there are none.</summary>
    public static IEnumerable<IBlock> Under(string heading, IEnumerable<string[]> rows, Func<string[][], Table> table)
    {
        string[][] all = [.. rows];
        if (all.Length > 0) yield return new Section(heading, table(all));
    }
}
