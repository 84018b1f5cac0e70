using Ringwright.Core.Documents;
using Ringwright.Core.Measures;
using Ringwright.Core.Planning;

namespace Ringwright.Cli.Output;

/// <summary>The files of a plan, named after the piece's file.</summary>
internal static class PlanFiles
{
    /// <summary>Writes all files and returns their paths.</summary>
    public static IEnumerable<string> Write(Plan plan, MeasureStyle style, string pieceFile, string folder)
    {
        string stem = Path.Combine(folder, Path.GetFileNameWithoutExtension(pieceFile));
        SafeFile.Write(stem + ".plan.json", PlanJson.Write(plan, style));
        yield return stem + ".plan.json";
        SafeFile.Write(stem + ".cut-list.csv", CutListCsv.Write(plan, style));
        yield return stem + ".cut-list.csv";
    }
}
