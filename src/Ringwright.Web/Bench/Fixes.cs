using Ringwright.Core.Planning;

namespace Ringwright.Web.Bench;

/// <summary>Where the first thing to fix is.</summary>
/// <param name="Ring">Index of its ring; null when it belongs to none.</param>
/// <param name="ElementId">Id of its field or finding on the page.</param>
/// <param name="Label">Words for a button that goes there.</param>
public sealed record Fix(int? Ring, string ElementId, string Label);

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
        if (sheet.Problems is [var problem, ..]) return Of(problem);
        for (int ring = 0; ring < sheet.Good.Rings.Length; ring++)
            for (int i = 0; i < sheet.Good.Rings[ring].Findings.Length; i++)
                if (sheet.Good.Rings[ring].Findings[i].Weight != Weight.Note) return new(ring, FindingId(i), sheet.Good.Rings[ring].Findings[i].Change is null ? "Show it" : "Show what to change");
        return null;
    }

    private static Fix Of(FieldProblem problem)
    {
        Field? field = RingFields.All.Concat(ShopFields.All.Select(f => f.Field)).FirstOrDefault(f => f.Key == problem.Key);
        if (field is not null) return new(problem.Ring, field.Id, $"Go to {field.Label}");
        return problem.Key is null ? new(null, GeneralId, "Show what is wrong") : new(problem.Ring, "field-" + problem.Key, $"Go to {problem.Key}");
    }
}
