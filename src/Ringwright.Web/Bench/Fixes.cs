using Ringwright.Core.Planning;
using Ringwright.Web.Bench.Fields;

namespace Ringwright.Web.Bench;

/// <summary>Where the first thing to fix is.</summary>
/// <param name="Url">Address of the page that shows it.</param>
/// <param name="Ring">Index of its ring; null when it belongs to none.</param>
/// <param name="ElementId">Id of its field or finding on the page.</param>
/// <param name="Label">Words for a button that goes there.</param>
public sealed record Fix(string Url, int? Ring, string ElementId, string Label);

/// <summary>Finds the first thing to fix.</summary>
public static class Fixes
{
    /// <summary>Id of a problem that belongs to no field.</summary>
    public const string GeneralId = "problem";

    /// <summary>Id of the shown ring's finding at <paramref name="index"/>.</summary>
    public static string FindingId(int index) => $"finding-{index + 1}";

    /// <summary>The first thing to fix on <paramref name="sheet"/>; null when nothing is.</summary>
    public static Fix? First(Sheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        if (sheet.Problems is [var problem, ..]) return Of(sheet, problem);
        for (int ring = 0; ring < sheet.Good.Rings.Length; ring++)
            for (int i = 0; i < sheet.Good.Rings[ring].Findings.Length; i++)
                if (sheet.Good.Rings[ring].Findings[i] is { Weight: Weight.Stop } stop) return Of(ring, i, stop);
        for (int ring = 0; ring < sheet.Good.Rings.Length; ring++)
            for (int i = 0; i < sheet.Good.Rings[ring].Findings.Length; i++)
                if (sheet.Good.Rings[ring].Findings[i] is { Weight: Weight.Doubt } doubt) return Of(ring, i, doubt);
        return null;
    }

    private static Fix Of(int ring, int index, Finding finding) => new("/shape/rings", ring, FindingId(index), finding.Change is null ? "Show it" : "Show what to change");

    private static Fix Of(Sheet sheet, FieldProblem problem) => problem.Address is string address && LensBook.Find(sheet.Work, address) is Lens lens
        ? new(lens.Place.Url, lens.Place.Ring, lens.Id, $"Go to {lens.Field.Label}")
        : new("/shape/rings", null, GeneralId, "Show what is wrong");
}
