using System.Collections.Immutable;
using Ringwright.Core.Measures;
using Ringwright.Core.Pieces;

namespace Ringwright.Core.Planning;

/// <summary>One ring as it is sawn out of its board.</summary>
/// <param name="Ring">The ring as wanted.</param>
/// <param name="WideUp">Whether its wide face is up in the piece.</param>
/// <param name="Wide">Radii at its wide face.</param>
/// <param name="Narrow">Radii at its narrow face.</param>
/// <param name="Inside">The cut inside it.</param>
/// <param name="Range">The tilts that cut may have.</param>
public sealed record SawnBoardRing(BoardRing Ring, bool WideUp, FaceRadii Wide, FaceRadii Narrow, BoardCut Inside, TiltRange Range)
{
    /// <summary>What it must have at its faces.</summary>
    internal WantedFaces Wanted { get; init; }

    /// <summary>Radii at the face that is up, or down, in the piece.</summary>
    public FaceRadii Face(bool up) => up == WideUp ? Wide : Narrow;
}

/// <summary>
/// Concentric rings out of one flat board, sawn from the outside in with the wide face up. Lengths in mm.
/// Exact for blades that cut cones around one axis.
/// </summary>
/// <param name="Name">The board's name.</param>
/// <param name="Thickness">Its thickness, and the height of its rings.</param>
/// <param name="Kerf">Kerf, normal to the blade.</param>
/// <param name="Rings">Its rings, the largest first.</param>
public sealed record BoardGroupPlan(string Name, double Thickness, double Kerf, ImmutableArray<SawnBoardRing> Rings)
{
    /// <summary>The ring with which the board's wedges are planned: the largest.</summary>
    public BoardRing Carrier => Rings[0].Ring;

    /// <summary>Radius of the flat disc, centre to flat.</summary>
    public double Disc => Rings[0].Wide.Outer;

    /// <summary>What is left in the middle: its radius at the wide face and at the narrow one.</summary>
    public (double Wide, double Narrow) Middle => (Rings[^1].Inside.OutsideWide, Rings[^1].Inside.OutsideNarrow);

    /// <summary>The different tilts, in the order of cutting, radians.</summary>
    public IEnumerable<double> Tilts => Rings.Select(r => r.Inside.Tilt).Distinct();

    /// <summary>The ring called <paramref name="name"/>.</summary>
    public SawnBoardRing this[string name] => Rings.Single(r => string.Equals(r.Ring.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>The board that the rings at <paramref name="places"/> of a piece come from.</summary>
    /// <exception cref="BadInputException">They cannot come from one board.</exception>
    internal static BoardGroupPlan Of(ImmutableArray<Ring> all, IEnumerable<int> places, Shop shop)
    {
        int[] order = [.. places.OrderByDescending(i => all[i].Outside.Millimetres)];
        WantedFaces[] wanted = [.. order.Select(i => WantedFaces.Of(all, i, shop))];
        BoardGroupCheck.Alike(wanted);
        double thickness = wanted[0].Ring.Thickness.Millimetres, kerf = shop.Saw.Kerf.Millimetres;
        BoardGroupCheck.Kerf(wanted[0].Ring, thickness, shop.Saw.Kerf);
        TiltRange[] ranges = [.. wanted.Select((w, i) => TiltRange.Of(w, Next(wanted, i), thickness, kerf))];
        for (int i = 0; i < wanted.Length; i++)
        {
            WantedFaces? next = Next(wanted, i);
            int place = order[i];
            BoardGroupCheck.Room(wanted[i].Ring, next?.Ring, ranges[i], inner => TiltRange.Of(Opened(all, place, inner, shop), next, thickness, kerf));
        }

        double[] tilts = TiltChoice.Of(ranges);
        BoardCut[] cuts = [.. wanted.Select((w, i) => Cut(w, Next(wanted, i), tilts[i], thickness, kerf))];
        return new(wanted[0].Ring.Board, thickness, kerf, [.. wanted.Select((w, i) => Sawn(w, i == 0 ? null : cuts[i - 1], cuts[i], ranges[i]))]);
    }

    private static WantedFaces? Next(WantedFaces[] wanted, int i) => i + 1 < wanted.Length ? wanted[i + 1] : null;

    private static WantedFaces Opened(ImmutableArray<Ring> all, int place, double inner, Shop shop) =>
        WantedFaces.Of(all.SetItem(place, (BoardRing)all[place] with { InnerDiameter = Length.FromMillimetres(inner) }), place, shop);

    // Half way between what both neighbours need; around the middle as far out as the ring allows.
    private static BoardCut Cut(WantedFaces outer, WantedFaces? inner, double tilt, double thickness, double kerf)
    {
        double step = thickness * Math.Tan(tilt), across = kerf / Math.Cos(tilt);
        double most = Math.Min(outer.InnerNarrow, outer.InnerWide - step);
        double least = inner is WantedFaces next ? across + Math.Max(next.OuterNarrow, next.OuterWide - step) : most;
        return new(tilt, step, across, (least + most) / 2);
    }

    // The largest ring keeps the disc's rim, upright, until it is turned.
    private static SawnBoardRing Sawn(WantedFaces wanted, BoardCut? outside, BoardCut inside, TiltRange range) => new(
        wanted.Ring, wanted.WideUp,
        new(outside?.OutsideWide ?? wanted.OuterWide, inside.InsideWide),
        new(outside?.OutsideNarrow ?? wanted.OuterWide, inside.InsideNarrow),
        inside, range)
    {
        Wanted = wanted,
    };
}
