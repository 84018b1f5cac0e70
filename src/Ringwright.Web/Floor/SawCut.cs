using System.Globalization;
using Ringwright.Core.Pieces;
using Ringwright.Core.Planning;

namespace Ringwright.Web.Floor;

/// <summary>Wedges that are sawn alike from one wood: what one counts at the saw.</summary>
/// <param name="Ring">The ring's plan with these wedges alone.</param>
/// <param name="Need">How many.</param>
/// <param name="Key">Their name among those of the ring.</param>
/// <param name="Name">The same in words.</param>
/// <param name="PerBoard">Wedges that one board gives.</param>
public sealed record SawCut(RingPlan Ring, WoodNeed Need, string Key, string Name, int PerBoard)
{
    /// <summary>All cuts of a ring; none for a ring without wedges of its own.</summary>
    public static ImmutableArray<SawCut> Of(RingPlan plan, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(shop);
        if (plan.Batches.IsEmpty) return [];
        return
        [
            .. plan.Woods.Where(n => n.Batch < plan.Batches.Length).Select(need =>
            {
                RingPlan alone = plan.Alone(need.Batch);
                string number = (need.Batch + 1).ToString(CultureInfo.InvariantCulture);
                int perBoard = plan.Stave is null ? Math.Max(1, alone.Strip.WedgesIn(shop.Boards.Length.Millimetres)) : Math.Max(1, need.ToSaw);
                return new SawCut(alone, need, $"{number}/{need.Wood}", plan.Batches.Length == 1 ? need.Wood : $"{need.Wood}, wedge {number}", perBoard);
            }),
        ];
    }

    /// <summary>
    /// How the board lies for the next wedge: the offcut falls at fence 1, so the first wedge falls at fence 2 and then by turns;
    /// with one fence the board is turned over each time. Empty for staves, whose steps say it.
    /// </summary>
    /// <param name="sled">What holds the board.</param>
    /// <param name="inBoard">Wedges sawn from this board.</param>
    public string How(SledKind sled, int inBoard) => Hows(sled) is [var first, var second] ? (inBoard % 2 == 0 ? first : second) : "";

    /// <summary>The two ways of lying, by turns, the first wedge's first; none for staves.</summary>
    public ImmutableArray<string> Hows(SledKind sled) => Ring.Stave is not null ? [] : sled == SledKind.TwoFences ? ["Fence 2", "Fence 1"] : ["Line down", "Line up"];
}
