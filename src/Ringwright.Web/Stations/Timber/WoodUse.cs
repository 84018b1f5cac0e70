using Ringwright.Core.Planning;
using Ringwright.Core.Timber;
using Ringwright.Web.Drawing;

namespace Ringwright.Web.Stations;

/// <summary>A wood and where the piece uses it.</summary>
/// <param name="Name">Its name as rings name it.</param>
/// <param name="Species">What is known of it.</param>
/// <param name="Pieces">Pieces of it.</param>
/// <param name="Rings">Rings with it.</param>
/// <param name="Fresh">Its look fresh from the tool.</param>
/// <param name="Aged">Its look after years in the light.</param>
internal sealed record WoodUse(string Name, Species Species, int Pieces, int Rings, WoodLook Fresh, WoodLook Aged)
{
    /// <summary>The woods of a piece, most used first.</summary>
    public static ImmutableArray<WoodUse> Of(Plan plan)
    {
        SpeciesTable table = SpeciesTable.For(plan.Shop);
        var pieces = plan.Rings.SelectMany((r, i) => r.Layout.Select(s => (s.Wood, Ring: i))).GroupBy(p => p.Wood, StringComparer.OrdinalIgnoreCase).ToList();
        ImmutableArray<WoodLook> fresh = WoodLook.For(pieces.Select(g => g.Key), table), aged = WoodLook.For(pieces.Select(g => g.Key), table, aged: true);
        return [.. pieces.Select((g, i) => new WoodUse(g.Key, table.FindOrAssume(g.Key), g.Count(), g.Select(p => p.Ring).Distinct().Count(), fresh[i], aged[i])).OrderByDescending(u => u.Pieces)];
    }
}
