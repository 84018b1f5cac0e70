using Ringwright.Core.Boards;
using Ringwright.Core.Measures;
using Ringwright.Core.Timber;
using Ringwright.Stock.Boards;

namespace Ringwright.Stock.Tests.Boards;

/// <summary>Boards, demands and requests in few words.</summary>
internal static class Racks
{
    public static readonly BoardRules Rules = new() { Kerf = 1, EndTrim = 5, HoldingLength = 75 };

    public static RackBoard Board(string label, double length, double width, double thickness = 25, string wood = "walnut", string? from = null, params (double From, double To)[] defects) => new()
    {
        Label = label,
        Wood = wood,
        Length = Length.FromMillimetres(length),
        Width = Length.FromMillimetres(width),
        Thickness = Length.FromMillimetres(thickness),
        CameFrom = from,
        Defects = defects.Length == 0 ? null : [.. defects.Select(d => new Defect { From = Length.FromMillimetres(d.From), To = Length.FromMillimetres(d.To) })],
    };

    public static StripDemand Wedges(string ring, int needed, int toSaw, double width = 40, double pitch = 24, double thickness = 20, string wood = "walnut", double start = 6) =>
        new(ring, wood, StripPiece.Wedge, thickness, width, needed, toSaw, start, pitch) { MeanLength = pitch - 1 };

    public static CuttingRequest Request(RackBoard[] boards, params StripDemand[] demands) =>
        new(new() { Name = "Test", Boards = [.. boards] }, [.. demands], Rules, SpeciesTable.Standard);

    public static CuttingPlan Plan(RackBoard[] boards, params StripDemand[] demands) => new BoardPlanner(20).Plan(Request(boards, demands));
}
