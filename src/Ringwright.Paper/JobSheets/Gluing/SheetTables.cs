using Ringwright.Paper.Blocks;

namespace Ringwright.Paper.JobSheets;

/// <summary>Long tables in parts that may stand on different sheets.</summary>
internal static class SheetTables
{
    /// <summary>The rows in tables of a few, the first under a heading.</summary>
    public static IEnumerable<IBlock> Divided(string heading, IEnumerable<string[]> rows, Func<string[][], Table> table, int together) =>
        rows.Chunk(together).Select((some, i) => i == 0 ? new Section(heading, table(some)) : (IBlock)table(some));
}
