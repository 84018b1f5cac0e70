using Ringwright.Core;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;
using Ringwright.Web.Bench;

namespace Ringwright.Web.Stations;

/// <summary>How rings are to be found, from what stands on the desk.</summary>
internal static class StackDesk
{
    private const double UsualHeight = 18; // mm, of a board of 3/4 in that was planed

    /// <summary>Finds the rings for the work's shape.</summary>
    /// <exception cref="BadInputException">A text cannot be read, or no stack can be found.</exception>
    public static StackSuggestion Find(Work work, Sheet sheet)
    {
        DeskTexts desk = sheet.Desk;
        LengthUnit unit = sheet.Units.Unit();
        ImmutableArray<string> woods = desk.List("find.woods");
        var request = new StackRequest
        {
            Shape = work.Piece.Shape!,
            Heights = desk.List("find.heights") is { IsEmpty: false } heights ? [.. heights.Select(h => DeskTexts.Length("ring heights at hand", h, unit).Millimetres)] : [UsualHeight],
            Segments = desk.Whole("find.segments"),
            Woods = woods.IsEmpty ? [.. work.Piece.Rings[0].Cycle.Distinct(StringComparer.OrdinalIgnoreCase)] : woods,
        };
        if (desk.Length("find.rimEdge", unit) is Length edge) request = request with { RimEdge = edge.Millimetres };
        return StackFinder.Find(request, work.Shop);
    }

    /// <summary>The work's piece with rings found for its shape.</summary>
    /// <exception cref="BadInputException">As for <see cref="Find"/>.</exception>
    public static Piece Stacked(Work work, Sheet sheet) => work.Piece with { Rings = Find(work, sheet).Rings };
}
